import { expect, test } from 'vitest';
import { check } from './selection-unknown.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

test('stations of unknown choice are noted, with how many', () => {
  const found = foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').selection = null;
  });
  expect(found).toMatchObject([{ severity: 'note', value: 1, parameters: { of: 12 } }]);
  expect(foundBy(check)).toEqual([]);
});
