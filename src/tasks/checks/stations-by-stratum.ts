import type { StationWithTransects, SurveyInHand } from '../../survey/observation.ts';
import type { Stratum } from '../../survey/words.ts';

export interface StratumStations {
  readonly stratum: Stratum;
  readonly stations: readonly StationWithTransects[];
}

/** The strata that were visited, in the order in which their first station stands. */
export function stationsByStratum({ stations }: SurveyInHand): readonly StratumStations[] {
  const strata = new Map<string, { stratum: Stratum; stations: StationWithTransects[] }>();
  for (const station of stations) {
    const known = strata.get(station.stratum.id);
    if (known === undefined)
      strata.set(station.stratum.id, { stratum: station.stratum, stations: [station] });
    else known.stations.push(station);
  }
  return [...strata.values()];
}
