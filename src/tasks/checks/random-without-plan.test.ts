import { expect, test } from 'vitest';
import { check } from './random-without-plan.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const unplanned = (...codes: string[]) =>
  foundBy(check, (sketch) => {
    for (const code of codes)
      Object.assign(stationAt(sketch, code), { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
  });

test('a random station without a plan among planned ones is asked about', () => {
  expect(unplanned('S5')).toMatchObject([{ place: { station: 'S5' }, parameters: { planned: 11, of: 12 } }]);
});

test('where many have no plan nobody wrote plans down', () => {
  expect(unplanned('S1', 'S2', 'S3', 'S4')).toEqual([]);
});
