import { expect, test } from 'vitest';
import { near } from './nearness.ts';
import { negativeBinomialSampler } from './negative-binomial-sampler.ts';
import { seededRandom } from './random.ts';
import { mean, sampleVariance } from './variance.ts';

// By hand: mean m, variance m + m^2 / k, share of empty stations (1 + m / k)^-k; five Monte Carlo errors or more.
test.each([
  { m: 6, k: 0.25 },
  { m: 1, k: 1 },
  { m: 30, k: 0.15 },
  { m: 5, k: 1e6 },
])('clumped counts of mean $m and k $k have that mean, variance and share of empty stations', ({ m, k }) => {
  const draw = negativeBinomialSampler({ mean: m, clumpingK: k });
  const random = seededRandom(5);
  const counts = Array.from({ length: 200_000 }, () => draw(random));
  const variance = m + m ** 2 / k;
  expect(Math.abs(mean(counts) - m)).toBeLessThan(5 * Math.sqrt(variance / counts.length));
  near(sampleVariance(counts), variance, 0.06);
  near(counts.filter((count) => count === 0).length / counts.length, (1 + m / k) ** -k, 0.06);
});

test('a species that is not there is never drawn', () => {
  expect(negativeBinomialSampler({ mean: 0, clumpingK: 1 })(seededRandom(1))).toBe(0);
});
