import { describe, expect, test } from 'vitest';
import c1 from '../../test/vectors/c1_lognormal_ci.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { lognormalInterval } from './lognormal-interval.ts';
import { tInterval } from './t-interval.ts';

describe('the log-normal interval', () => {
  // Authority: vector c1 (R 4.2.2, qnorm and qt; Buckland et al. 1993, formula read).
  test.each(c1.data.D.map((value, i) => ({ value, i })))('of a density of $value', ({ value, i }) => {
    const degreesOfFreedom = c1.data.df[i] ?? null;
    const interval = lognormalInterval({ value, standardError: value * c1.data.cv[i]!, degreesOfFreedom })!;
    allNear(interval, [c1.expected.lo[i]!, c1.expected.hi[i]!], c1.tolerance_relative);
    near(interval[1] / value, c1.expected.C[i]!, c1.tolerance_relative);
    near(Math.log1p(c1.data.cv[i]! ** 2), c1.expected.var_logD[i]!, c1.tolerance_relative);
  });
});

test.each([
  { name: 'nothing was seen', value: 0, standardError: 0, degreesOfFreedom: 5 },
  { name: 'the density is unknown', value: null, standardError: null, degreesOfFreedom: null },
  { name: 'a lone station has no spread', value: 5, standardError: null, degreesOfFreedom: null },
  { name: 'no degrees of freedom are left', value: 5, standardError: 1, degreesOfFreedom: 0 },
])('no log-normal interval when $name', ({ value, standardError, degreesOfFreedom }) => {
  expect(lognormalInterval({ value, standardError, degreesOfFreedom })).toBeNull();
  if (value !== 0) expect(tInterval({ value, standardError, degreesOfFreedom })).toBeNull();
});

// By hand: no spread is an interval of one point, never NaN.
test('without any spread both intervals are the value itself', () => {
  const estimate = { value: 5, standardError: 0, degreesOfFreedom: 3 };
  expect(lognormalInterval(estimate)).toEqual([5, 5]);
  expect(tInterval(estimate)).toEqual([5, 5]);
});
