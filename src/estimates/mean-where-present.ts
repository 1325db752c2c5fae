import type { StratumValues } from './shapes.ts';
import {
  type SubpopulationEstimate,
  type SubpopulationStratum,
  subpopulationMean,
} from './subpopulation-mean.ts';

/**
 * Mean over the stations where the species was seen, in the unit of the values (animals per hectare).
 *
 * With the same weights, prevalence times this mean is exactly the overall mean. It hides a shrinking
 * range: show it beside the prevalence, never multiply it by the whole area.
 *
 * Null when it was seen nowhere; no standard error for one station with it (reasons as in
 * `subpopulationMean`). `where` names the scope in the reason.
 * Source: the stations with the species are a subpopulation, Cochran 1977, section 5A.14 (from memory).
 */
export function meanWherePresent(
  strata: readonly (StratumValues & { readonly present: readonly boolean[] })[],
  where: string,
): SubpopulationEstimate {
  const estimate = subpopulationMean({ name: where, strata: strata.map(asSubpopulation) });
  if (estimate.value !== null) return estimate;
  return { ...estimate, reason: { code: 'none-seen', parameters: { species: where } } };
}

function asSubpopulation(
  stratum: StratumValues & { readonly present: readonly boolean[] },
): SubpopulationStratum {
  return {
    name: stratum.name,
    weight: stratum.weight,
    populationUnits: stratum.populationUnits,
    stations: stratum.values.map((value, i) => ({ value, within: stratum.present[i]! })),
  };
}
