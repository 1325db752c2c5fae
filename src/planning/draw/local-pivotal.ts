import type { SeededRandom } from '../../maths/random.ts';
import { nearestPoints } from './nearest-points.ts';

/** A fine list of possible places, as coordinates whose straight distances order the neighbours. */
export interface PivotalCandidates {
  readonly points: readonly (readonly number[])[];
  /** Inclusion probability of each, from 0 to 1; together the (whole) number of stations wanted. */
  readonly inclusion: ArrayLike<number>;
}

/**
 * Chooses places by duels between nearest neighbours (local pivotal method, first form); returns rising indices.
 *
 * Two places that are nearest to each other settle their chances between them, so that neighbours are rarely both
 * chosen: the sample is spread, its size is fixed and every place keeps its inclusion probability exactly.
 * Throws when the probabilities are outside 0 to 1. If they do not add up to a whole number, the last one left is
 * settled by a draw and the size is one of the two whole numbers beside the sum.
 * Cost: about n log n questions. Source: Grafstrom, Lundstrom and Schelin 2012 (from memory); computed with R.
 */
export function localPivotalDraw(candidates: PivotalCandidates, random: SeededRandom): readonly number[] {
  const chance = Float64Array.from(candidates.inclusion);
  if (chance.some((p) => !(p >= 0 && p <= 1 + sure)) || chance.length !== candidates.points.length) {
    throw new Error('localPivotalDraw requires one probability from 0 to 1 for each candidate');
  }
  const { points } = candidates;
  const tree = nearestPoints(points);
  const open = openList(chance.length);
  const settle = (i: number) => {
    if (chance[i]! > sure && chance[i]! < 1 - sure) return;
    open.remove(i);
    tree.remove(i);
  };
  for (let i = 0; i < chance.length; i++) settle(i);
  while (open.size() > 1) {
    const one = open.at(random.below(open.size()));
    const other = anyOf(tree.nearest(points[one]!, one), random);
    if (!tree.nearest(points[other]!, other).includes(one)) continue;
    duel(chance, one, other, random);
    settle(one);
    settle(other);
  }
  if (open.size() === 1) {
    const last = open.at(0);
    chance[last] = random.uniform() < chance[last]! ? 1 : 0;
  }
  return Array.from(chance.keys()).filter((i) => chance[i]! > 0.5);
}

/** Nearer than this to 0 or 1 a probability is decided: sums of hundreds of chances carry rounding. */
const sure = 1e-9;

function duel(chance: Float64Array, a: number, b: number, random: SeededRandom): void {
  const together = chance[a]! + chance[b]!;
  if (together < 1) {
    const isA = random.uniform() * together < chance[a]!;
    chance[a] = isA ? together : 0;
    chance[b] = isA ? 0 : together;
    return;
  }
  const isA = random.uniform() * (2 - together) < 1 - chance[b]!;
  chance[a] = isA ? 1 : together - 1;
  chance[b] = isA ? together - 1 : 1;
}

function anyOf(indices: readonly number[], random: SeededRandom): number {
  return indices.length === 1 ? indices[0]! : indices[random.below(indices.length)]!;
}

function openList(count: number) {
  const list = Array.from({ length: count }, (_, i) => i);
  const placeOf = Int32Array.from(list);
  return {
    size: () => list.length,
    at: (i: number) => list[i]!,
    remove(index: number) {
      const place = placeOf[index]!;
      const last = list.pop()!;
      if (last === index) return;
      list[place] = last;
      placeOf[last] = place;
    },
  };
}
