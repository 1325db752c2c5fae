import { expect, test } from 'vitest';
import { check } from './more-lengths-than-animals.ts';
import { foundBy, tallyAt } from './survey-sketch.ts';

const measured = (count: number) =>
  foundBy(check, (sketch) =>
    Object.assign(tallyAt(sketch, 'S1', '1'), {
      count,
      lengths: [{ lengthMm: 200, n: 3, measure: null, photo: null }],
    }),
  );

test('three measured of two counted stop, three of three do not', () => {
  expect(measured(2)).toMatchObject([{ severity: 'stop', place: { species: 'sandfish' }, value: 3 }]);
  expect(measured(3)).toEqual([]);
});
