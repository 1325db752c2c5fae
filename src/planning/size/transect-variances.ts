import { mean, sampleVariance, sum } from '../../maths/variance.ts';

export interface TransectVariances {
  /** Of station values with endless transects; never below zero. */
  readonly varianceBetween: number;
  /** Of transects around their station. */
  readonly varianceWithin: number;
  /** Transects at a station that were used, on average (harmonic mean). */
  readonly transects: number;
}

/**
 * Variance of animals per hectare between stations and between the transects of a station, both inside strata.
 *
 * Answers "do more belts at a station tell anything new?". Pooled over strata by degrees of freedom; what transects
 * add to the spread of station means is taken off. Stations with one transect have no say. Assumes transects of like size.
 * Null where no stratum has two stations with two transects each.
 * Source: analysis of variance of two stages, Cochran 1977, section 10.7 (from memory).
 */
export function transectVariances(
  strata: readonly (readonly (readonly number[])[])[],
): TransectVariances | null {
  const used = strata
    .map((stations) => stations.filter((transects) => transects.length >= 2))
    .filter((stations) => stations.length >= 2);
  const stations = used.flat();
  if (stations.length === 0) return null;
  const varianceWithin =
    sum(stations.map((values) => sampleVariance(values)! * (values.length - 1))) /
    sum(stations.map((values) => values.length - 1));
  const ofMeans =
    sum(used.map((some) => sampleVariance(some.map((values) => mean(values)))! * (some.length - 1))) /
    sum(used.map((some) => some.length - 1));
  const transects = stations.length / sum(stations.map((values) => 1 / values.length));
  return { varianceBetween: Math.max(0, ofMeans - varianceWithin / transects), varianceWithin, transects };
}
