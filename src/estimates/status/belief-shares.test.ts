import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../maths/distributions.ts';
import { createClumpedIntervals } from '../clumped/clumped-intervals.ts';
import { combineStrata } from '../clumped/combine-strata.ts';
import { densityAtShare, shareBelow } from './belief-shares.ts';

/** A log-normal belief about 50 with standard deviation 0.4 of the logarithm, over its middle 99.8 %. */
const logNormal = (() => {
  const z = Array.from({ length: 100 }, (_, i) => -3.0902 + (i * 6.1804) / 99);
  return {
    densityPerHa: z.map((one) => 50 * Math.exp(0.4 * one)),
    weight: z.map((one) => Math.exp((-one * one) / 2)),
  };
})();

describe('the share of a belief below a density', () => {
  // Second algorithm: the normal distribution function; the band has 100 points, hence three decimals.
  it('is that of the distribution it was drawn from', () => {
    for (const densityPerHa of [20, 35, 50, 70, 120]) {
      const expected = normalCdf(Math.log(densityPerHa / 50) / 0.4);
      expect(shareBelow(logNormal, { densityPerHa, cv: null })).toBeCloseTo(expected, 3);
    }
  });

  // Second algorithm: two independent normal logarithms, variances added: ln(1 + 0.3^2) = 0.08618.
  it('widens with the uncertainty of the reference', () => {
    const expected = normalCdf(Math.log(80 / 50) / Math.sqrt(0.16 + Math.log1p(0.09)));
    expect(shareBelow(logNormal, { densityPerHa: 80, cv: 0.3 })).toBeCloseTo(expected, 2);
  });

  it('is never none nor all, since no survey can say that', () => {
    expect(shareBelow(logNormal, { densityPerHa: 0.001, cv: null })).toBeGreaterThan(0);
    expect(shareBelow(logNormal, { densityPerHa: 1e6, cv: null })).toBeLessThan(1);
  });

  // Second algorithm: the quantile of the posterior itself, read off its fine grid.
  it('agrees with the posterior of clumped counts behind the band', () => {
    const counts = [0, 3, 0, 12, 1, 0, 5].map((animals) => ({ animals, areaM2: 480 }));
    const posterior = createClumpedIntervals().posterior(counts);
    const { band } = combineStrata([{ weight: 1, posterior }], 0.95);
    const belief = { densityPerHa: band.densityPerHa, weight: band.relativeWeight };
    for (const share of [0.1, 0.34, 0.5, 0.66, 0.9]) {
      const densityPerHa = posterior.quantile(share);
      expect(Math.abs(shareBelow(belief, { densityPerHa, cv: null }) - share)).toBeLessThan(0.003);
      expect(Math.abs(Math.log(densityAtShare(belief, share) / densityPerHa))).toBeLessThan(0.02);
    }
  });
});
