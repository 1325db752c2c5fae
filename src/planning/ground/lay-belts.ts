import type { Position } from '../../survey/map-area.ts';
import { fullCircle, positionAfter } from './geodesic.ts';

/** How a station of belts in series is worked: the same numbers as in the protocol. */
export interface BeltSeries {
  readonly transects: number;
  readonly lengthM: number;
  readonly gapM: number;
}

export interface LaidBelt {
  /** Counted from 1 in the order of swimming. */
  readonly transect: number;
  readonly start: Position;
  readonly end: Position;
  /** True bearing at its start. */
  readonly bearingDeg: number;
}

/**
 * Start and end of every belt of a station, one after the other with the gap between.
 *
 * `bearingsDeg` are true bearings, one for all belts or one for each. Where the bearing changes, the diver turns at the
 * end of a belt and swims the gap already on the new bearing, so that two belts never touch (common practice).
 * Each leg is a geodesic that leaves on its bearing; over a few hundred metres that and a steady compass course
 * part by millimetres. Throws when the bearings fit neither way, which is a mistake of the caller.
 */
export function layBelts(start: Position, series: BeltSeries, bearingsDeg: readonly number[]): LaidBelt[] {
  if (bearingsDeg.length !== 1 && bearingsDeg.length !== series.transects) {
    throw new Error(`layBelts requires 1 or ${series.transects} bearings, got ${bearingsDeg.length}`);
  }
  const belts: LaidBelt[] = [];
  let from = start;
  for (let i = 0; i < series.transects; i++) {
    const bearingDeg = fullCircle(bearingsDeg[i] ?? bearingsDeg[0]!);
    if (i > 0) from = positionAfter(from, { bearingDeg, distanceM: series.gapM });
    const end = positionAfter(from, { bearingDeg, distanceM: series.lengthM });
    belts.push({ transect: i + 1, start: from, end, bearingDeg });
    from = end;
  }
  return belts;
}

/** Bearings from a first one and the turn before each further belt, positive to starboard (clockwise). */
export function bearingsFromTurns(firstBearingDeg: number, turnsDeg: readonly number[]): number[] {
  const bearings = [fullCircle(firstBearingDeg)];
  for (const turnDeg of turnsDeg) bearings.push(fullCircle(bearings.at(-1)! + turnDeg));
  return bearings;
}
