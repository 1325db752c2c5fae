/** What was counted at each station, as grams: every counted animal has the weight of its own length. */

import { sum } from '../../maths/variance.ts';
import { classifyTransect, type StationObservation } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { StratumSample } from '../density/stratum-sample.ts';
import { type LengthTally, raiseLengths } from '../raised-lengths.ts';

/** Counted animals of one length at a station; more or fewer than whole ones, since lengths are raised. */
export interface AnimalsOfLength {
  readonly lengthMm: number;
  readonly animals: number;
}

export interface StationLengths {
  readonly lengths: readonly AnimalsOfLength[];
  readonly measured: number;
  /** Animals of transects without a length, which borrow those of their station, stratum or survey. */
  readonly borrowedAnimals: number;
}

/**
 * The lengths of every counting station of a survey, raised to its counts as for the sizes.
 *
 * The whole survey at once, so that a stratum where none was measured can borrow from the others and the strata add up
 * to the survey. Null when none was measured in the survey at all. Source: METHODS d and e.
 */
export function lengthsByStation(
  samples: readonly StratumSample[],
  species: Species,
): ReadonlyMap<StationObservation, StationLengths> | null {
  const raised = raiseLengths(
    samples.map(({ stratum, observed }) => ({
      name: stratum.name,
      weight: stratum.areaHa ?? 1,
      stations: observed.map((one) => ({
        searchedAreaM2: one.searchedAreaCm2 / 10_000,
        tallies: talliesOf(one, species),
      })),
    })),
  );
  if (raised === null) return null;
  const found = new Map<StationObservation, StationLengths>();
  for (const [h, { observed }] of samples.entries()) {
    for (const [i, one] of observed.entries()) {
      const lengths = raised.strata[h]!.stations[i]!;
      const silent = talliesOf(one, species).filter((tally) => sum(tally.lengths.map(({ n }) => n)) === 0);
      found.set(one, {
        lengths,
        measured: sum(lengths.map((length) => length.measured)),
        borrowedAnimals: sum(silent.map((tally) => tally.count)),
      });
    }
  }
  return found;
}

/** Only transects that count for the density count for the weights. */
function talliesOf(observation: StationObservation, species: Species): readonly LengthTally[] {
  return observation.station.transects
    .filter((transect) => classifyTransect(transect, species) === 'counted')
    .map((transect) => transect.tallies.get(species.id)!);
}
