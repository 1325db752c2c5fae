import { expect, test } from 'vitest';
import c4 from '../../test/vectors/c4_delta_lognormal.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { mean, sampleVariance } from '../maths/variance.ts';
import { deltaLognormalMean, penningtonSeries } from './delta-lognormal.ts';

const { expected, tolerance_relative: tolerance } = c4;

// Authority: vector c4 (R 4.2.2, from Pennington 1983, series read in a general fisheries package).
test('the mean of fourteen stations, six of them with animals', () => {
  const found = deltaLognormalMean(c4.data.y)!;
  const logs = c4.data.y.filter((y) => y > 0).map(Math.log);
  near(found.value, expected.c, tolerance);
  near(found.standardError, expected.se_c, tolerance);
  near(found.standardError ** 2, expected.var_c, tolerance);
  near(mean(logs), expected.mean_log, tolerance);
  near(sampleVariance(logs), expected.var_log, tolerance);
  near(penningtonSeries(6, expected.var_log / 2), expected.G_m_half, tolerance);
  near((6 / 14) * Math.exp(expected.mean_log + expected.var_log / 2), expected.naive_aitchison, tolerance);
  near(mean(c4.data.y), expected.arith_mean, tolerance);
  near(Math.sqrt(sampleVariance(c4.data.y)! / 14), expected.arith_se, tolerance);
});

// Authority: vector c4, Gm_checks.
test.each(expected.Gm_checks.m.map((m, i) => ({ m, i })))('the series for $m values', ({ m, i }) => {
  near(penningtonSeries(m, expected.Gm_checks.t[i]!), expected.Gm_checks.G[i]!, tolerance);
});

test('two stations with animals are too few, and so are none', () => {
  expect(deltaLognormalMean([0, 3, 8])).toBeNull();
  expect(deltaLognormalMean([0, 0])).toBeNull();
  expect(deltaLognormalMean([])).toBeNull();
});

// By hand: equal logs have no variance and G = 1: the mean is 4 * 3 / 4 = 3.
test('equal values above zero give the plain mean', () => {
  near(deltaLognormalMean([4, 4, 4, 0])?.value, 3, 1e-12);
});
