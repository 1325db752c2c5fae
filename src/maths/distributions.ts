/**
 * Distribution functions, each a thin name over a published numerical library, so that the rest of
 * the house reads in words and the library can be replaced in one file.
 */

import gammaln from '@stdlib/math-base-special-gammaln';
import betaQuantileOf from '@stdlib/stats-base-dists-beta-quantile';
import chiSquareCdfOf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquareQuantileOf from '@stdlib/stats-base-dists-chisquare-quantile';
import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import tCdfOf from '@stdlib/stats-base-dists-t-cdf';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';

/** Natural logarithm of the gamma function, no unit; for positive numbers. */
export function logGamma(x: number): number {
  return gammaln(x);
}

/** Share of a standard normal population that lies at or below z. */
export function normalCdf(z: number): number {
  return normalCdfOf(z, 0, 1);
}

/** The z below which a share `probability` of a standard normal population lies. Infinite at 0 and 1. */
export function normalQuantile(probability: number): number {
  return normalQuantileOf(probability, 0, 1);
}

/** Share of a t population with (not necessarily whole) degrees of freedom that lies at or below t. */
export function tCdf(t: number, degreesOfFreedom: number): number {
  return tCdfOf(t, degreesOfFreedom);
}

/**
 * The t below which a share `probability` lies, for whole or fractional degrees of freedom above zero.
 * Remembered, because a simulation or a long species list asks for the same one thousands of times.
 */
export function tQuantile(probability: number, degreesOfFreedom: number): number {
  let ofProbability = rememberedT.get(probability);
  if (ofProbability === undefined) {
    ofProbability = new Map();
    rememberedT.set(probability, ofProbability);
  }
  const known = ofProbability.get(degreesOfFreedom);
  if (known !== undefined) return known;
  // Satterthwaite's degrees of freedom are rarely twice the same: the memory must not grow for ever.
  if (ofProbability.size >= mostRemembered) ofProbability.clear();
  const value = tQuantileOf(probability, degreesOfFreedom);
  ofProbability.set(degreesOfFreedom, value);
  return value;
}

const rememberedT = new Map<number, Map<number, number>>();
const mostRemembered = 4096;

/**
 * The two-sided multiplier of a standard error: 1.96 for 95 % and unlimited degrees of freedom (null).
 * Null when there are no degrees of freedom left.
 */
export function twoSidedQuantile(confidence: number, degreesOfFreedom: number | null): number | null {
  const upper = (1 + confidence) / 2;
  if (degreesOfFreedom === null) return normalQuantile(upper);
  return degreesOfFreedom > 0 ? tQuantile(upper, degreesOfFreedom) : null;
}

/** The share below which a share `probability` of a beta population with the two shapes lies. */
export function betaQuantile(
  probability: number,
  shapes: { readonly alpha: number; readonly beta: number },
): number {
  return betaQuantileOf(probability, shapes.alpha, shapes.beta);
}

/** The value below which a share `probability` of a chi-square population lies. */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  return chiSquareQuantileOf(probability, degreesOfFreedom);
}

/** The share of a chi-square population that lies at or below the value. */
export function chiSquareCdf(value: number, degreesOfFreedom: number): number {
  return chiSquareCdfOf(value, degreesOfFreedom);
}
