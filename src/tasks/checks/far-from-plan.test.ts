import { expect, test } from 'vitest';
import { check } from './far-from-plan.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const moved = (northDeg: number) =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').latitudeDeg! += northDeg;
  });

test('a station 400 m from its plan, with no slip to explain it, is asked about', () => {
  // By hand: 0.0035 degrees and the 0.0001 of the clean survey, of 110.66 km each: 398 m.
  expect(moved(0.0035)).toMatchObject([
    { place: { station: 'S1' }, suggestion: null, parameters: { distance: '398 m' } },
  ]);
});

test('50 m are let pass, and so is what three decimals cannot tell', () => {
  expect(moved(0.0003)).toEqual([]);
  const coarse = foundBy(check, (sketch) => {
    for (const one of sketch.stations) {
      one.latitudeDeg = Number((one.plannedLatitudeDeg! + 0.0004).toFixed(3));
      one.longitudeDeg = Number(one.plannedLongitudeDeg!.toFixed(3));
      one.plannedLatitudeDeg = Number(one.plannedLatitudeDeg!.toFixed(3));
      one.plannedLongitudeDeg = Number(one.plannedLongitudeDeg!.toFixed(3));
    }
  });
  expect(coarse).toEqual([]);
});
