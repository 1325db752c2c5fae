import { describe, expect, test } from 'vitest';
import b2 from '../../test/vectors/b2_stratified.json' with { type: 'json' };
import b2b from '../../test/vectors/b2b_stratified_fpc_small.json' with { type: 'json' };
import b7 from '../../test/vectors/b7_published_api.json' with { type: 'json' };
import b8 from '../../test/vectors/b8_published_tce.json' with { type: 'json' };
import b9 from '../../test/vectors/b9_published_lake.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { mean, sampleVariance, sum } from '../maths/variance.ts';
import { s1Strata } from './s1-survey.ts';
import type { StratumValues } from './shapes.ts';
import { simpleMean } from './simple-mean.ts';
import { stratifiedMean } from './stratified-mean.ts';
import { tInterval } from './t-interval.ts';
import { stockTotal } from './totals.ts';

describe('the miniature survey', () => {
  const estimate = stratifiedMean(s1Strata(b2.data));
  const { expected, tolerance_relative: tolerance } = b2;

  // Authority: vector b2 (R 4.2.2, survey svymean; Satterthwaite by Cochran 1977 eq 5.16 from memory).
  test('strata count by their area', () => {
    near(estimate.value, expected.mean, tolerance);
    near(estimate.standardError, expected.se, tolerance);
    near(estimate.standardError! / estimate.value!, expected.cv, tolerance);
    near(estimate.degreesOfFreedom, expected.df_satterthwaite, tolerance);
    near(stratifiedMean(s1Strata(b2.data, true)).standardError, expected.se_with_fpc, tolerance);
    near(mean(b2.data.density_ind_ha), expected.unweighted_mean_wrong, tolerance);
  });

  test('each stratum has its own mean and variance', () => {
    for (const stratum of s1Strata(b2.data)) {
      const at = expected.by_stratum.stratum.indexOf(stratum.name);
      expect(stratum.values.length).toBe(expected.by_stratum.n[at]);
      near(stratum.weight, expected.by_stratum.area_ha[at]!, tolerance);
      near(stratum.weight / 875, expected.W[stratum.name as 'RF'], tolerance);
      near(mean(stratum.values), expected.by_stratum.mean[at]!, tolerance);
      near(sampleVariance(stratum.values), expected.by_stratum.s2[at]!, tolerance);
    }
  });

  test('intervals and stock follow the chosen degrees of freedom', () => {
    allNear(tInterval(estimate), expected.ci95_satterthwaite, tolerance);
    allNear(
      tInterval({ ...estimate, degreesOfFreedom: expected.df_design }),
      expected.ci95_df_design,
      tolerance,
    );
    const total = stockTotal(estimate, { areaHa: 875, areaStandardErrorHa: 0 });
    near(total.value, expected.total, tolerance);
    near(total.standardError, expected.se_total, tolerance);
    allNear(tInterval(total), expected.ci95_total_satterthwaite, tolerance);
  });

  // Authority: vector b2 (R survey deff): variance over that of 21 stations drawn anywhere.
  test('the design is a little worse here than stations drawn anywhere', () => {
    const strata = s1Strata(b2.data);
    const centre = estimate.value!;
    const squares = strata.reduce((total, { weight, values }) => {
      return total + (weight / values.length) * values.reduce((s, y) => s + (y - centre) ** 2, 0);
    }, 0);
    const anywhere = ((squares / 875) * (21 / 20)) / 21;
    near(estimate.standardError! ** 2 / anywhere, expected.deff_vs_srs, tolerance);
  });
});

// Authority: vector b2b (R 4.2.2, survey svydesign(fpc = ~N)).
test('where a third of the places was visited, the error shrinks', () => {
  const strata = ['a', 'b'].map((name): StratumValues => {
    const at = b2b.data.h.indexOf(name);
    const values = b2b.data.y.filter((_, i) => b2b.data.h[i] === name);
    return { name, weight: b2b.data.N[at]!, values, populationUnits: b2b.data.N[at]! };
  });
  const estimate = stratifiedMean(strata);
  const total = stockTotal(estimate, { areaHa: 27, areaStandardErrorHa: 0 });
  near(estimate.value, b2b.expected.mean, b2b.tolerance_relative);
  near(estimate.standardError, b2b.expected.se, b2b.tolerance_relative);
  near(total.value, b2b.expected.total, b2b.tolerance_relative);
  near(total.standardError, b2b.expected.se_total, b2b.tolerance_relative);
  expect(strata.reduce((df, stratum) => df + stratum.values.length - 1, 0)).toBe(b2b.expected.df);
});

