import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import f6 from '../../../test/vectors/f6_mdc.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { detectableChange, noncentralityFor } from './detectable-change.ts';
import { noncentralTAbove } from './noncentral-t.ts';

describe('the smallest change that would be told', () => {
  // Authority: vector f6 (R power.t.test; log form by METHODS f).
  test('falls with the stations and rises with the CV', () => {
    f6.data.n.forEach((stations, i) => {
      const change = detectableChange({
        stationsBefore: stations,
        stationsAfter: stations,
        stationCv: f6.data.cv[i]!,
      }).value!;
      near(change.relativeDifference, f6.expected.delta_rel[i]!, f6.tolerance_relative);
      near(change.normalDifference, f6.expected.z_approx[i]!, f6.tolerance_relative);
      near(change.fall, f6.expected.log_min_decline[i]!, f6.tolerance_relative);
      // By hand: rise and fall are the same step on the log scale.
      near((1 + change.rise) * (1 - change.fall), 1, 1e-12);
    });
  });

  // Authority: Cohen 1988 (from memory): d 0.5, two-sided 5 %, power 80 % needs 64 in each group; 63 is short.
  test('is half a standard deviation at 64 stations each and not at 63', () => {
    const at = (stations: number) =>
      detectableChange({
        stationsBefore: stations,
        stationsAfter: stations,
        stationCv: 1,
        significance: 0.05,
      }).value!.relativeDifference;
    expect(at(64)).toBeLessThan(0.5);
    expect(at(63)).toBeGreaterThan(0.5);
  });

  test('shrinks with every station added to either survey', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 80 }), fc.integer({ min: 2, max: 80 }), (before, after) => {
        const fall = (stationsBefore: number, stationsAfter: number) =>
          detectableChange({ stationsBefore, stationsAfter, stationCv: 1 }).value!.fall;
        expect(fall(before, after + 1)).toBeLessThan(fall(before, after));
        near(fall(before, after), fall(after, before), 1e-12);
      }),
      { numRuns: 30 },
    );
  });

  test('cannot be known from one station before and one after', () => {
    const answer = detectableChange({ stationsBefore: 1, stationsAfter: 1, stationCv: 1 });
    expect(answer).toMatchObject({ value: null, problems: [{ code: 'plan-change-not-tellable' }] });
  });

  test('cannot be known without stations', () => {
    expect(detectableChange({ stationsBefore: 0, stationsAfter: 8, stationCv: 1 }).value).toBeNull();
  });
});

describe('the noncentral t', () => {
  // Authority: scipy.stats.nct.sf(value, df, ncp), scipy 1.17.1.
  test.each([
    [2.0, 1, 1.5, 0.5089800984822763],
    [1.76131, 14, 2.6, 0.7957110239903975],
    [1.9801, 126, 2.8, 0.7931811744251329],
    [0.5, 3.5, 0, 0.32342521966127546],
    [-1, 6, 1, 0.9705185287070823],
    [4, 2, 6, 0.8724046713164493],
  ])('above %f with %f degrees of freedom and noncentrality %f', (value, df, noncentrality, share) => {
    near(noncentralTAbove(value, { degreesOfFreedom: df, noncentrality }), share, 1e-9);
  });

  test('is found back from its power', () => {
    const noncentrality = noncentralityFor({ degreesOfFreedom: 14, significance: 0.1, power: 0.8 });
    // Authority: R qt(0.95, 14) = 1.761310.
    near(noncentralTAbove(1.7613101357748562, { degreesOfFreedom: 14, noncentrality }), 0.8, 1e-9);
  });
});
