/** What a person should look at before positions of a receiver are believed. */

import type { GpxPoint } from '../../exchange/maps/gpx.ts';
import {
  matchWaypoints,
  type PlannedStation,
  type WaypointMatch,
} from '../../exchange/maps/match-waypoints.ts';
import { distanceBetweenM } from '../../planning/ground/geodesic.ts';
import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import { writePosition } from '../../survey/position-notation.ts';

/** A named waypoint far away is a question, not another station. */
export function farAway(matches: readonly WaypointMatch[], nearM: number): readonly PlanProblem[] {
  return matches
    .filter(({ distanceM }) => distanceM > nearM)
    .map(({ code, waypoint, distanceM }) =>
      planProblem('waypoint-far', {
        ...{ code, waypoint: waypoint.name ?? code, distanceM: Math.round(distanceM), nearM },
      }),
    );
}

/** Points that came back as they were sent say nothing of where the boat was. */
export function sentNotMarked(unmarked: readonly WaypointMatch[]): readonly PlanProblem[] {
  if (unmarked.length === 0) return [];
  const codes = unmarked.map(({ code }) => code).join(', ');
  return [planProblem('waypoint-as-sent', { codes })];
}

export function strangers(
  waypoints: readonly GpxPoint[],
  planned: readonly PlannedStation[],
  spares: readonly PlannedStation[],
): readonly PlanProblem[] {
  const own = matchWaypoints(spares, waypoints, 0);
  const unmoved = own.matches.filter(({ distanceM }) => distanceM < 1).map(({ waypoint }) => waypoint);
  return waypoints
    .filter((waypoint) => !unmoved.includes(waypoint))
    .map(({ name, position }) => {
      const near = planned
        .map((one) => ({ code: one.code, distanceM: distanceBetweenM(one.position, position) }))
        .toSorted((a, b) => a.distanceM - b.distanceM)[0];
      return planProblem('waypoint-without-station', {
        ...{ waypoint: name ?? 'without a name', position: writePosition(position) },
        ...{ nearest: near?.code ?? '', distanceM: near === undefined ? '' : Math.round(near.distanceM) },
      });
    });
}
