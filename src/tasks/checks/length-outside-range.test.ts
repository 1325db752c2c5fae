import { expect, test } from 'vitest';
import { check } from './length-outside-range.ts';
import { foundBy, lengthsOf, tallyAt } from './survey-sketch.ts';

const measure = (...lengthsMm: number[]) =>
  foundBy(check, (sketch) =>
    Object.assign(tallyAt(sketch, 'S1', '1'), { count: 9, lengths: lengthsOf(...lengthsMm) }),
  );

test('450 for a species of 60 to 400 mm is asked about; a slip of the unit is asked about elsewhere', () => {
  expect(measure(450, 455)).toMatchObject([{ value: 450, parameters: { lengths: 2, least: 60, most: 400 } }]);
  expect(measure(18)).toEqual([]);
  expect(measure(400)).toEqual([]);
});

test('a species whose sizes nobody knows may have any', () => {
  const found = foundBy(check, (sketch) => {
    Object.assign(sketch.species[0]!, { minLengthMm: null, maxLengthMm: null });
    Object.assign(tallyAt(sketch, 'S1', '1'), { count: 1, lengths: lengthsOf(4500) });
  });
  expect(found).toEqual([]);
});
