import { expect, test } from 'vitest';
import {
  beliefBelow,
  beliefFromLogHeights,
  containing,
  equalTailedInterval,
  fadingBand,
  quantilePerHa,
} from './belief.ts';

/** A log-normal belief with median 20 per hectare and standard deviation 0.5 of the logarithm. */
const sd = 0.5;
const step = sd / 8;
const points = 141;
const lowest = Math.log(20) - ((points - 1) / 2) * step;
const belief = beliefFromLogHeights(
  lowest,
  step,
  new Float64Array(points).map((_, i) => -0.5 * ((lowest + i * step - Math.log(20)) / sd) ** 2),
);

test('a log-normal belief has the quantiles of the tables', () => {
  // Normal table: 97.5 % at 1.959964, 90 % at 1.281552, 50 % at 0.
  for (const [p, z] of [
    [0.025, -1.959964],
    [0.5, 0],
    [0.9, 1.281552],
    [0.975, 1.959964],
  ] as const) {
    expect(quantilePerHa(belief, p) / (20 * Math.exp(z * sd))).toBeCloseTo(1, 4);
    expect(beliefBelow(belief, Math.log(20) + z * sd)).toBeCloseTo(p, 5);
  }
});

test('as much belief is left out below the interval as above', () => {
  const [low, high] = equalTailedInterval(belief, 0.8);
  expect(beliefBelow(belief, Math.log(low))).toBeCloseTo(0.1, 9);
  expect(beliefBelow(belief, Math.log(high))).toBeCloseTo(0.9, 9);
});

test('nothing is believed below the grid and everything below its upper end', () => {
  expect(beliefBelow(belief, lowest - 1)).toBe(0);
  expect(beliefBelow(belief, 100)).toBe(1);
  expect(beliefBelow(belief, -Infinity)).toBe(0);
});

test('an estimate outside the interval widens it to the estimate, one inside leaves it', () => {
  expect(containing([3, 8], 2)).toEqual([2, 8]);
  expect(containing([3, 8], 9)).toEqual([3, 9]);
  expect(containing([3, 8], 5)).toEqual([3, 8]);
});

test('the fading band is strongest at the middle of a log-normal belief and fades to both sides', () => {
  const band = fadingBand(belief);
  expect(band.densityPerHa).toHaveLength(100);
  expect(Math.max(...band.relativeWeight)).toBe(1);
  const strongest = band.densityPerHa[band.relativeWeight.indexOf(1)]!;
  expect(Math.abs(Math.log(strongest / 20))).toBeLessThan(0.05);
  // Definition of the band: it ends at the thousandth, z = 3.0902, where the height is exp(-z^2/2) = 0.00844.
  expect(band.relativeWeight[0]).toBeCloseTo(0.00844, 3);
});

test('a quantile of no share is refused', () => {
  expect(() => quantilePerHa(belief, 0)).toThrow('quantile requires a share');
});
