/** Whole square centimetres in a hectare. */
export const cm2PerHa = 1e8;

/**
 * Density at one station, in animals per hectare: all animals counted over all area searched.
 *
 * Transects are summed, not averaged, so that a belt cut short counts for what was searched.
 * Lost transects are in neither sum: `survey/observation.ts` has taken them out.
 *
 * Null when no area was searched. Source: Cochran 1977, chapter 6 (ratio of sums; from memory).
 */
export function stationDensityPerHa(station: StationCount): number | null {
  if (station.searchedAreaCm2 <= 0) return null;
  return (station.animals * cm2PerHa) / station.searchedAreaCm2;
}

/** Animals and searched area of one species at one station, as `StationObservation` carries them. */
export interface StationCount {
  readonly animals: number;
  readonly searchedAreaCm2: number;
}
