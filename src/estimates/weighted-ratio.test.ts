import { describe, expect, test } from 'vitest';
import b7 from '../../test/vectors/b7_published_api.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { weightedQuantile } from '../maths/quantiles.ts';
import { sum } from '../maths/variance.ts';
import { logitInterval } from './share-intervals.ts';
import { weightedRatio, weightedTotal } from './weighted-ratio.ts';

describe('published school data in whole districts', () => {
  const { dnum, api00, enroll, fpc, pw } = b7.data.apiclus1;
  const tolerance = b7.tolerance_relative;
  const districts = [...new Set(dnum)];
  const perDistrict = (amounts: readonly number[]) =>
    districts.map((district) => sum(amounts.filter((_, i) => dnum[i] === district)));
  const ones = dnum.map(() => 1);
  const ratio = (numerators: readonly number[], denominators: readonly number[]) =>
    weightedRatio([
      {
        name: 'all',
        unitWeight: pw[0]!,
        numerators: perDistrict(numerators),
        denominators: perDistrict(denominators),
        populationUnits: fpc[0]!,
      },
    ]);

  // Authority: published 644.17, SE 23.542 (from memory); to 1e-9 vector b7 (R survey svymean of apiclus1).
  test('the mean and its error are the published ones', () => {
    const estimate = ratio(api00, ones);
    expect(estimate.value?.toFixed(2)).toBe('644.17');
    expect(estimate.standardError?.toFixed(3)).toBe('23.542');
    near(estimate.value, b7.expected.clus1_mean, tolerance);
    near(estimate.standardError, b7.expected.clus1_se, tolerance);
    expect(estimate.degreesOfFreedom).toBe(b7.expected.clus1_df);
  });

  // Authority: vector b7 (R survey svyratio).
  test('a ratio of two totals', () => {
    const estimate = ratio(b7.data.apiclus1['api.stu'], enroll);
    near(estimate.value, b7.expected.clus1_ratio, tolerance);
    near(estimate.standardError, b7.expected.clus1_ratio_se, tolerance);
  });

  // Authority: vector b7 (R survey svyciprop, logit).
  test('a share and its logit interval', () => {
    const { value, standardError, degreesOfFreedom } = ratio(
      b7.data.apiclus1['sch.wide'].map((answer) => (answer === 'Yes' ? 1 : 0)),
      ones,
    );
    near(value, b7.expected.clus1_prop, tolerance);
    const share = { value: value!, standardError, degreesOfFreedom: degreesOfFreedom! };
    allNear(logitInterval(share), b7.expected.clus1_prop_ci_logit, tolerance);
  });

  // Authority: vector b7 (R survey svyquantile, qrule "math"); its intervals are version-bound and not tested.
  test('weighted quartiles', () => {
    const values = api00.map((value, i) => ({ value, weight: pw[i]! }));
    allNear(
      [0.25, 0.5, 0.75].map((p) => weightedQuantile(values, p)),
      b7.expected.clus1_q,
      tolerance,
    );
  });
});

test('sums of zero give no ratio, and no strata are a mistake', () => {
  const empty = {
    name: 'reef',
    unitWeight: 1,
    numerators: [0, 0],
    denominators: [0, 0],
    populationUnits: null,
  };
  expect(weightedRatio([empty])).toMatchObject({ value: null, standardError: null });
  expect(() => weightedRatio([])).toThrow('at least one stratum');
  expect(() => weightedTotal([])).toThrow('at least one stratum');
});

// By hand: 2 * (3 + 5) = 16; variance 2/1 * ((6 - 8)^2 + (10 - 8)^2) = 16.
test('a weighted total of two stations', () => {
  const strata = [
    { name: 'reef', unitWeight: 2, numerators: [3, 5], denominators: [1, 1], populationUnits: null },
  ];
  expect(weightedTotal(strata)).toEqual({ value: 16, standardError: 4, degreesOfFreedom: 1, reason: null });
});
