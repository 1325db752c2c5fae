import { expect, test } from 'vitest';
import { near } from './nearness.ts';
import { mean, sampleVariance, sum } from './variance.ts';

// By hand: 1e16 + 1 - 1e16 is 1; plain addition gives 0.
test('a sum does not depend on the order of its rows', () => {
  expect(sum([1e16, 1, -1e16])).toBe(1);
  expect(sum([1, 1e16, -1e16])).toBe(1);
});

// By hand: 2, 4, 9 have mean 5 and squares 9 + 1 + 16 over 2.
test('mean and variance of three stations', () => {
  expect(mean([2, 4, 9])).toBe(5);
  near(sampleVariance([2, 4, 9]), 13, 1e-15);
});

test('one station has no variance, none has no mean', () => {
  expect(sampleVariance([3])).toBeNull();
  expect(() => mean([])).toThrow('at least one value');
});
