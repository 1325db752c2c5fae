import { expect, test } from 'vitest';
import { check } from './count-outlier.ts';
import { foundBy, tallyAt } from './survey-sketch.ts';

const count = (animals: number, station = 'S5') =>
  foundBy(check, (sketch) => {
    tallyAt(sketch, station, '2').count = animals;
  });

test('171 typed for 17 stands out of its stratum', () => {
  expect(count(171)).toMatchObject([
    { place: { station: 'S5', species: 'sandfish' }, parameters: { stratum: 'flat', others: 9 } },
  ]);
  expect(count(6)).toEqual([]);
});

test('two stations of a stratum cannot tell', () => {
  expect(count(171, 'S11')).toEqual([]);
});
