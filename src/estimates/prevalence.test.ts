import { describe, expect, test } from 'vitest';
import b5 from '../../test/vectors/b5_prevalence.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { prevalence } from './prevalence.ts';
import { betaInterval, clopperPearsonInterval, logitInterval, wilsonInterval } from './share-intervals.ts';
import { tInterval } from './t-interval.ts';

const { expected, tolerance_relative: tolerance } = b5;

describe('stations where a species was seen', () => {
  // Authority: vector b5 (R 4.2.2, prop.test(correct = FALSE) and binom.test).
  test.each(b5.data.cases.x.map((positive, i) => ({ positive, stations: b5.data.cases.n[i]!, i })))(
    '$positive of $stations',
    ({ positive, stations, i }) => {
      const { p, wilson_lo, wilson_hi, cp_lo, cp_hi } = expected.cases;
      const wilson = wilsonInterval({ positive, stations })!;
      near(positive / stations, p[i]!, tolerance);
      // R prints -1.4e-17 for none of 21; ours is clamped.
      allNear(wilson, [Math.max(0, wilson_lo[i]!), wilson_hi[i]!], tolerance);
      allNear(clopperPearsonInterval({ positive, stations }), [cp_lo[i]!, cp_hi[i]!], tolerance);
      expect(wilson[0]).toBeGreaterThanOrEqual(0);
      expect(wilson[1]).toBeLessThanOrEqual(1);
    },
  );

  // Authority: Newcombe 1998, published to four digits (from memory).
  test.each([
    { positive: 81, stations: 263, wilson: ['0.2553', '0.3662'], exact: ['0.2527', '0.3676'] },
    { positive: 15, stations: 148, wilson: ['0.0624', '0.1605'], exact: ['0.0578', '0.1617'] },
    { positive: 0, stations: 20, wilson: ['0.0000', '0.1611'], exact: ['0.0000', '0.1684'] },
    { positive: 1, stations: 29, wilson: ['0.0061', '0.1718'], exact: ['0.0009', '0.1776'] },
  ])('$positive of $stations as published', ({ positive, stations, wilson, exact }) => {
    const digits = (ends: readonly number[] | null) => ends?.map((end) => end.toFixed(4));
    expect(digits(wilsonInterval({ positive, stations }))).toEqual(wilson);
    expect(digits(clopperPearsonInterval({ positive, stations }))).toEqual(exact);
  });
});

const strata = [
  { name: 'RF', weight: 420 },
  { name: 'LG', weight: 310 },
  { name: 'SL', weight: 145 },
].map((stratum) => ({
  ...stratum,
  populationUnits: null,
  present: b5.data.present.filter((_, i) => b5.data.stratum[i] === stratum.name).map((one) => one === 1),
}));

describe('prevalence over strata', () => {
  // Authority: vector b5 (R survey svymean and svyciprop: logit, beta, mean).
  test('weighs by stratum and stays below one on the logit scale', () => {
    const found = prevalence(strata);
    expect(found).toMatchObject({ stations: 21, stationsWithSpecies: 20, method: 'logit' });
    near(found.value, expected.stratified_p, tolerance);
    near(found.standardError, expected.stratified_se, tolerance);
    expect(found.degreesOfFreedom).toBe(expected.df_design);
    allNear(found.interval, expected.ci_logit, tolerance);
    allNear(found.interval, expected.ci_xlogit, tolerance);
    const share = { value: found.value!, standardError: found.standardError, degreesOfFreedom: 18 };
    allNear(betaInterval(share, 21), expected.ci_beta, tolerance);
    // The plain interval passes 1: why it is not used.
    allNear(tInterval(share), expected.ci_mean, tolerance);
  });

  test.each([true, false])(
    'seen everywhere or nowhere (%s): the interval is that of all stations together',
    (seen) => {
      const found = prevalence(
        strata.map((stratum) => ({ ...stratum, present: stratum.present.map(() => seen) })),
      );
      expect(found.value).toBe(seen ? 1 : 0);
      expect(found.method).toBe('wilson of all stations');
      expect(found.interval).toEqual(wilsonInterval({ positive: seen ? 21 : 0, stations: 21 }));
    },
  );

  test('one stratum everywhere and another nowhere still leaves doubt', () => {
    const found = prevalence(
      strata.slice(0, 2).map((s, h) => ({ ...s, present: s.present.map(() => h === 0) })),
    );
    expect(found.standardError).toBe(0);
    expect(found.method).toBe('wilson of all stations');
    expect(found.interval![0]).toBeLessThan(found.value!);
    expect(found.interval![1]).toBeGreaterThan(found.value!);
  });

  test('one stratum takes the plain Wilson interval, one station too', () => {
    const present = [true, false, false, true];
    expect(prevalence([{ name: 'RF', weight: 3, present, populationUnits: null }])).toMatchObject({
      value: 0.5,
      method: 'wilson',
      interval: wilsonInterval({ positive: 2, stations: 4 }),
    });
    const lone = prevalence([{ name: 'RF', weight: 3, present: [true], populationUnits: null }]);
    expect(lone).toMatchObject({ value: 1, standardError: null, method: 'wilson' });
  });

  test('a lone station in one of the strata, or an empty stratum, says so', () => {
    const lone = prevalence([...strata, { name: 'PS', weight: 9, present: [false], populationUnits: null }]);
    expect(lone).toMatchObject({ standardError: null, interval: null, reason: { code: 'lone-station' } });
    const empty = prevalence([...strata, { name: 'PS', weight: 9, present: [], populationUnits: null }]);
    expect(empty).toMatchObject({ value: null, stations: 21, reason: { code: 'no-station' } });
    expect(wilsonInterval({ positive: 0, stations: 0 })).toBeNull();
    expect(clopperPearsonInterval({ positive: 0, stations: 0 })).toBeNull();
  });

  test('a share of zero has no logit and no beta interval', () => {
    const none = { value: 0, standardError: 0, degreesOfFreedom: 5 };
    expect(logitInterval(none)).toBeNull();
    expect(betaInterval(none, 6)).toBeNull();
  });
});
