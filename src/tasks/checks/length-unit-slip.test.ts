import { expect, test } from 'vitest';
import { check } from './length-unit-slip.ts';
import { foundBy, lengthsOf, tallyAt } from './survey-sketch.ts';

const measure = (...lengthsMm: number[]) =>
  foundBy(check, (sketch) =>
    Object.assign(tallyAt(sketch, 'S1', '1'), { count: 9, lengths: lengthsOf(...lengthsMm) }),
  );

test('18 for a species of 60 to 400 mm: cm typed? 180 mm', () => {
  // JOB scenario 6.
  expect(measure(18, 170, 21)).toMatchObject([
    {
      place: { station: 'S1', transect: '1', species: 'sandfish' },
      value: 18,
      suggestion: '180 mm',
      parameters: { unit: 'cm', lengths: 2 },
    },
  ]);
});

test('1800 is ten times too long, 3 fits neither way, 60 and 400 fit', () => {
  expect(measure(1800)).toMatchObject([{ suggestion: '180 mm' }]);
  expect(measure(3)).toEqual([]);
  expect(measure(60, 400)).toEqual([]);
});
