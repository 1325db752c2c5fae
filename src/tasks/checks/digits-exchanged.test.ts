import { expect, test } from 'vitest';
import { check } from './digits-exchanged.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

test('17.570 for 17.750 lies 19.9 km from plan, and the digits are shown the right way round', () => {
  // JOB scenario 7: planned 17.750 S, typed 17.570 S; 19.9 km computed there with a geodesic library.
  const found = foundBy(check, (sketch) => {
    for (const one of sketch.stations) {
      for (const field of [
        'latitudeDeg',
        'longitudeDeg',
        'plannedLatitudeDeg',
        'plannedLongitudeDeg',
      ] as const) {
        one[field] = Number(one[field]!.toFixed(3));
      }
    }
    Object.assign(stationAt(sketch, 'S1'), {
      plannedLatitudeDeg: -17.75,
      latitudeDeg: -17.57,
      longitudeDeg: 177.4,
    });
  });
  expect(found).toMatchObject([
    {
      value: '-17.570, 177.400',
      suggestion: '-17.750',
      parameters: { distance: '19.9 km', reference: 'plan' },
    },
  ]);
});

test('in the longitude, and without a plan, they are found by the other stations', () => {
  const found = foundBy(check, (sketch) => {
    for (const one of sketch.stations)
      Object.assign(one, { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
    stationAt(sketch, 'S3').longitudeDeg = 174.70797;
  });
  expect(found).toMatchObject([{ place: { station: 'S3' }, suggestion: '177.40797' }]);
});

test('18 metres off the plan are no slip', () => {
  expect(foundBy(check)).toEqual([]);
});
