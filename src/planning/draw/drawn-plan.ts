/** A draw of stations as a value: everything needed to make it again, and everything that happened to it since. */

import type { Position } from '../../survey/map-area.ts';
import type { Selection } from '../../survey/words.ts';

export type DrawMethod = 'acceptance' | 'pivotal';

export interface DrawnStation {
  readonly code: string;
  readonly stratum: string;
  readonly position: Position;
  /** Random and fixed stations speak for their stratum; hand-picked ones only for themselves, for life. */
  readonly selection: Selection;
  /** spare: may be called to replace a station of its stratum, in the order of the list. */
  readonly role: 'planned' | 'spare' | 'dropped';
  /** The code of the dropped station whose place it took. */
  readonly replaces: string | null;
}

/** A drawn position that stood too near to another station and was passed over. */
export interface PassedOver {
  readonly stratum: string;
  readonly position: Position;
  readonly tooNearTo: string;
  readonly distanceM: number;
}

export interface Replacement {
  readonly dropped: string;
  readonly replacement: string;
  readonly stratum: string;
  readonly reason: string;
  readonly who: string;
  /** The day as the officer wrote it. */
  readonly date: string;
}

export interface DrawnPlan {
  readonly seed: number;
  readonly method: DrawMethod;
  readonly minimumSpacingM: number | null;
  /** In the order of the strata; within one: fixed, random in drawn order, hand-picked, spares in drawn order. */
  readonly stations: readonly DrawnStation[];
  readonly passedOver: readonly PassedOver[];
  readonly replacements: readonly Replacement[];
}

export interface PlanCounts {
  readonly stratum: string;
  readonly planned: number;
  readonly fixed: number;
  readonly handPicked: number;
  /** Stations given up, each with a replacement from the list. */
  readonly replaced: number;
  readonly sparesLeft: number;
}

/** How many stations of each stratum are planned, replaced and in reserve, in the order of the list. */
export function planCounts(plan: DrawnPlan): readonly PlanCounts[] {
  const strata = [...new Set(plan.stations.map((station) => station.stratum))];
  return strata.map((stratum) => {
    const own = plan.stations.filter((station) => station.stratum === stratum);
    const count = (wanted: (station: DrawnStation) => boolean) => own.filter(wanted).length;
    const isPlanned = (station: DrawnStation) => station.role === 'planned';
    return {
      stratum,
      planned: count((one) => isPlanned(one) && one.selection !== 'hand-picked'),
      fixed: count((one) => isPlanned(one) && one.selection === 'fixed'),
      handPicked: count((one) => isPlanned(one) && one.selection === 'hand-picked'),
      replaced: plan.replacements.filter((one) => one.stratum === stratum).length,
      sparesLeft: count((one) => one.role === 'spare'),
    };
  });
}
