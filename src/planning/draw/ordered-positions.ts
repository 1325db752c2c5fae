import type { SeededRandom } from '../../maths/random.ts';
import type { Position } from '../../survey/map-area.ts';
import { equalAreaPosition } from './equal-area.ts';
import type { DrawGround } from './ground.ts';
import { radicalInverse } from './halton.ts';

/** Unequal chances: a weight for each position, and the greatest it takes anywhere on the ground. */
export interface InclusionWeight {
  readonly at: (position: Position) => number;
  readonly greatest: number;
}

/** The next position of an ordered list, or null when the ground was not hit in so many tries. */
export type NextPosition = () => Position | null;

/** A ground that fills less than a ten-thousandth of its frame is a mistake of the map more often than a reef. */
export const mostTries = 200_000;

/**
 * An endless ordered list of well-spread random positions on a ground (balanced acceptance sampling).
 *
 * Points of the Halton sequence in bases 2 and 3 are laid over the frame in equal areas from a random start, and those
 * on the ground are taken in order. Any run of the list is spread over the ground, so that the stations are its first
 * n and the replacements the next, in their order. The start is drawn again until its first point is on the ground:
 * otherwise ground behind a long gap in the frame would be chosen first too often.
 * With weights a third coordinate in base 5 decides: the density of stations is then proportional to the weight.
 * Throws when a weight is above the greatest. Source: Robertson et al. 2013 and 2017 (from memory).
 */
export function orderedPositions(
  ground: DrawGround,
  random: SeededRandom,
  weight: InclusionWeight | null = null,
): NextPosition {
  const place = equalAreaPosition(ground.box);
  let starts = [0, 0, 0];
  let step = 0;
  const pointAt = (offset: number): Position | null => {
    const [x, y, z] = starts.map((start, i) => radicalInverse(start + offset, bases[i]!));
    const position = place(x!, y!);
    if (!ground.contains(position)) return null;
    return weight === null || z! * weight.greatest < weightAt(weight, position) ? position : null;
  };
  const begin = (): Position | null => {
    for (let tries = 0; tries < mostTries; tries++) {
      starts = bases.map(() => random.below(startsBelow));
      const first = pointAt(0);
      if (first !== null) return first;
    }
    return null;
  };
  return () => {
    if (step === 0) {
      step = 1;
      return begin();
    }
    for (let tries = 0; tries < mostTries; tries++, step++) {
      const position = pointAt(step);
      if (position === null) continue;
      step++;
      return position;
    }
    return null;
  };
}

const bases = [2, 3, 5] as const;
const startsBelow = 10_000_000;

function weightAt(weight: InclusionWeight, position: Position): number {
  const value = weight.at(position);
  if (!(value >= 0 && value <= weight.greatest)) {
    throw new Error(`orderedPositions requires weights from 0 to ${weight.greatest}, got ${value}`);
  }
  return value;
}
