/**
 * Distances and directions on the WGS84 ellipsoid.
 *
 * This room holds the ground of a survey: areas, their checks and masks, belts laid on them, the compass.
 * Never here: files, SQL, the clock, chance. Dates come in as arguments.
 */

import geographiclib from 'geographiclib-geodesic';
import type { Position } from '../../survey/map-area.ts';

const ellipsoid = geographiclib.Geodesic.WGS84;

export interface Course {
  readonly distanceM: number;
  /** True bearing at the start, 0 to 360 degrees clockwise from north. */
  readonly bearingDeg: number;
  /** True bearing on arrival, in the direction of travel. */
  readonly arrivalBearingDeg: number;
}

/**
 * Shortest way between two positions: distance in metres and true bearings in degrees.
 *
 * Answers "how far, and which way?" on the WGS84 ellipsoid, to some nanometres. Two equal positions are 0 m apart
 * and their bearing means nothing (180 or 0). Source: Karney 2013, Journal of Geodesy 87:43.
 */
export function courseBetween(from: Position, to: Position): Course {
  const found = ellipsoid.Inverse(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
  return {
    distanceM: found.s12!,
    bearingDeg: fullCircle(found.azi1!),
    arrivalBearingDeg: fullCircle(found.azi2!),
  };
}

/** Distance in metres along the shortest way; see `courseBetween`. */
export function distanceBetweenM(from: Position, to: Position): number {
  return courseBetween(from, to).distanceM;
}

/**
 * Where a swim ends: the position after `distanceM` metres on the geodesic that leaves on a true bearing.
 * Longitude comes back between -180 and 180. Source: Karney 2013.
 */
export function positionAfter(
  from: Position,
  leg: { readonly bearingDeg: number; readonly distanceM: number },
): Position {
  const found = ellipsoid.Direct(from.latitudeDeg, from.longitudeDeg, leg.bearingDeg, leg.distanceM);
  return { latitudeDeg: found.lat2!, longitudeDeg: found.lon2! };
}

/** 0 up to, not including, 360. */
export function fullCircle(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return turned === 360 ? 0 : turned;
}

/** The smaller angle between two bearings, 0 to 180. */
export function angleBetweenDeg(a: number, b: number): number {
  return 180 - Math.abs(fullCircle(a - b) - 180);
}
