import { expect, test } from 'vitest';
import { digitPreference } from './digit-preference.ts';

test('lengths that end in every digit alike show no preference', () => {
  const found = digitPreference([20, 20, 20, 20, 20, 20, 20, 20, 20, 20])!;
  expect(found.shareOfZeroAndFive).toBe(0.2);
  expect(found.chiSquare).toBe(0);
  expect(found.isPreferred).toBe(false);
});

test('half of 200 lengths on 0 and 5 is a preference', () => {
  // By hand: 100 against 40 expected, 100 against 160: 60^2/40 + 60^2/160 = 112.5.
  const found = digitPreference([60, 12, 13, 12, 13, 40, 13, 12, 13, 12])!;
  expect(found.chiSquare).toBeCloseTo(112.5, 10);
  expect(found.isPreferred).toBe(true);
});

test('thousands of lengths make 23 % significant, and it is still let pass', () => {
  const found = digitPreference([1150, 963, 963, 963, 963, 1150, 962, 962, 962, 962])!;
  expect(found.chiSquare).toBeGreaterThan(10.83);
  expect(found.isPreferred).toBe(false);
});

test('under 100 lengths nothing is said', () => {
  expect(digitPreference([99, 0, 0, 0, 0, 0, 0, 0, 0, 0])).toBeNull();
});
