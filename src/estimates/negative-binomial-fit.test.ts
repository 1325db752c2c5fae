import { describe, expect, test } from 'vitest';
import c3 from '../../test/vectors/c3_negbin_mites.json' with { type: 'json' };
import c3b from '../../test/vectors/c3b_negbin_stations.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { sampleVariance, sum } from '../maths/variance.ts';
import { negativeBinomialFit } from './negative-binomial-fit.ts';

type Ends = readonly (number | null)[] | null;

// Authority: Bliss and Fisher 1953, mean 1.1467, k 1.025 (from memory); vector c3 (R MASS glm.nb and profile).
test('the classical red mites on 150 leaves', () => {
  const animals = c3.data.values.flatMap((value, i) => new Array<number>(c3.data.freq[i]!).fill(value));
  const fit = negativeBinomialFit({ animals, areasHa: animals.map(() => 1) })!;
  const { expected, tolerance_relative: tolerance } = c3;
  expect(animals.length).toBe(expected.n);
  expect(fit.densityPerHa.toFixed(4)).toBe('1.1467');
  expect(fit.clumpingK?.toFixed(3)).toBe('1.025');
  near(fit.densityPerHa, expected.mu, tolerance);
  near(fit.clumpingK, expected.k, tolerance);
  near(fit.logLikelihood, expected.loglik, tolerance);
  allNear(fit.densityIntervalPerHa as Ends, expected.mu_ci95, tolerance);
  allNear(fit.clumpingInterval as Ends, expected.k_ci95, tolerance);
  // By hand: moments k = m^2 / (s^2 - m), a first check of the same size.
  const variance = sampleVariance(animals)!;
  const m = sum(animals) / animals.length;
  near(variance, expected.variance, tolerance);
  near(m ** 2 / (variance - m), expected.k_moment, tolerance);
});

// Authority: vector c3b (R MASS glm.nb with an area offset).
test('fourteen stations of unequal area', () => {
  const areasHa = c3b.data.area_m2.map((area) => area / 10_000);
  const fit = negativeBinomialFit({ animals: c3b.data.count, areasHa })!;
  const { expected, tolerance_relative: tolerance } = c3b;
  expect(fit.model).toBe('negative binomial');
  near(fit.densityPerHa, expected.D_ind_ha, tolerance);
  near(fit.clumpingK, expected.k, tolerance);
  near(fit.logLikelihood, expected.loglik, tolerance);
  allNear(fit.densityIntervalPerHa as Ends, expected.D_ci95, tolerance);
  allNear(fit.clumpingInterval as Ends, expected.k_ci95, tolerance);
  // It is not the ratio of sums where areas differ.
  near(sum(c3b.data.count) / sum(areasHa), expected.ratio_of_sums_ind_ha, tolerance);
});

describe('animals that are not clumped', () => {
  // By hand: mean 5, variance 0.5, below Poisson; log likelihood -sum of 5 - x ln 5 + ln x!.
  test('give a Poisson fit without a k', () => {
    const fit = negativeBinomialFit({ animals: [5, 4, 6, 5, 5], areasHa: [1, 1, 1, 1, 1] })!;
    expect(fit).toMatchObject({ model: 'poisson', clumpingK: null, clumpingInterval: null });
    near(fit.densityPerHa, 5, 1e-6);
    near(fit.logLikelihood, -25 + 25 * Math.log(5) - Math.log(120 ** 3 * 24 * 720), 1e-6);
    expect(fit.densityIntervalPerHa[0]).toBeLessThan(5);
    expect(fit.densityIntervalPerHa[1]).toBeGreaterThan(5);
  });

  test('one station is a Poisson fit too', () => {
    expect(negativeBinomialFit({ animals: [7], areasHa: [0.024] })?.model).toBe('poisson');
  });
});

test('no animals or no stations give no fit, and an area of zero is a mistake', () => {
  expect(negativeBinomialFit({ animals: [0, 0], areasHa: [1, 1] })).toBeNull();
  expect(negativeBinomialFit({ animals: [], areasHa: [] })).toBeNull();
  expect(() => negativeBinomialFit({ animals: [1], areasHa: [0] })).toThrow('positive areas');
});

// Invariance: hectares or tenths of hectares, rows in any order.
test('the unit of area and the order of stations do not matter', () => {
  const animals = [0, 12, 3, 0, 700, 1];
  const fit = negativeBinomialFit({ animals, areasHa: animals.map(() => 0.024) })!;
  const other = negativeBinomialFit({ animals: animals.toReversed(), areasHa: animals.map(() => 0.24) })!;
  near(other.densityPerHa * 10, fit.densityPerHa, 1e-6);
  near(other.clumpingK, fit.clumpingK!, 1e-6);
});
