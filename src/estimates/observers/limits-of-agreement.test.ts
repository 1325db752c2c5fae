import { expect, test } from 'vitest';
import i2 from '../../../test/vectors/i2_bland_altman.json' with { type: 'json' };
import { allNear, near } from '../../maths/nearness.ts';
import { limitsOfAgreement } from './limits-of-agreement.ts';
import { ratioOfCounts } from './ratio-of-counts.ts';

// Authority: Bland and Altman 1986, Table 1 (data read), vector i2 (R 4.2.2).
test('two meters blown by 17 people differ by −78 to 74', () => {
  const { data, expected, tolerance_relative: tolerance } = i2;
  const found = limitsOfAgreement(data.a.map((a, i) => a - data.b[i]!))!;
  near(found.bias, expected.bias, tolerance);
  near(found.standardDeviation, expected.sd, tolerance);
  allNear(found.limits, expected.loa, tolerance);
  allNear(found.biasInterval, expected.ci_bias, tolerance);
  near(found.limitStandardError, expected.se_loa_full, tolerance);
});

test('two pairs give no limits', () => {
  expect(limitsOfAgreement([1, 2])).toBeNull();
  expect(
    ratioOfCounts([
      { station: 'A', first: 1, second: 2 },
      { station: 'B', first: 3, second: 2 },
    ]),
  ).toBeNull();
});

// By hand: counts chosen so that second + 0.5 is twice first + 0.5 on every belt.
test('a diver who always counts twice as many has a ratio of 2 and limits at 2', () => {
  const pairs = [1, 4, 10].map((first) => ({ station: `${first}`, first, second: 2 * (first + 0.5) - 0.5 }));
  const found = ratioOfCounts(pairs)!;
  near(found.ratio, 2, 1e-12);
  allNear(found.limits, [2, 2], 1e-9);
});

// Invariance: who is called first does not matter but for the side of the ratio.
test('exchanged divers give the inverse ratio', () => {
  const pairs = [
    [3, 5],
    [0, 2],
    [12, 9],
    [7, 7],
  ].map(([first, second], i) => ({ station: `${i}`, first: first!, second: second! }));
  const there = ratioOfCounts(pairs)!;
  const back = ratioOfCounts(pairs.map((one) => ({ ...one, first: one.second, second: one.first })))!;
  near(there.ratio * back.ratio, 1, 1e-12);
  near(there.limits[0] * back.limits[1], 1, 1e-12);
});

// By hand: logs of ratios 1, 1 at A, 2, 2 at B, 3, 3 at C (in units of ln): mean 2, sums of residuals -2, 0, 2,
// variance 3/2 x 8 / 36 = 1/3, t(2) = 4.3027: 2 +- 2.484. Taken belt by belt it would be 2 +- 0.94.
test('the station, not the belt, is the unit of the middle ratio', () => {
  const pairs = [1, 1, 2, 2, 3, 3].map((log, i) => ({
    station: 'AABBCC'[i]!,
    first: 9.5,
    second: 10 * Math.exp(log) - 0.5,
  }));
  const found = ratioOfCounts(pairs)!;
  expect(found.stations).toBe(3);
  allNear(found.ratioInterval!.map(Math.log), [2 - 2.4841, 2 + 2.4841], 1e-3);
  expect(ratioOfCounts(pairs.slice(0, 4))!.ratioInterval).toBeNull();
});
