import { expect, test } from 'vitest';
import { near } from './nearness.ts';
import { findMaximum, findRoot } from './search.ts';

// By hand: square root of 2; ln 5; a root at the very end.
test('a root between two ends is found', () => {
  near(
    findRoot((x) => x * x - 2, { low: 0, high: 2 }),
    Math.SQRT2,
    1e-13,
  );
  near(
    findRoot((x) => Math.exp(x) - 5, { low: -50, high: 50 }),
    Math.log(5),
    1e-13,
  );
  expect(findRoot((x) => x, { low: 0, high: 1 })).toBe(0);
});

test('a function that stays on one side is a mistake of the caller', () => {
  expect(() => findRoot((x) => x * x + 1, { low: -1, high: 1 })).toThrow('opposite sides');
});

// By hand: the top of 3 - (x - 0.7)^2.
test('the top of a single hill is found', () => {
  const top = findMaximum((x) => 3 - (x - 0.7) ** 2, { low: -10, high: 10 });
  near(top.at, 0.7, 1e-7);
  near(top.value, 3, 1e-12);
});
