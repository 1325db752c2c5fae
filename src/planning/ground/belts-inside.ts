import type { Position } from '../../survey/map-area.ts';
import type { LaidBelt } from './lay-belts.ts';
import { shorterWayDeg } from './plane.ts';

export interface BeltsInside {
  readonly laidM: number;
  readonly insideM: number;
  /** 0 to 1: metres of belt on the ground over metres laid; gaps do not count. */
  readonly share: number;
  readonly belts: readonly { readonly transect: number; readonly insideM: number }[];
}

/**
 * Metres of belt that lie on the ground asked about: inside the stratum and off the masks.
 *
 * The middle line of every belt is looked at in equal steps of about `stepM`, each step by its midpoint, so the answer
 * for one belt is right to about one step at every border crossed. The width of the belt is not looked at.
 */
export function beltsInside(
  belts: readonly LaidBelt[],
  lengthM: number,
  options: { readonly contains: (position: Position) => boolean; readonly stepM: number },
): BeltsInside {
  const steps = Math.max(1, Math.ceil(lengthM / options.stepM));
  const counts = belts.map((belt) => stepsInside(belt, steps, options.contains));
  const laidM = belts.length * lengthM;
  // Counted in steps, so that a series wholly inside has a share of exactly 1.
  const share =
    belts.length === 0 ? 0 : counts.reduce((sum, count) => sum + count, 0) / (belts.length * steps);
  return {
    laidM,
    insideM: share * laidM,
    share,
    belts: belts.map(({ transect }, i) => ({ transect, insideM: (counts[i]! / steps) * lengthM })),
  };
}

/** Straight in degrees between the ends: on a 100 m belt that is within a tenth of a millimetre of the geodesic. */
function stepsInside(belt: LaidBelt, steps: number, contains: (position: Position) => boolean): number {
  const northDeg = belt.end.latitudeDeg - belt.start.latitudeDeg;
  const eastDeg = shorterWayDeg(belt.end.longitudeDeg - belt.start.longitudeDeg);
  let inside = 0;
  for (let i = 0; i < steps; i++) {
    const part = (i + 0.5) / steps;
    const position = {
      latitudeDeg: belt.start.latitudeDeg + part * northDeg,
      longitudeDeg: belt.start.longitudeDeg + part * eastDeg,
    };
    if (contains(position)) inside++;
  }
  return inside;
}
