import { distanceBetweenM } from '../../planning/ground/geodesic.ts';
import type { Position } from '../../survey/map-area.ts';
import type { GpxPoint } from './gpx.ts';

export interface PlannedStation {
  readonly code: string;
  /** The name it was given for the receiver; null when none was. */
  readonly shortName: string | null;
  readonly position: Position;
}

export interface WaypointMatch {
  readonly code: string;
  readonly waypoint: GpxPoint;
  readonly by: 'name' | 'nearness';
  readonly distanceM: number;
}

export interface WaypointMatches {
  readonly matches: readonly WaypointMatch[];
  readonly stationsWithout: readonly string[];
  readonly waypointsWithout: readonly GpxPoint[];
}

/**
 * Which waypoint belongs to which station, and how far it lies from the plan in metres.
 *
 * By name first (short name or code; capitals, spaces and dashes do not count), whatever the distance: a named one far away
 * is a question, not another station. The rest by nearness, nearest pairs first, up to `nearM`; each station and waypoint once.
 * Several waypoints of one name: the nearest is taken, the others remain without a station.
 */
export function matchWaypoints(
  stations: readonly PlannedStation[],
  waypoints: readonly GpxPoint[],
  nearM: number,
): WaypointMatches {
  const named = closestPairs(stations, waypoints, {
    by: 'name',
    mayFit: (station, waypoint) => doNamesMeet(station, waypoint.name),
    limitM: Number.POSITIVE_INFINITY,
  });
  const stationsLeft = stations.filter((station) => !named.some(({ code }) => code === station.code));
  const waypointsLeft = waypoints.filter((waypoint) => !named.some((match) => match.waypoint === waypoint));
  const near = closestPairs(stationsLeft, waypointsLeft, {
    by: 'nearness',
    // A degree of latitude has at least 110.5 km: what is farther north or south needs no geodesic.
    mayFit: ({ position }, waypoint) =>
      Math.abs(position.latitudeDeg - waypoint.position.latitudeDeg) * 110_500 <= nearM,
    limitM: nearM,
  });
  const matches = [...named, ...near];
  return {
    matches: stations.flatMap((station) => matches.filter(({ code }) => code === station.code)),
    stationsWithout: stations
      .map(({ code }) => code)
      .filter((code) => !matches.some((match) => match.code === code)),
    waypointsWithout: waypoints.filter((waypoint) => !matches.some((match) => match.waypoint === waypoint)),
  };
}

function closestPairs(
  stations: readonly PlannedStation[],
  waypoints: readonly GpxPoint[],
  rule: {
    readonly by: WaypointMatch['by'];
    /** Cheap, and asked before the distance is computed. */
    readonly mayFit: (station: PlannedStation, waypoint: GpxPoint) => boolean;
    readonly limitM: number;
  },
): WaypointMatch[] {
  const pairs = stations.flatMap((station) =>
    waypoints
      .filter((waypoint) => rule.mayFit(station, waypoint))
      .map((waypoint): WaypointMatch => {
        const distanceM = distanceBetweenM(station.position, waypoint.position);
        return { code: station.code, waypoint, by: rule.by, distanceM };
      })
      .filter(({ distanceM }) => distanceM <= rule.limitM),
  );
  pairs.sort((a, b) => a.distanceM - b.distanceM);
  const stationsTaken = new Set<string>();
  const waypointsTaken = new Set<GpxPoint>();
  return pairs.filter(({ code, waypoint }) => {
    if (stationsTaken.has(code) || waypointsTaken.has(waypoint)) return false;
    stationsTaken.add(code);
    waypointsTaken.add(waypoint);
    return true;
  });
}

function doNamesMeet(station: PlannedStation, name: string | null): boolean {
  if (name === null) return false;
  const bare = (text: string) => text.toUpperCase().replace(/[\s_-]/g, '');
  return [station.code, station.shortName].some((own) => own !== null && bare(own) === bare(name));
}

/** The point of a track nearest to a station: when was the boat there, and how near? Null for a track without points. */
export function closestApproach(
  segments: readonly (readonly GpxPoint[])[],
  position: Position,
): { readonly point: GpxPoint; readonly distanceM: number } | null {
  let closest: { point: GpxPoint; distanceM: number } | null = null;
  for (const point of segments.flat()) {
    const distanceM = distanceBetweenM(point.position, position);
    if (closest === null || distanceM < closest.distanceM) closest = { point, distanceM };
  }
  return closest;
}
