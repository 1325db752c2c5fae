import { describe, expect, test } from 'vitest';
import b2 from '../../test/vectors/b2_stratified.json' with { type: 'json' };
import c2 from '../../test/vectors/c2_bootstrap_srs.json' with { type: 'json' };
import c2b from '../../test/vectors/c2b_bootstrap_stratified.json' with { type: 'json' };
import { normalQuantile } from '../maths/distributions.ts';
import { allNear, near } from '../maths/nearness.ts';
import { type Picker, seededRandom } from '../maths/random.ts';
import { mean, sampleVariance } from '../maths/variance.ts';
import {
  bcaInterval,
  jackknifeInfluence,
  percentileInterval,
  resampledMeans,
  resamplingShortfall,
} from './bootstrap.ts';
import { s1Strata } from './s1-survey.ts';
import type { StratumValues } from './shapes.ts';
import { stratifiedMean } from './stratified-mean.ts';

/** Replays the stored picks: R numbers stations from 1 through all strata, ours from 0 within each. */
function storedPicks(indices: readonly (readonly number[])[], strata: readonly StratumValues[]): Picker {
  const starts = strata.flatMap((stratum, h) => {
    const start = strata.slice(0, h).reduce((n, before) => n + before.values.length, 0);
    return stratum.values.map(() => start);
  });
  const picks = indices.flatMap((row) => row.map((pick, i) => pick - 1 - starts[i]!));
  let at = 0;
  return { below: () => picks[at++]! };
}

describe('resampling fourteen stations', () => {
  const strata = [{ name: 'reef', weight: 1, values: c2.data.y, populationUnits: null }];
  const means = resampledMeans(strata, storedPicks(c2.data.indices_1based, strata), c2.data.B);
  const { expected, tolerance_relative: tolerance } = c2;
  const value = mean(c2.data.y);
  const standardError = Math.sqrt(sampleVariance(means)!);

  // Authority: vector c2 (R 4.2.2, boot.ci on the stored picks; Davison and Hinkley 1997 eq 5.8).
  test('percentile and BCa intervals are those of R', () => {
    near(value, expected.t0, tolerance);
    near(mean(means), expected.mean_t, tolerance);
    near(standardError, expected.se_boot, tolerance);
    allNear(percentileInterval(means), expected.percentile, tolerance);
    const bca = bcaInterval({ means, value, strata })!;
    near(bca.bias, expected.z0, tolerance);
    near(bca.acceleration, expected.a, tolerance);
    near(bca.acceleration, expected.a_from_L, tolerance);
    allNear(bca.probabilities, expected.alpha_bca, tolerance);
    allNear(bca.interval, expected.bca, tolerance);
  });

  // Authority: vector c2; the other two intervals of boot.ci follow from the same parts.
  test('bias, normal and basic intervals follow from the same draws', () => {
    const bias = mean(means) - value;
    near(bias, expected.bias, tolerance);
    const half = normalQuantile(0.975) * standardError;
    allNear([value - bias - half, value - bias + half], expected.norm, tolerance);
    const [low, high] = percentileInterval(means)!;
    allNear([2 * value - high, 2 * value - low], expected.basic, tolerance);
    near(Math.sqrt(((13 / 14) * sampleVariance(c2.data.y)!) / 14), expected.exact_boot_se, tolerance);
  });

  // Authority: vector c2. R, comparing exactly, agrees here; the ties are why ours compares with a tolerance.
  test('draws equal to the value but for rounding do not count as below it', () => {
    const ties = means.filter((draw) => Math.abs(draw - value) <= 1e-9 * value);
    expect(ties.length).toBe(expected.ties_with_t0);
    near(bcaInterval({ means, value, strata })!.bias, expected.z0_boot_package, tolerance);
    allNear(bcaInterval({ means, value, strata })!.interval, expected.bca_boot_package, tolerance);
  });
});

describe('resampling within strata', () => {
  const strata = s1Strata(b2.data);
  const means = resampledMeans(
    strata,
    storedPicks(c2b.data.indices_1based, strata),
    c2b.data.indices_1based.length,
  );
  const { expected, tolerance_relative: tolerance } = c2b;

  // Authority: vector c2b (R 4.2.2, boot(strata =), boot.ci with empinf(type = "jack")).
  test('percentile and BCa intervals are those of R', () => {
    const value = stratifiedMean(strata).value!;
    near(value, expected.t0, tolerance);
    near(Math.sqrt(sampleVariance(means)!), expected.se_boot, tolerance);
    allNear(percentileInterval(means), expected.percentile, tolerance);
    const bca = bcaInterval({ means, value, strata })!;
    near(bca.bias, expected.z0, tolerance);
    near(bca.acceleration, expected.a, tolerance);
    allNear(bca.interval, expected.bca, tolerance);
  });

  // Authority: vector c2b `L`; absolute, because R's own differences carry 1e-12 of rounding.
  test('the influence of a station is that of leaving it out', () => {
    jackknifeInfluence(strata).forEach((influence, i) => {
      expect(Math.abs(influence - expected.L[i]!)).toBeLessThan(1e-9 * 290);
    });
  });

  // Authority: vector c2b (Rao and Wu 1988 from memory).
  test('the plain error of a few stations falls short by a known factor', () => {
    // The vector lists the strata by name: LG, RF, SL.
    const byName = strata.toSorted((a, b) => (a.name < b.name ? -1 : 1));
    allNear(
      byName.map((s) => resamplingShortfall(s.values.length)),
      expected.rao_wu_factor_by_stratum,
      tolerance,
    );
    expect(resamplingShortfall(1)).toBeNull();
  });
});

describe('seeded resampling', () => {
  const strata = s1Strata(b2.data);

  test('the same seed gives the same 999 means, another seed others', () => {
    const first = resampledMeans(strata, seededRandom(42));
    expect(first.length).toBe(999);
    expect(resampledMeans(strata, seededRandom(42))).toEqual(first);
    expect(resampledMeans(strata, seededRandom(43))).not.toEqual(first);
  });

  // Second algorithm: variance of the resampled mean = sum W^2 (n - 1) / n * s^2 / n; 20 000 draws, 2 % (four errors).
  test('their spread is the exact resampling variance', () => {
    const exact = strata.reduce((total, { weight, values }) => {
      const n = values.length;
      return total + ((weight / 875) ** 2 * ((n - 1) / n) * sampleVariance(values)!) / n;
    }, 0);
    const drawn = resampledMeans(strata, seededRandom(1), 20_000);
    near(Math.sqrt(sampleVariance(drawn)!), Math.sqrt(exact), 0.02);
    near(mean(drawn), stratifiedMean(strata).value!, 0.01);
  });

  test('stations that are all equal have a percentile interval of one point and no BCa interval', () => {
    const equal = [{ name: 'reef', weight: 2, values: [0, 0, 0], populationUnits: null }];
    const means = resampledMeans(equal, seededRandom(1), 99);
    expect(percentileInterval(means)).toEqual([0, 0]);
    expect(bcaInterval({ means, value: 0, strata: equal })).toBeNull();
    expect(percentileInterval(new Float64Array(0))).toBeNull();
  });

  test('a stratum without stations cannot be resampled', () => {
    const empty = [{ name: 'reef', weight: 2, values: [], populationUnits: null }];
    expect(() => resampledMeans(empty, seededRandom(1))).toThrow('every stratum');
    expect(() => resampledMeans([], seededRandom(1))).toThrow('every stratum');
  });
});
