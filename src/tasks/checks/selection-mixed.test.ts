import { expect, test } from 'vitest';
import { check } from './selection-mixed.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

test('random and hand-picked stations together are a question, hand-picked ones alone are not', () => {
  const found = foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').selection = 'hand-picked';
  });
  expect(found).toMatchObject([{ value: 1, parameters: { handPicked: 1, random: 11 } }]);
  const all = foundBy(check, (sketch) => {
    for (const one of sketch.stations) one.selection = 'hand-picked';
  });
  expect(all).toEqual([]);
});
