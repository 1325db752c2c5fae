import { describe, expect, test } from 'vitest';
import * as d from './distributions.ts';
import { near } from './nearness.ts';

describe('distribution functions', () => {
  // Authority: printed tables (Fisher and Yates style, from memory), to the digits printed.
  test('agree with the printed tables', () => {
    near(d.normalQuantile(0.975), 1.959964, 1e-6);
    near(d.tQuantile(0.975, 1), 12.7062, 1e-5);
    near(d.tQuantile(0.975, 18), 2.10092, 1e-5);
    near(d.chiSquareQuantile(0.95, 1), 3.84146, 1e-6);
    near(d.normalCdf(1.959963984540054), 0.975, 1e-12);
  });

  // Authority: scipy 1.17.1 (stats.t.ppf(.975, 11.7333055), stats.beta.ppf(.025, 81, 183), special.gammaln(0.263)).
  test('take fractional degrees of freedom and shapes', () => {
    near(d.tQuantile(0.975, 11.7333055), 2.184318167233167, 1e-9);
    near(d.betaQuantile(0.025, { alpha: 81, beta: 183 }), 0.25273674558527126, 1e-9);
    near(d.logGamma(0.263), 1.2344732058732857, 1e-12);
    near(d.tCdf(d.tQuantile(0.8, 3.3), 3.3), 0.8, 1e-10);
  });

  test('a remembered t quantile is the same as the first one, also after ten thousand others', () => {
    const first = d.tQuantile(0.975, 7.5);
    for (let i = 0; i < 10_000; i++) d.tQuantile(0.975, 5 + i / 1000);
    expect(d.tQuantile(0.975, 7.5)).toBe(first);
  });

  test('no degrees of freedom give no multiplier', () => {
    expect(d.twoSidedQuantile(0.95, 0)).toBeNull();
    near(d.twoSidedQuantile(0.95, null), 1.959964, 1e-6);
  });
});
