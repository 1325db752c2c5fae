import { expect, test } from 'vitest';
import { check } from './minutes-for-seconds.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const typed = (latitudeDeg: number) =>
  foundBy(check, (sketch) =>
    Object.assign(stationAt(sketch, 'S1'), {
      latitudeDeg,
      longitudeDeg: 177.4,
      plannedLatitudeDeg: -(17 + 45.3 / 60),
      plannedLongitudeDeg: 177.4,
    }),
  );

test("17 45.30' typed as 17 45' 30\" lies 369 m from plan", () => {
  // JOB scenario 7: 369 m, computed there with a geodesic library.
  expect(typed(-(17 + 45 / 60 + 30 / 3600))).toMatchObject([
    { place: { station: 'S1' }, suggestion: '-17.755000', parameters: { distance: '369 m' } },
  ]);
});

test('45.30 minutes typed as the decimals of the degree are found as well', () => {
  // By hand: 17.4530 for 17 + 45.30 / 60 = 17.755.
  expect(typed(-17.453)).toMatchObject([{ suggestion: '-17.75500' }]);
});

test('30 m off the plan are no slip', () => {
  expect(typed(-17.75527)).toEqual([]);
});
