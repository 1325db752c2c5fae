import { describe, expect, it } from 'vitest';
import f1 from '../../../test/vectors/f1_two_surveys_independent.json' with { type: 'json' };
import f2 from '../../../test/vectors/f2_permutation_exact.json' with { type: 'json' };
import f2b from '../../../test/vectors/f2b_permutation_stratified.json' with { type: 'json' };
import f3 from '../../../test/vectors/f3_paired.json' with { type: 'json' };
import f4 from '../../../test/vectors/f4_baci.json' with { type: 'json' };
import f5 from '../../../test/vectors/f5_trend.json' with { type: 'json' };
import { twoSidedQuantile } from '../../maths/distributions.ts';
import { seededRandom } from '../../maths/random.ts';
import { beforeAfterControl } from './before-after-control.ts';
import { permutationTest } from './permutation-test.ts';
import { trendOf } from './trend.ts';
import { changeOfMeans, contrastOf, type StratumOfTwo } from './two-means.ts';

/** Relative tolerance of the vectors: 1e-9. */
function near(found: number | null | undefined, wanted: number, tolerance = 1e-9): void {
  expect(found).not.toBeNull();
  expect(Math.abs(found! - wanted)).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(wanted)));
}

function nearBoth(found: readonly number[] | null | undefined, wanted: readonly number[]): void {
  expect(found).toHaveLength(wanted.length);
  for (const [i, value] of wanted.entries()) near(found![i], value);
}

const places = (values: readonly number[], named = false) =>
  values.map((valuePerHa, i) => ({ place: named ? `P${i}` : null, valuePerHa }));
const one = (from: readonly number[], to: readonly number[], named = false): StratumOfTwo[] => [
  { name: 'A', weight: 1, from: places(from, named), to: places(to, named) },
];

describe('two surveys with stations drawn anew', () => {
  // Authority: vector f1, R 4.2.2 (t.test, qt); Welch 1947, delta method.
  it('differ by the difference and the ratio of R, each with its own degrees of freedom', () => {
    const { data, expected } = f1;
    const change = changeOfMeans(one(data.y1, data.y2), 0.95);
    near(change.fromPerHa, expected.mean1);
    near(change.toPerHa, expected.mean2);
    near(change.difference.value, expected.diff);
    near(change.difference.standardError, expected.se_diff);
    near(change.difference.degreesOfFreedom, expected.welch_df);
    near(change.difference.pValue, expected.p_welch);
    nearBoth(change.difference.interval, expected.ci95_diff);
    near(change.logRatio!.value, expected.lnR);
    near(change.logRatio!.standardError, expected.se_lnR);
    near(change.logRatio!.degreesOfFreedom, expected.df_lnR);
    nearBoth(change.logRatio!.interval!.map(Math.exp), expected.ci95_ratio);
  });

  // By hand: the weights of the strata do not change a stratum of one kind, and two halves of weight are one whole.
  it('weigh strata by area, not by stations', () => {
    const single = changeOfMeans(one([1, 3, 5], [2, 2, 5]), 0.95);
    const tenfold = changeOfMeans([{ ...one([1, 3, 5], [2, 2, 5])[0]!, weight: 10 }], 0.95);
    expect(tenfold).toEqual(single);
    const two = changeOfMeans(
      [
        { name: 'A', weight: 3, from: places([1, 3]), to: places([2, 4]) },
        { name: 'B', weight: 1, from: places([10, 30]), to: places([0, 20]) },
      ],
      0.95,
    );
    near(two.fromPerHa, 0.75 * 2 + 0.25 * 20);
    near(two.toPerHa, 0.75 * 3 + 0.25 * 10);
    // var = 0.75^2 (2/2 + 2/2) + 0.25^2 (200/2 + 200/2) = 1.125 + 12.5
    near(two.difference.standardError, Math.sqrt(13.625));
  });

  it('give no spread from a lone station, and say whose it is', () => {
    const change = changeOfMeans(one([5], [2, 2, 5]), 0.95);
    expect(change.difference.standardError).toBeNull();
    expect(change.reason).toEqual({ code: 'change-lone-station', parameters: { strata: 'A' } });
  });
});

