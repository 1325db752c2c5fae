import { expect, test } from 'vitest';
import { check } from './belt-width-unusual.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

test('a width of 1 m where the protocol says 2 is asked about once for the station', () => {
  const found = foundBy(check, (sketch) => {
    transectAt(sketch, 'S2', '1').widthM = 1;
    transectAt(sketch, 'S2', '3').widthM = 1;
  });
  expect(found).toMatchObject([
    { place: { station: 'S2' }, value: 1, suggestion: '2', parameters: { belts: 2, where: '1, 3' } },
  ]);
  expect(foundBy(check)).toEqual([]);
});
