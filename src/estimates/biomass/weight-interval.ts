import { twoSidedQuantile } from '../../maths/distributions.ts';
import type { Interval } from '../shapes.ts';

export interface WeightSpread {
  /** Animals per hectare and their interval, of whatever kind. */
  readonly densityPerHa: number;
  readonly intervalPerHa: Interval;
  readonly biomassPerHa: number;
  /**
   * Relative variance of the biomass beyond that of the count: of the mean weight between stations, of the pair, of a
   * conversion. Never negative.
   */
  readonly extraRelativeVariance: number;
  readonly degreesOfFreedom: number | null;
}

/**
 * Interval of a biomass: that of the density, with the weight of an animal carried into both ends.
 *
 * A biomass is animals times mean weight. The skewed part, how many animals there are, keeps the interval made for
 * clumped counts; on the log scale the uncertain weight widens each end as independent errors add. The biomass
 * estimate lies inside whenever the density estimate does. Null where an end of the density is zero.
 * Assumes that what is not known about the weight is small and even beside the count; where stations of many animals
 * also hold heavier ones, the caller counts that in (`extraRelativeVariance`). Checked by simulation (docs/methods/biomass.md).
 */
export function weightInterval(spread: WeightSpread, confidence: number): Interval | null {
  const { densityPerHa, intervalPerHa, biomassPerHa, extraRelativeVariance, degreesOfFreedom } = spread;
  const quantile = twoSidedQuantile(confidence, degreesOfFreedom);
  if (!(intervalPerHa[0] > 0) || !(biomassPerHa > 0) || quantile === null) return null;
  const half = quantile * Math.sqrt(Math.log1p(Math.max(0, extraRelativeVariance)));
  const below = Math.hypot(Math.log(densityPerHa / intervalPerHa[0]), half);
  const above = Math.hypot(Math.log(intervalPerHa[1] / densityPerHa), half);
  return [biomassPerHa * Math.exp(-below), biomassPerHa * Math.exp(above)];
}
