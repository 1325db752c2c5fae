import { expect, test } from 'vitest';
import { check } from './position-same-as-plan.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const copied = (offDeg: number) =>
  foundBy(check, (sketch) => {
    const { plannedLatitudeDeg, plannedLongitudeDeg } = stationAt(sketch, 'S4');
    const longitudeDeg = Number((plannedLongitudeDeg! + offDeg).toFixed(5));
    Object.assign(stationAt(sketch, 'S4'), { latitudeDeg: plannedLatitudeDeg, longitudeDeg });
  });

test('a position equal to its plan to the last digit was copied', () => {
  expect(copied(0)).toMatchObject([{ place: { station: 'S4' }, value: '-17.75900, 177.41200' }]);
  expect(copied(0.00001)).toEqual([]);
});

// By hand: 17 45.537 S is 17.75895 and 177 24.721 E is 177.412016667; the plan lies 0.4 and 0.3 thousandths beside them.
test('a position copied from a plan page, in thousandths of a minute, was copied too', () => {
  const typed = (minutesEast: number) =>
    foundBy(check, (sketch) => {
      Object.assign(stationAt(sketch, 'S4'), {
        plannedLatitudeDeg: -17.7589567,
        plannedLongitudeDeg: 177.4120117,
        latitudeDeg: -(17 + 45.537 / 60),
        longitudeDeg: 177 + minutesEast / 60,
      });
    });
  expect(typed(24.721)).toMatchObject([{ place: { station: 'S4' } }]);
  expect(typed(24.722)).toEqual([]);
});
