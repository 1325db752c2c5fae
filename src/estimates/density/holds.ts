/** Why an answer is held: what would mislead says so, and goes ahead only with a name and a reason. */

import type { Reason } from '../../survey/message.ts';
import type { StationObservation } from '../../survey/observation.ts';
import type { DensitySettings } from './density-settings.ts';
import type { ScopeInHand, ScopePart } from './scopes.ts';

/** The first reason to hold the answer, or null. `accepted` reasons are kept for the cautions. */
export function holdOf(scope: ScopeInHand, settings: DensitySettings): Reason | null {
  return unresolvedStations(scope) ?? mixedSelection(scope, settings);
}

/** Blank sheets are not zeros: a station nobody vouched for holds back its stratum and its survey. */
function unresolvedStations(scope: ScopeInHand): Reason | null {
  // A station answers for itself; every wider scope rests on all stations of its strata.
  const concerns = scope.scope.by === 'station' ? scope.belongs : () => true;
  const unresolved = scope.parts.flatMap(({ sample }) =>
    sample.all.filter((one) => one.state === 'unresolved' && concerns(one)),
  );
  if (unresolved.length === 0) return null;
  const stations = unresolved.map((one) => one.station.record.code).join(', ');
  return {
    code: 'unresolved-stations',
    parameters: { count: unresolved.length, stations, where: scope.scope.name },
  };
}

/** Stations chosen for what was known to be there cannot be averaged with stations that were drawn. */
function mixedSelection(scope: ScopeInHand, settings: DensitySettings): Reason | null {
  const stations = membersOf(scope.parts);
  const handPicked = stations.filter((one) => one.observation.selection === 'hand-picked');
  const drawn = stations.filter((one) => one.observation.selection !== 'hand-picked');
  if (settings.unit === 'transect' || handPicked.length === 0 || drawn.length === 0) return null;
  return {
    code: 'mixed-selection',
    parameters: {
      where: scope.scope.name,
      randomStations: drawn.length,
      randomPerHa: meanPerHa(drawn),
      handPickedStations: handPicked.length,
      handPickedPerHa: meanPerHa(handPicked),
      togetherPerHa: meanPerHa(stations),
    },
  };
}

interface Member {
  readonly observation: StationObservation;
  readonly valuePerHa: number;
}

export function membersOf(parts: readonly ScopePart[]): readonly Member[] {
  return parts.flatMap(({ sample, isMember }) =>
    sample.observed.flatMap((observation, i) =>
      isMember[i] ? [{ observation, valuePerHa: sample.valuesPerHa[i]! }] : [],
    ),
  );
}

function meanPerHa(members: readonly Member[]): number {
  return members.reduce((total, one) => total + one.valuePerHa, 0) / members.length;
}
