import { expect, test } from 'vitest';
import { negativeBinomialQuantile } from './negative-binomial-quantile.ts';
import { negativeBinomialSampler } from './negative-binomial-sampler.ts';
import { seededRandom } from './random.ts';

test('with k = 1 the bound is that of a geometric population', () => {
  // By hand: share above x is (m / (1 + m))^(x + 1); for m = 4, 0.8^(x + 1) <= 0.001 first at x + 1 = 31.
  expect(negativeBinomialQuantile({ mean: 4, clumpingK: 1 }, 0.999)).toBe(30);
});

test('without clumping the bound is that of Poisson', () => {
  // Poisson table, mean 5 (from memory): P(X <= 12) = 0.9980, P(X <= 13) = 0.9993.
  expect(negativeBinomialQuantile({ mean: 5, clumpingK: null }, 0.999)).toBe(13);
});

test('one drawn station in a thousand lies above the 99.9 % bound', () => {
  const population = { mean: 30, clumpingK: 0.4 };
  const bound = negativeBinomialQuantile(population, 0.999);
  const draw = negativeBinomialSampler(population);
  const random = seededRandom(3);
  let above = 0;
  for (let i = 0; i < 200_000; i++) if (draw(random) > bound) above++;
  // 200 expected at most, standard deviation 14.
  expect(above).toBeLessThan(200 + 4 * 14);
  expect(above).toBeGreaterThan(200 - 5 * 14);
});

test('no animals expected, none allowed; a mean of thousands is no obstacle', () => {
  expect(negativeBinomialQuantile({ mean: 0, clumpingK: 1 }, 0.999)).toBe(0);
  // Normal approximation of Poisson 10 000: 10 000 + 3.09 * 100 = 10 309.
  expect(Math.abs(negativeBinomialQuantile({ mean: 10_000, clumpingK: null }, 0.999) - 10_309)).toBeLessThan(
    6,
  );
});
