/** The belts of a station as the strip shows them: how long, in what state, how many animals. */

import {
  classifyTransect,
  type StationWithTransects,
  type TransectState,
  type TransectWithTallies,
} from '../survey/observation.ts';
import type { Protocol, Species } from '../survey/words.ts';

export interface Belt {
  readonly code: string;
  readonly state: TransectState;
  /** Animals of the species, or of all species together. */
  readonly animals: number;
  /** As searched; a lost belt keeps its planned length. */
  readonly lengthM: number;
  readonly plannedLengthM: number;
}

/** In the order of the station. Without a species, all animals together. */
export function beltsOf(
  station: StationWithTransects,
  species: Species | null,
  protocol: Protocol | null,
): Belt[] {
  const longestM = Math.max(0, ...station.transects.map((transect) => transect.record.lengthM ?? 0));
  return station.transects.map((transect) => {
    const ownM = transect.record.lengthM;
    const plannedLengthM = Math.max(protocol?.lengthM ?? (longestM > 0 ? longestM : 1), ownM ?? 0);
    const state = species === null ? stateOfAll(transect) : classifyTransect(transect, species);
    return {
      code: transect.record.code,
      state,
      animals: state === 'counted' ? animalsOn(transect, species) : 0,
      lengthM: state === 'lost' ? plannedLengthM : (ownM ?? plannedLengthM),
      plannedLengthM,
    };
  });
}

/** Animals of one species, or of all, on one transect. */
export function animalsOn(transect: TransectWithTallies, species: Species | null): number {
  if (species !== null) return transect.tallies.get(species.id)?.count ?? 0;
  let animals = 0;
  for (const tally of transect.tallies.values()) animals += tally.count;
  return animals;
}

function stateOfAll(transect: TransectWithTallies): TransectState {
  if (transect.status === 'lost' || transect.status === 'not done') return 'lost';
  if (transect.tallies.size === 0) return transect.noneSeen ? 'zero' : 'unresolved';
  return animalsOn(transect, null) > 0 ? 'counted' : 'zero';
}
