/**
 * Unknown is not zero. The one place that tells counted, zero, not looked for, lost and
 * unresolved apart; every estimator takes its output and nothing else.
 *
 * - done or partial, with a tally of the species: counted
 * - done or partial, with other tallies or the box "none seen", species in scope: zero
 * - done or partial and blank: unresolved; so is a station with no transect at all
 * - lost or not done: outside both the count and the area
 * - species outside the scope of that swim: not looked for, outside both as well
 *
 * A partial transect counts with the length that was searched.
 */

import type { Protocol, Selection, Species, Station, Stratum, Survey, Tally, Transect } from './words.ts';

export type TransectState = 'counted' | 'zero' | 'not looked for' | 'lost' | 'unresolved';
export type StationState = 'observed' | 'not looked for' | 'lost' | 'unresolved';

/** What one transect says about one species. */
export function classifyTransect(transect: TransectWithTallies, species: Species): TransectState {
  if (transect.status === 'lost' || transect.status === 'not done') return 'lost';
  const tally = transect.tallies.get(species.id);
  if (tally !== undefined) return tally.count > 0 ? 'counted' : 'zero';
  if (!isInScope(transect.scope, species)) return 'not looked for';
  if (transect.noneSeen || transect.tallies.size > 0) return 'zero';
  return 'unresolved';
}

/** A transect, its tallies by species, and its area in whole square centimetres so that sums are exact. */
export interface TransectWithTallies {
  readonly record: Transect;
  readonly status: Transect['status'];
  readonly scope: ReadonlySet<string> | null;
  readonly noneSeen: boolean;
  readonly tallies: ReadonlyMap<string, Tally>;
  readonly areaCm2: number;
}

export interface StationWithTransects {
  readonly record: Station;
  readonly stratum: Stratum;
  /** Only the swim that enters estimates; later swims are kept apart. */
  readonly transects: readonly TransectWithTallies[];
  readonly laterSwims: readonly TransectWithTallies[];
}

/** One survey joined up once, for any number of species. */
export interface SurveyInHand {
  readonly survey: Survey;
  readonly protocol: Protocol | null;
  /** What a station was meant to search: the protocol's layout, else the survey's most common one; null if neither. */
  readonly plannedAreaCm2: number | null;
  readonly stations: readonly StationWithTransects[];
  readonly targets: readonly Species[];
}

declare const observed: unique symbol;

/** What one station says about one species. Made only here. */
export interface StationObservation {
  readonly [observed]: true;
  readonly station: StationWithTransects;
  readonly state: StationState;
  /** Animals counted on the transects that count; 0 unless observed. */
  readonly animals: number;
  /** Area of those transects in whole square centimetres; 0 unless observed. */
  readonly searchedAreaCm2: number;
  readonly selection: Selection | null;
}

/** Observes one species at every station of a survey, in the order of the stations. */
export function observeSpecies(survey: SurveyInHand, species: Species): StationObservation[] {
  return survey.stations.map((station) => observeStation(station, species));
}

function observeStation(station: StationWithTransects, species: Species): StationObservation {
  let animals = 0;
  let searchedAreaCm2 = 0;
  let unresolved = station.transects.length === 0;
  let looked = false;
  let lost = false;
  for (const transect of station.transects) {
    const state = classifyTransect(transect, species);
    if (state === 'unresolved') unresolved = true;
    else if (state === 'lost') lost = true;
    else if (state !== 'not looked for') {
      looked = true;
      searchedAreaCm2 += transect.areaCm2;
      animals += transect.tallies.get(species.id)?.count ?? 0;
    }
  }
  const state = unresolved ? 'unresolved' : looked ? 'observed' : lost ? 'lost' : 'not looked for';
  const counts = state === 'observed';
  return {
    station,
    state,
    animals: counts ? animals : 0,
    searchedAreaCm2: counts ? searchedAreaCm2 : 0,
    selection: station.record.selection,
  } as StationObservation;
}

function isInScope(scope: ReadonlySet<string> | null, species: Species): boolean {
  if (scope === null) return true;
  if (scope.has(species.name.toLowerCase())) return true;
  return species.group !== null && scope.has(species.group.toLowerCase());
}

/** Area of a belt or quadrat in whole square centimetres; 0 where a timed search has no belt. */
export function transectAreaCm2(transect: Pick<Transect, 'lengthM' | 'widthM'>): number {
  if (transect.lengthM === null || transect.widthM === null) return 0;
  return Math.round(transect.lengthM * 100) * Math.round(transect.widthM * 100);
}
