/** What a draw knows of a stratum: no shapes, only a frame and a question. */

import type { Position } from '../../survey/map-area.ts';

export interface DrawBox {
  readonly southDeg: number;
  readonly northDeg: number;
  readonly westDeg: number;
  /** Greater than `westDeg`; passes 180 where the date line runs through. */
  readonly eastDeg: number;
}

/** Ground to draw from: the stratum with land, closed and too deep parts already taken out. */
export interface DrawGround {
  readonly box: DrawBox;
  readonly contains: (position: Position) => boolean;
}

/** Metres between two positions; the geodesic one of `ground`, or any other a test likes. */
export type DistanceM = (a: Position, b: Position) => number;

/** Longitude brought between -180 and 180. */
export function withinCircle(longitudeDeg: number): number {
  return longitudeDeg - 360 * Math.round(longitudeDeg / 360);
}

/** Direction from the middle of the earth as three numbers: nearest by these is nearest over ground. */
export function directionOf({ latitudeDeg, longitudeDeg }: Position): readonly number[] {
  const latitude = (latitudeDeg * Math.PI) / 180;
  const longitude = (longitudeDeg * Math.PI) / 180;
  const across = Math.cos(latitude);
  return [across * Math.cos(longitude), across * Math.sin(longitude), Math.sin(latitude)];
}
