import type { MeanEstimate, StratumValues } from './shapes.ts';
import { stratifiedMean } from './stratified-mean.ts';

/**
 * Plain mean of the stations of one stratum, in the unit of the values, with its standard error.
 *
 * Assumes random stations. One station gives a value and no standard error, with the reason; no
 * station gives neither. Degrees of freedom are n - 1 (for all-equal values too).
 * Source: Cochran 1977, chapter 2 (from memory).
 */
export function simpleMean(stations: Omit<StratumValues, 'weight'>): MeanEstimate {
  return stratifiedMean([{ ...stations, weight: 1 }]);
}
