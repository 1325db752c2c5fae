import { describe, expect, test } from 'vitest';
import { normalQuantile } from './distributions.ts';
import { near } from './nearness.ts';
import { interpolatedQuantile, weightedQuantile } from './quantiles.ts';

describe('the quantile of resampled values', () => {
  const draws = Float64Array.from({ length: 999 }, (_, i) => i + 1);

  // By hand: rank (999 + 1) * 0.025 = 25, the 25th of 1 … 999.
  test('takes the draw itself when the rank is whole', () => {
    expect(interpolatedQuantile(draws, 0.025)).toBe(25);
    expect(interpolatedQuantile(draws, 0.975)).toBe(975);
  });

  // By hand: rank 1.5 of three draws, between 10 and 30 on the normal scale: z(.375) between z(.25) and z(.5).
  test('goes between two draws on the normal scale', () => {
    const share =
      (normalQuantile(0.375) - normalQuantile(0.25)) / (normalQuantile(0.5) - normalQuantile(0.25));
    near(interpolatedQuantile([10, 30, 40], 0.375), 10 + 20 * share, 1e-12);
  });

  test('beyond the outermost draws it stays at them', () => {
    expect(interpolatedQuantile([10, 30, 40], 0.001)).toBe(10);
    expect(interpolatedQuantile([10, 30, 40], 0.999)).toBe(40);
  });
});

describe('the weighted quantile', () => {
  // By hand: weights 1, 1, 2 of 4: half of the weight is reached at the second value.
  test('is the smallest value at which the wanted share of the weight is reached', () => {
    const lengths = [
      { value: 30, weight: 2 },
      { value: 10, weight: 1 },
      { value: 20, weight: 1 },
    ];
    expect(weightedQuantile(lengths, 0.5)).toBe(20);
    expect(weightedQuantile(lengths, 0.51)).toBe(30);
    expect(weightedQuantile(lengths, 0.1)).toBe(10);
  });

  test('without weight there is none', () => {
    expect(weightedQuantile([], 0.5)).toBeNull();
    expect(weightedQuantile([{ value: 5, weight: 0 }], 0.5)).toBeNull();
  });
});
