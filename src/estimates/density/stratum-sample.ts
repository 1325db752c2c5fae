/** The stations of one stratum with what they say about one species, ready for any estimator. */

import type { StationObservation } from '../../survey/observation.ts';
import type { Stratum } from '../../survey/words.ts';
import { stationVariatesPerHa } from '../station-variates.ts';
import type { DensitySettings } from './density-settings.ts';

export interface StratumSample {
  readonly stratum: Stratum;
  /** Stations that count, with searched area and count. */
  readonly observed: readonly StationObservation[];
  /**
   * One value per counting station, in animals per hectare: its density, or in a stratum of very unequal
   * effort the residual variate of the ratio of sums, whose mean is the ratio.
   */
  readonly valuesPerHa: readonly number[];
  readonly estimator: 'station mean' | 'ratio of sums';
  /** Every station of the stratum, whatever became of it. */
  readonly all: readonly StationObservation[];
}

/** Groups observations by stratum, in the order in which the strata first appear. */
export function stratumSamples(
  observations: readonly StationObservation[],
  plannedAreaCm2: number | null,
  settings: Pick<DensitySettings, 'estimator' | 'selection'>,
): readonly StratumSample[] {
  const groups = new Map<string, StationObservation[]>();
  for (const observation of observations) {
    if (!isAsked(observation, settings.selection)) continue;
    const id = observation.station.stratum.id;
    const group = groups.get(id);
    if (group === undefined) groups.set(id, [observation]);
    else group.push(observation);
  }
  return [...groups.values()].map((all) => {
    const observed = all.filter((one) => one.state === 'observed' && one.searchedAreaCm2 > 0);
    const { estimator, valuesPerHa } = stationVariatesPerHa(observed, plannedAreaCm2, settings.estimator);
    return { stratum: all[0]!.station.stratum, observed, valuesPerHa, estimator, all };
  });
}

function isAsked(observation: StationObservation, selection: DensitySettings['selection']): boolean {
  if (selection === 'all') return true;
  return (observation.selection === 'hand-picked') === (selection === 'hand-picked');
}
