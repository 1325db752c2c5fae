import type { MeanEstimate } from './shapes.ts';
import { cm2PerHa, type StationCount } from './station-density.ts';
import { weightedRatio } from './weighted-ratio.ts';

/**
 * Density of one stratum as animals over searched area, in animals per hectare, where stations searched
 * unequal areas.
 *
 * A station weighs by its searched area, so that a fragment of a belt cannot weigh like a whole station.
 * The spread is that of whole stations, never of transects. Misleads when belts were cut short because
 * of what was found on them.
 *
 * Null without stations or searched area; no standard error for one station. n - 1 degrees of freedom.
 * Source: Cochran 1977, equations 6.1 and 6.13 (from memory); R survey svyratio.
 */
export function ratioOfSumsPerHa(stations: {
  readonly name: string;
  readonly counts: readonly StationCount[];
  readonly populationUnits: number | null;
}): MeanEstimate {
  const { value, standardError, degreesOfFreedom, reason } = weightedRatio([
    {
      name: stations.name,
      unitWeight: 1,
      numerators: stations.counts.map((count) => count.animals * cm2PerHa),
      denominators: stations.counts.map((count) => count.searchedAreaCm2),
      populationUnits: stations.populationUnits,
    },
  ]);
  if (value !== null) return { value, standardError, degreesOfFreedom, reason };
  const code = stations.counts.length === 0 ? 'no-station' : 'no-searched-area';
  return { value, standardError, degreesOfFreedom, reason: { code, parameters: { where: stations.name } } };
}
