/** Quantiles of drawn values and of weighted values. */

import { normalQuantile } from './distributions.ts';

/**
 * Quantile of bootstrap draws at rank (B + 1) * probability, with interpolation on the normal-quantile
 * scale between the two neighbouring draws. Beyond the first or last draw: that draw.
 *
 * Assumes the draws are sorted upward. Throws on an empty list.
 * Source: Davison and Hinkley 1997, equation 5.8 (from memory; reproduced against R boot.ci).
 */
export function interpolatedQuantile(sortedDraws: ArrayLike<number>, probability: number): number {
  const draws = sortedDraws.length;
  if (draws === 0) throw new Error('interpolatedQuantile requires at least one draw');
  // A rank that is whole but for rounding is whole: (999 + 1) * 0.975 must be 975.
  const rank = snapToWhole((draws + 1) * probability);
  const k = Math.floor(rank);
  if (k < 1) return sortedDraws[0]!;
  if (k >= draws) return sortedDraws[draws - 1]!;
  const lower = sortedDraws[k - 1]!;
  if (k === rank) return lower;
  const from = normalQuantile(k / (draws + 1));
  const to = normalQuantile((k + 1) / (draws + 1));
  return lower + ((normalQuantile(probability) - from) / (to - from)) * (sortedDraws[k]! - lower);
}

function snapToWhole(rank: number): number {
  const whole = Math.round(rank);
  return Math.abs(rank - whole) < 1e-9 ? whole : rank;
}

export interface WeightedValue {
  readonly value: number;
  readonly weight: number;
}

/**
 * Weighted quantile: the smallest value at which the share of the weight at or below it reaches
 * `probability`; the inverse of the weighted distribution, with no interpolation.
 *
 * Null when there is no weight. Source: R package survey, svyquantile with qrule "math" (computed with R).
 */
export function weightedQuantile(values: readonly WeightedValue[], probability: number): number | null {
  const sorted = values.filter((item) => item.weight > 0).sort((a, b) => a.value - b.value);
  let total = 0;
  for (const item of sorted) total += item.weight;
  if (sorted.length === 0) return null;
  // Half of six equal weights is three of them, even when the sum is short by a rounding.
  const wanted = probability * total * (1 - 1e-12);
  let below = 0;
  for (const item of sorted) {
    below += item.weight;
    if (below >= wanted) return item.value;
  }
  return sorted.at(-1)!.value;
}
