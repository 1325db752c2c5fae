import { expect, test } from 'vitest';
import { alikeByChance, leastChance } from './alike-by-chance.ts';

const length = (lengthMm: number) => ({ lengthMm, n: 1, measure: null, photo: null });

test('two belts that expect 25 animals both count 25 with a chance of about 0.056', () => {
  // By hand: 1 / (2 sqrt(25 pi)) = 0.05642; the exact sum of squared Poisson shares at mean 25 is 0.05656 all values together.
  expect(alikeByChance(new Map([['a', { count: 25, lengths: [] }]]), new Map())).toBeCloseTo(0.0564, 4);
});

test('every length makes a match by chance rarer by its own factor', () => {
  const bare = alikeByChance(new Map([['a', { count: 3, lengths: [] }]]), new Map());
  const measured = new Map([['a', { count: 3, lengths: [length(150), length(162), length(139)] }]]);
  expect(alikeByChance(measured, new Map([['a', 0.02]]))).toBeCloseTo(bare * 0.02 ** 3, 12);
});

test('nothing counted is alike for certain', () => {
  expect(alikeByChance(new Map([['a', { count: 0, lengths: [] }]]), new Map())).toBe(1);
});

test('the least chance is never more than the chance', () => {
  const measured = new Map([['a', { count: 3, lengths: [length(150), length(162), length(139)] }]]);
  expect(leastChance(measured)).toBeLessThan(alikeByChance(measured, new Map([['a', 0.01]])));
  expect(leastChance(measured)).toBe(alikeByChance(measured, new Map([['a', 0.0001]])));
});
