import { sum } from '../maths/variance.ts';
import { cm2PerHa, type StationCount, stationDensityPerHa } from './station-density.ts';

export type StratumEstimator = 'station mean' | 'ratio of sums';

export interface StationVariates {
  readonly estimator: StratumEstimator;
  /** One per station, in the order given; their plain mean is the stratum's density in animals per hectare. */
  readonly valuesPerHa: readonly number[];
}

/**
 * What each station of one stratum contributes to the stratum's density, in animals per hectare.
 *
 * Every station counts alike (its own density) as long as each searched at least two thirds of the
 * planned area, or the plan is not known. Below that a fragment of a belt would weigh like a whole
 * station, and the stratum's density is the ratio of sums R = animals / area. There the contribution
 * is R + (y - R x) / mean x: its plain mean is R and its plain variance over n is the variance of the
 * ratio, so one list of numbers serves the standard error, the subpopulation and the resampling.
 *
 * Assumes every station searched some area; throws otherwise, because such a station has no density.
 * Source: Cochran 1977, chapter 6 (from memory); the two thirds are this tool's rule (METHODS a).
 */
export function stationVariatesPerHa(
  stations: readonly StationCount[],
  plannedAreaCm2: number | null,
  choice: 'auto' | StratumEstimator = 'auto',
): StationVariates {
  if (stations.some((station) => !(station.searchedAreaCm2 > 0))) {
    throw new Error('stationVariatesPerHa requires a searched area at every station');
  }
  const estimator = choice === 'auto' ? ruledEstimator(stations, plannedAreaCm2) : choice;
  const valuesPerHa = estimator === 'station mean' ? densities(stations) : ratioVariates(stations);
  return { estimator, valuesPerHa };
}

/** In whole square centimetres, so that a station of exactly two thirds passes. */
function ruledEstimator(stations: readonly StationCount[], plannedAreaCm2: number | null): StratumEstimator {
  if (plannedAreaCm2 === null) return 'station mean';
  const short = stations.some((station) => 3 * station.searchedAreaCm2 < 2 * plannedAreaCm2);
  return short ? 'ratio of sums' : 'station mean';
}

function densities(stations: readonly StationCount[]): number[] {
  return stations.map((station) => stationDensityPerHa(station)!);
}

function ratioVariates(stations: readonly StationCount[]): number[] {
  if (stations.length === 0) return [];
  const animals = sum(stations.map((station) => station.animals));
  const areaCm2 = sum(stations.map((station) => station.searchedAreaCm2));
  const perCm2 = animals / areaCm2;
  const meanAreaCm2 = areaCm2 / stations.length;
  return stations.map((station) => {
    const residual = station.animals - perCm2 * station.searchedAreaCm2;
    return (perCm2 + residual / meanAreaCm2) * cm2PerHa;
  });
}
