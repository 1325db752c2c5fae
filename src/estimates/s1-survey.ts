/** For tests: the miniature survey S1 of the reference vectors (21 stations, 3 strata) as strata of values. */

import type { StratumValues } from './shapes.ts';

/** The data of vector b2, as the file holds them. */
export interface S1Data {
  readonly stratum: readonly string[];
  readonly density_ind_ha: readonly number[];
  readonly strata: { readonly stratum: readonly string[]; readonly area_ha: readonly number[] };
}

const footprintHa = 0.024;

/** Station densities by stratum, with the area in hectares as weight; `whole` adds the finite population. */
export function s1Strata(data: S1Data, whole = false): StratumValues[] {
  return data.strata.stratum.map((name, h) => ({
    name,
    weight: data.strata.area_ha[h]!,
    values: data.density_ind_ha.filter((_, i) => data.stratum[i] === name),
    populationUnits: whole ? data.strata.area_ha[h]! / footprintHa : null,
  }));
}
