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
 * for one belt is right to about one step at every border crossed. With a width, a step counts only where the middle
 * and both edges are on the ground: half a belt over a drop is no belt. Where the belt lies beside its tape the edges are
 * other ones, and the officer lays it with twice the width.
 */
export function beltsInside(
  belts: readonly LaidBelt[],
  lengthM: number,
  options: {
    readonly contains: (position: Position) => boolean;
    readonly stepM: number;
    /** Of the belt, half of it to each side of its line; null or missing looks at the line alone. */
    readonly widthM?: number | null;
  },
): BeltsInside {
  const steps = Math.max(1, Math.ceil(lengthM / options.stepM));
  const halfM = (options.widthM ?? 0) / 2;
  const counts = belts.map((belt) => stepsInside(belt, steps, { contains: options.contains, halfM }));
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
function stepsInside(
  belt: LaidBelt,
  steps: number,
  ground: { readonly contains: (position: Position) => boolean; readonly halfM: number },
): number {
  const northDeg = belt.end.latitudeDeg - belt.start.latitudeDeg;
  const eastDeg = shorterWayDeg(belt.end.longitudeDeg - belt.start.longitudeDeg);
  const edges = edgesDeg(belt, ground.halfM);
  let inside = 0;
  for (let i = 0; i < steps; i++) {
    const part = (i + 0.5) / steps;
    const latitudeDeg = belt.start.latitudeDeg + part * northDeg;
    const longitudeDeg = belt.start.longitudeDeg + part * eastDeg;
    const isInside = edges.every((edge) =>
      ground.contains({
        latitudeDeg: latitudeDeg + edge.northDeg,
        longitudeDeg: longitudeDeg + edge.eastDeg,
      }),
    );
    if (isInside) inside++;
  }
  return inside;
}

/** From the middle line to itself and to both edges. A metre across is good to a few millimetres here. */
function edgesDeg({ start, bearingDeg }: LaidBelt, halfM: number) {
  const middle = { northDeg: 0, eastDeg: 0 };
  if (halfM === 0) return [middle];
  const across = ((bearingDeg + 90) * Math.PI) / 180;
  const northDeg = (halfM * Math.cos(across)) / metresPerDegree;
  const eastDeg =
    (halfM * Math.sin(across)) / (metresPerDegree * Math.cos((start.latitudeDeg * Math.PI) / 180));
  return [middle, { northDeg, eastDeg }, { northDeg: -northDeg, eastDeg: -eastDeg }];
}

const metresPerDegree = 111_200;
