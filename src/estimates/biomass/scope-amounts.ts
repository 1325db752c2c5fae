/** Any amount found at stations, such as grams, estimated over a scope exactly as its density is. */

import type { StationObservation } from '../../survey/observation.ts';
import { type PointEstimate, pointEstimate } from '../density/point-estimate.ts';
import type { ScopeInHand, ScopePart } from '../density/scopes.ts';
import { stationVariatesPerHa } from '../station-variates.ts';

/**
 * Amount per hectare and in the whole scope, with the spread between stations.
 *
 * Each stratum keeps the estimator it has for the density (station mean or ratio of sums), so that biomass over density
 * is a mean weight and strata, sites and zones behave as they do there. Stations outside the scope give nothing.
 */
export function amountOverScope(
  scope: ScopeInHand,
  amountAt: (observation: StationObservation) => number,
): PointEstimate {
  const parts = scope.parts.map((part): ScopePart => {
    const valuesPerHa = variates(part, amountAt);
    // Named a station mean, because the values are made for the members already.
    return { ...part, sample: { ...part.sample, valuesPerHa, estimator: 'station mean' } };
  });
  return pointEstimate({ ...scope, parts }, false);
}

function variates(
  { sample, isMember }: ScopePart,
  amountAt: (observation: StationObservation) => number,
): readonly number[] {
  const inside = sample.observed.filter((_, i) => isMember[i]);
  const amounts = inside.map((one) => ({ animals: amountAt(one), searchedAreaCm2: one.searchedAreaCm2 }));
  const { valuesPerHa } = stationVariatesPerHa(amounts, null, sample.estimator);
  let next = 0;
  return isMember.map((is) => (is ? valuesPerHa[next++]! : 0));
}
