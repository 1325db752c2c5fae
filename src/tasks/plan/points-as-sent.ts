import type { GpxPoint } from '../../exchange/maps/gpx.ts';
import {
  matchWaypoints,
  type PlannedStation,
  type WaypointMatch,
} from '../../exchange/maps/match-waypoints.ts';

/**
 * Points of the plan that came back from the receiver as they were sent: under the name of their station, on its planned
 * place to the metre.
 *
 * Nobody marked them where the boat was: taken for arrivals they would make every station look worked exactly as planned.
 * A receiver is good to some metres, so a mark seldom falls on its plan by luck, and one that does is asked about.
 */
export function pointsAsSent(
  planned: readonly PlannedStation[],
  waypoints: readonly GpxPoint[],
): readonly WaypointMatch[] {
  const { matches } = matchWaypoints(planned, waypoints, 0);
  return matches.filter(({ by, distanceM }) => by === 'name' && distanceM < 1);
}