describe('places worked in both surveys', () => {
  // Authority: vector f3, R 4.2.2 (t.test paired).
  it('tell a change that independent stations would hide', () => {
    const { data, expected } = f3;
    const paired = changeOfMeans(one(data.y1, data.y2, true), 0.95);
    near(paired.difference.value, expected.mean_diff);
    near(paired.difference.standardError, expected.se);
    near(paired.difference.degreesOfFreedom, expected.df);
    near(paired.difference.pValue, expected.p);
    nearBoth(paired.difference.interval, expected.ci95);
    near(paired.logRatio!.value, expected.lnR);
    near(paired.logRatio!.standardError, expected.se_lnR);
    nearBoth(paired.logRatio!.interval!.map(Math.exp), expected.ci95_ratio);
    const apart = changeOfMeans(one(data.y1, data.y2), 0.95);
    near(apart.difference.standardError, expected.se_if_wrongly_independent);
    near(apart.difference.pValue, expected.p_if_wrongly_independent);
  });

  // Authority: vector f3, sign flips by full enumeration.
  it('are tested by swapping the two values of a place', () => {
    const { data, expected } = f3;
    const test = permutationTest(one(data.y1, data.y2, true), { random: seededRandom(1), draws: 999 });
    expect(test.isExact).toBe(true);
    near(test.pTwoSided, expected.signflip_p_two_sided);
  });

  // Invariance: with no place matched it is the two-sample case, with all of them the paired one; between, it lies between.
  it('partly matched lie between all and none', () => {
    const { y1, y2 } = f3.data;
    const some: StratumOfTwo[] = [
      {
        name: 'A',
        weight: 1,
        from: places(y1, true),
        to: places(y2, true).map((p, i) => (i % 2 === 0 ? p : { ...p, place: null })),
      },
    ];
    const [all, none] = [changeOfMeans(one(y1, y2, true), 0.95), changeOfMeans(one(y1, y2), 0.95)];
    const part = changeOfMeans(some, 0.95);
    expect(part.pairs).toBe(4);
    expect(part.difference.standardError!).toBeGreaterThan(all.difference.standardError!);
    expect(part.difference.standardError!).toBeLessThan(none.difference.standardError!);
  });
});

// By hand: identical revisits have no spread at all, which is no proof of anything.
it('places that agree to the last animal give no interval and no p value', () => {
  const same = changeOfMeans(one([1, 2, 3], [2, 3, 4], true), 0.95);
  expect(same.difference).toMatchObject({ value: 1, standardError: 0, interval: null, pValue: null });
});

// Authority: an abstract on sandfish at Warrior Reef (shared/values, a solid value): -77.5 %, 95 % interval -63 to -86 %,
// 50 sites. From the value and the nearer end, the form of our interval must give the farther end in the printed digits.
it('the published fall of 77.5 % has the interval of a log ratio', () => {
  const lnRatio = Math.log(1 - 0.775);
  const standardError = (Math.log(1 - 0.63) - lnRatio) / twoSidedQuantile(0.95, 49)!;
  const { interval } = contrastOf(lnRatio, { variance: standardError ** 2, degreesOfFreedom: 49 }, 0.95);
  const percent = interval!.map((end) => Math.round(100 * (Math.exp(end) - 1)));
  expect(percent).toEqual([-86, -63]);
});