describe('published school data', () => {
  const { stype, fpc, pw } = b7.data.apistrat;
  // The published weights are rounded to single precision (44.2099991); the strata weigh by their sums.
  const strataOf = (values: readonly number[], whole: boolean) =>
    ['E', 'H', 'M'].map((name): StratumValues => {
      const units = fpc[stype.indexOf(name)]!;
      const own = values.filter((_, i) => stype[i] === name);
      const weight = sum(pw.filter((_, i) => stype[i] === name));
      return { name, weight, values: own, populationUnits: whole ? units : null };
    });

  // Authority: published 662.29, SE 9.4089 (read); to 1e-9 vector b7 (R survey svymean).
  test('the stratified mean is the published one', () => {
    const estimate = stratifiedMean(strataOf(b7.data.apistrat.api00, true));
    expect(estimate.value?.toFixed(2)).toBe('662.29');
    expect(estimate.standardError?.toFixed(4)).toBe('9.4089');
    near(estimate.value, b7.expected.strat_mean, b7.tolerance_relative);
    near(estimate.standardError, b7.expected.strat_se, b7.tolerance_relative);
    const unlimited = stratifiedMean(strataOf(b7.data.apistrat.api00, false));
    near(unlimited.standardError, b7.expected.strat_se_nofpc, b7.tolerance_relative);
    expect(stype.length - 3).toBe(b7.expected.strat_df);
  });

  // Authority: published total 3687178, SE 114642 (read); to 1e-9 vector b7.
  test('the stratified total is the published one', () => {
    const estimate = stratifiedMean(strataOf(b7.data.apistrat.enroll, true));
    const areaHa = strataOf([], true).reduce((total, stratum) => total + stratum.weight, 0);
    const total = stockTotal(estimate, { areaHa, areaStandardErrorHa: 0 });
    expect(total.value?.toFixed(0)).toBe('3687178');
    expect(total.standardError?.toFixed(0)).toBe('114642');
    near(total.value, b7.expected.enroll_total, b7.tolerance_relative);
    near(total.standardError, b7.expected.enroll_total_se, b7.tolerance_relative);
  });

  // Authority: vector b7 (R survey svyby); the by-type errors printed elsewhere are rejected there.
  test('each school type has its own mean', () => {
    strataOf(b7.data.apistrat.api00, true).forEach((stratum, h) => {
      const estimate = simpleMean(stratum);
      expect(stratum.name).toBe(b7.expected.by_type[h]);
      near(estimate.value, b7.expected.by_mean[h]!, b7.tolerance_relative);
      near(estimate.standardError, b7.expected.by_se[h]!, b7.tolerance_relative);
    });
  });
});

// Authority: Manly and Navarro, Table 2.3 (read): 5609.1, SE 1760.4, interval 2158.7 to 9059.4, SRS SE 1996.8; vector b8.
test('ten strata of very skewed data give the published mean, error and interval', () => {
  const strata = b8.data.rows.map((values, h) => ({
    name: String(h),
    weight: 1,
    values,
    populationUnits: null,
  }));
  const estimate = stratifiedMean(strata);
  expect(estimate.value?.toFixed(1)).toBe('5609.1');
  expect(estimate.standardError?.toFixed(1)).toBe('1760.4');
  near(estimate.value, b8.expected.mean, b8.tolerance_relative);
  near(estimate.standardError, b8.expected.se, b8.tolerance_relative);
  near(estimate.degreesOfFreedom, b8.expected.df_satterthwaite, b8.tolerance_relative);
  // The book multiplies by 1.96, not by the exact quantile.
  const half = 1.96 * estimate.standardError!;
  allNear([estimate.value! - half, estimate.value! + half], b8.expected.ci95_z, b8.tolerance_relative);
  const anywhere = simpleMean({ name: 'all', values: b8.data.rows.flat(), populationUnits: null });
  near(anywhere.standardError, b8.expected.se_srs, b8.tolerance_relative);
  strata.forEach((stratum, h) => {
    near(mean(stratum.values), b8.expected.stratum_means[h]!, b8.tolerance_relative);
    near(Math.sqrt(sampleVariance(stratum.values)!), b8.expected.stratum_sd[h]!, b8.tolerance_relative);
  });
});

/** Numbers with exactly this mean and variance: a ladder, shifted and stretched. */
function withMoments({ n, centre, variance }: { n: number; centre: number; variance: number }): number[] {
  const ladder = Array.from({ length: n }, (_, i) => i - (n - 1) / 2);
  const stretch = Math.sqrt(variance / sampleVariance(ladder)!);
  return ladder.map((step) => centre + step * stretch);
}

// Authority: course example (read): weighted mean 14.64, variance 2.25, printed rounded; vector b9 at 0.01.
test('three layers of a lake give the published mean and variance', () => {
  const { h, W, n, m, s2 } = b9.data;
  const strata = h.map((name, i) => ({
    name,
    weight: W[i]!,
    values: withMoments({ n: n[i]!, centre: m[i]!, variance: s2[i]! }),
    populationUnits: null,
  }));
  const estimate = stratifiedMean(strata);
  near(estimate.value, b9.expected.published_mean, 0.01 / 14.64);
  near(estimate.standardError! ** 2, b9.expected.published_var, 0.01 / 2.25);
  near(estimate.standardError, b9.expected.se, 1e-9);
  near(estimate.degreesOfFreedom, b9.expected.df_satterthwaite, 1e-9);
});

describe('what cannot be known', () => {
  const reef = { name: 'reef', weight: 2, values: [10, 30], populationUnits: null };

  test('one station in a stratum gives a mean and no standard error, with the stratum named', () => {
    const estimate = stratifiedMean([reef, { name: 'pass', weight: 1, values: [50], populationUnits: null }]);
    expect(estimate).toEqual({
      value: 30,
      standardError: null,
      degreesOfFreedom: null,
      reason: { code: 'lone-station', parameters: { strata: 'pass' } },
    });
  });

  test('a stratum without stations leaves the mean unknown', () => {
    const estimate = stratifiedMean([reef, { name: 'pass', weight: 1, values: [], populationUnits: null }]);
    expect(estimate).toMatchObject({
      value: null,
      reason: { code: 'no-station', parameters: { where: 'pass' } },
    });
  });

  // By hand: 4 stations minus 2 strata.
  test('no animal anywhere is a mean of zero with a standard error of zero', () => {
    const zeros = ['reef', 'flat'].map((name) => ({
      name,
      weight: 1,
      values: [0, 0],
      populationUnits: null,
    }));
    expect(stratifiedMean(zeros)).toEqual({ value: 0, standardError: 0, degreesOfFreedom: 2, reason: null });
  });

  test('a survey without strata or with an area of zero is a mistake of the caller', () => {
    expect(() => stratifiedMean([])).toThrow('at least one stratum');
    expect(() => stratifiedMean([{ ...reef, weight: 0 }])).toThrow('positive weight');
  });
});
