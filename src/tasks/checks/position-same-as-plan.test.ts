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