describe('permutation of stations', () => {
  // Authority: vector f2, full enumeration in R (combn).
  it('counts 92 of 924 arrangements as far', () => {
    const { data, expected } = f2;
    const test = permutationTest(one(data.a, data.b), { random: seededRandom(1), draws: 999 });
    near(test.statistic, expected.diff);
    expect(test).toMatchObject({ isExact: true, arrangements: 924, asFarOrFarther: 92 });
    near(test.pOneSided, expected.p_one_sided);
  });

  // Authority: vector f2b, full enumeration in R (expand.grid of combn).
  it('stays within strata: 324 of 8400', () => {
    const { data, expected } = f2b;
    const strata = Object.entries(data.data).map(([name, { a, b }], h) => ({
      name,
      weight: data.W[h]!,
      from: places(a),
      to: places(b),
    }));
    const test = permutationTest(strata, { random: seededRandom(1), draws: 999 });
    near(test.statistic, expected.stat, 1e-6);
    expect(test).toMatchObject({ isExact: true, arrangements: 8400, asFarOrFarther: 324 });
    near(test.pOneSided, expected.p_one_sided);
  });

  // A second way: the same 924 arrangements drawn at random. Four standard errors of 4999 draws around the exact p
  // of vector f2, 0.0996: 4 sqrt(0.0996 x 0.9004 / 4999) = 0.017. A pool of 25 stations forces the drawing; its extra
  // 13 stations lie in a stratum of weight nearly nothing, so that the exact p value stays that of f2.
  it('drawn at random comes near the exact one and repeats itself', () => {
    const strata = [
      ...one(f2.data.a, f2.data.b),
      { name: 'B', weight: 1e-12, from: places([1, 2, 3, 4, 5, 6, 7]), to: places([1, 2, 3, 4, 5, 6]) },
    ];
    const draw = () => permutationTest(strata, { random: seededRandom(7), draws: 4999 });
    expect(draw()).toEqual(draw());
    expect(draw().isExact).toBe(false);
    expect(Math.abs(draw().pTwoSided - f2.expected.p_two_sided)).toBeLessThan(0.017);
  });
});

// Authority: vector f4, R 4.2.2 (lm interaction; Welch-Satterthwaite by hand); Underwood 1994.
it('before, after, control: the contrast and the ratio of ratios of R', () => {
  const { data, expected } = f4;
  const cell = (zone: string, time: string) =>
    data.y.filter((_, i) => data.zone[i] === zone && data.time[i] === time);
  const found = beforeAfterControl(
    {
      impactBefore: cell('impact', 'before'),
      impactAfter: cell('impact', 'after'),
      controlBefore: cell('control', 'before'),
      controlAfter: cell('control', 'after'),
    },
    0.95,
  );
  near(found.contrast.value, expected.contrast);
  near(found.contrast.standardError, expected.se_unequal);
  near(found.contrast.degreesOfFreedom, expected.df_satterthwaite);
  near(found.contrast.pValue, expected.p);
  nearBoth(found.contrast.interval, expected.ci95);
  near(Math.exp(found.logRatioOfRatios!.value), expected.ratio_of_ratios);
  nearBoth(found.logRatioOfRatios!.interval!.map(Math.exp), expected.ci95_ror);
});

// Authority: vector f5, R 4.2.2 (lm with weights; matrix algebra for the known variances).
describe('trend over six surveys', () => {
  it('is that of R, with the wider of two intervals', () => {
    const { data, expected } = f5;
    const points = data.year.map((year, i) => ({ year, densityPerHa: data.D[i]!, cv: data.cv[i]! }));
    const trend = trendOf(points, 0.95);
    near(trend.slopePerYear, expected.slope);
    near(trend.standardErrorOfScatter, expected.se_lm);
    near(trend.pValue, expected.p_lm);
    near(trend.percentPerYear, expected.pct_per_year);
    nearBoth(trend.intervalOfScatterPercent, expected.ci95_pct_lm);
    near(trend.standardErrorKnown, expected.se_known_v);
    nearBoth(trend.intervalKnownPercent, expected.ci95_pct_known_v);
    nearBoth(trend.intervalPercent, expected.ci95_pct_known_v);
    near(trend.heterogeneity.q, expected.Q);
    near(trend.heterogeneity.pValue, expected.p_Q);
    near(trend.heterogeneity.tauSquared, expected.tau2);
    near(trend.wholePercent, expected.total_change_pct_2015_2025);
  });

  it('refuses two surveys and a zero, which have no line', () => {
    expect(() => trendOf([{ year: 1, densityPerHa: 2, cv: 0.1 }], 0.95)).toThrow('three surveys');
  });
});
