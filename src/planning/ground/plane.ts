/**
 * Areas as plain pairs (longitude, latitude) for questions of inside, crossing and overlap.
 *
 * The line between two neighbouring positions is straight in degrees, as map files define it (RFC 7946, 3.1.1).
 * Longitudes are unrolled around a middle meridian, so that an area across the date line is one piece.
 */

import type { MapArea, Position, Ring } from '../../survey/map-area.ts';

/** Longitude first, as the polygon library wants it. */
export type PlanePoint = [longitudeDeg: number, latitudeDeg: number];
export type PlaneRing = PlanePoint[];
/** Outer ring first, then the holes. */
export type PlanePart = PlaneRing[];

/** Every part on the plane around `middleDeg`; rings keep their closing position as they have it. */
export function planeParts(area: MapArea, middleDeg: number): PlanePart[] {
  return area.parts.map((part) => [part.outer, ...part.holes].map((ring) => planeRing(ring, middleDeg)));
}

export function planeRing(ring: Ring, middleDeg: number): PlaneRing {
  const points: PlaneRing = [];
  let eastDeg = middleDeg;
  for (const position of ring) {
    // Whole turns only: a longitude that needs none keeps its last digit.
    eastDeg = position.longitudeDeg + 360 * Math.round((eastDeg - position.longitudeDeg) / 360);
    points.push([eastDeg, position.latitudeDeg]);
  }
  return shifted(points, middleDeg);
}

/** A ring that began at the far side of the middle meridian is moved back by a full turn. */
function shifted(points: PlaneRing, middleDeg: number): PlaneRing {
  let west = Number.POSITIVE_INFINITY;
  let east = Number.NEGATIVE_INFINITY;
  for (const [longitudeDeg] of points) {
    west = Math.min(west, longitudeDeg);
    east = Math.max(east, longitudeDeg);
  }
  const turns = Math.round(((west + east) / 2 - middleDeg) / 360);
  return turns === 0 || points.length === 0 ? points : points.map(([x, y]) => [x - 360 * turns, y]);
}

/** Back to positions, longitudes between -180 and 180. */
export function positionsOf(ring: PlaneRing): Position[] {
  return ring.map(([longitudeDeg, latitudeDeg]) => ({
    latitudeDeg,
    longitudeDeg: Math.abs(longitudeDeg) <= 180 ? longitudeDeg : shorterWayDeg(longitudeDeg),
  }));
}

export function areaOfParts(parts: readonly PlanePart[]): MapArea {
  return {
    parts: parts.map(([outer, ...holes]) => ({
      outer: positionsOf(outer ?? []),
      holes: holes.map(positionsOf),
    })),
  };
}

/** The middle of the shortest arc of longitude that holds all areas; 0 when there is nothing. */
export function middleLongitudeDeg(areas: readonly MapArea[]): number {
  const turned = areas
    .flatMap((area) => area.parts.flatMap((part) => part.outer))
    .map((position) => ((position.longitudeDeg % 360) + 360) % 360);
  const sorted = Float64Array.from(turned).sort();
  if (sorted.length === 0) return 0;
  let widest = -1;
  let start = 0;
  for (let i = 0; i < sorted.length; i++) {
    const next = i + 1 < sorted.length ? sorted[i + 1]! : sorted[0]! + 360;
    if (next - sorted[i]! <= widest) continue;
    widest = next - sorted[i]!;
    start = next;
  }
  return shorterWayDeg(start + (360 - widest) / 2);
}

/** -180 to 180: the same angle, the short way round. */
export function shorterWayDeg(differenceDeg: number): number {
  return differenceDeg - 360 * Math.round(differenceDeg / 360);
}

/** The ring without the repetition of its first position at the end. */
export function openRing(ring: Ring): Ring {
  const first = ring[0];
  const last = ring.at(-1);
  const closed = ring.length > 1 && first !== undefined && last !== undefined && samePosition(first, last);
  return closed ? ring.slice(0, -1) : ring;
}

export function samePosition(a: Position, b: Position): boolean {
  return a.latitudeDeg === b.latitudeDeg && shorterWayDeg(a.longitudeDeg - b.longitudeDeg) === 0;
}
