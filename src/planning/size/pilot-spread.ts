/** What an earlier survey shows about the spread that a plan must reckon with. */

import { stratifiedMean } from '../../estimates/stratified-mean.ts';
import { sum } from '../../maths/variance.ts';

/** One stratum of an earlier survey, for one species. */
export interface PilotStratum {
  readonly name: string;
  readonly areaHa: number;
  /** One per searched station, animals per hectare; their mean is the density of the stratum. */
  readonly valuesPerHa: readonly number[];
  /** What one station searched, on average. */
  readonly searchedAreaM2: number;
}

export interface PilotSpread {
  readonly densityPerHa: number;
  readonly stations: number;
  /** Standard error of the earlier survey over its estimate. */
  readonly cv: number;
  /** Satterthwaite's, of that standard error: how well the spread itself is known. */
  readonly degreesOfFreedom: number;
  /** cv times the root of the stations: divide by the root of any number, split over the strata as before. */
  readonly stationCv: number;
  /** Animals per hectare in each stratum, in their order. */
  readonly densitiesPerHa: readonly number[];
  /** The negative binomial clumping that gives this cv; null for scattered animals. See `clumpingForCv`. */
  readonly clumpingK: number | null;
}

/**
 * Density, CV and clumping of an earlier survey, as a plan of the next one needs them.
 *
 * Answers "how uneven are the animals?". Null where no spread is known: a stratum with one station, or no animals.
 * Throws without strata. Source: Cochran 1977, equations 5.6 and 5.16 (from memory), through `stratifiedMean`.
 */
export function pilotSpread(strata: readonly PilotStratum[]): PilotSpread | null {
  const estimate = stratifiedMean(
    strata.map(({ name, areaHa, valuesPerHa }) => ({
      name,
      weight: areaHa,
      values: valuesPerHa,
      populationUnits: null,
    })),
  );
  const { value, standardError, degreesOfFreedom } = estimate;
  if (value === null || value === 0 || standardError === null || degreesOfFreedom === null) return null;
  const stations = sum(strata.map((stratum) => stratum.valuesPerHa.length));
  const cv = standardError / value;
  return {
    ...{ densityPerHa: value, stations, cv, degreesOfFreedom, stationCv: cv * Math.sqrt(stations) },
    densitiesPerHa: strata.map(({ valuesPerHa }) => Math.max(0, sum(valuesPerHa) / valuesPerHa.length)),
    clumpingK: clumpingForCv(strata, cv),
  };
}

/**
 * Clumping k, no unit, alike in all strata, with which negative binomial counts of the same stations have this CV.
 *
 * Answers "how clumped must animals be simulated so that the simulation and the standard error agree?". The variance
 * of the mean is a part from chance, sum W^2 m / (a^2 n), and a part from clumping, that of m^2 over k: one division.
 * Null where chance alone gives as much. A moment estimate: with few stations it sees too little clumping (no n
 * stations can show a k below about 1 / n), so raise the CV by `pilotFactor` for the cautious one.
 * Source: variance m + m^2 / k (textbook, from memory).
 */
export function clumpingForCv(strata: readonly PilotStratum[], cv: number): number | null {
  const whole = sum(strata.map((stratum) => stratum.areaHa));
  const parts = strata.map(({ areaHa, valuesPerHa, searchedAreaM2 }) => {
    const stations = valuesPerHa.length;
    const densityPerHa = Math.max(0, sum(valuesPerHa) / stations);
    const share = (areaHa / whole) ** 2 / stations;
    return {
      mean: (areaHa / whole) * densityPerHa,
      byChance: (share * densityPerHa) / (searchedAreaM2 / 10_000),
      perClumping: share * densityPerHa ** 2,
    };
  });
  const mean = sum(parts.map((part) => part.mean));
  const left = (cv * mean) ** 2 - sum(parts.map((part) => part.byChance));
  const clumping = sum(parts.map((part) => part.perClumping));
  // A clumping that a million stations could not tell from none would only strain the sampler.
  return left > 1e-6 * clumping ? clumping / left : null;
}
