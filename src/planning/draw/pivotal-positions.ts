import type { SeededRandom } from '../../maths/random.ts';
import { type PlanProblem, planProblem } from '../size/plan-problem.ts';
import { candidateGrid, mostCandidates, spacingFor } from './candidates.ts';
import type { DrawStratum } from './draw-request.ts';
import { directionOf } from './ground.ts';
import { localPivotalDraw } from './local-pivotal.ts';
import type { InclusionWeight, NextPosition } from './ordered-positions.ts';
import { shuffled } from './simple-random.ts';

/**
 * An ordered list from a local pivotal draw: first the stations in random order, then the spares in random order.
 *
 * Stations and spares are drawn together from a fine grid of places, then the stations from among them by a second
 * pivotal draw: both steps keep equal chances equal, and the stations are spread as well as all of them are.
 * The list ends (null) with the last spare. A problem instead where the grid has too few places, or the frame too many.
 */
export function pivotalPositions(
  stratum: Pick<DrawStratum, 'name' | 'ground'>,
  wanted: {
    readonly stations: number;
    readonly spares: number;
    readonly candidates: number;
    readonly weight: InclusionWeight | null;
  },
  random: SeededRandom,
): NextPosition | PlanProblem {
  const { name, ground } = stratum;
  const all = wanted.stations + wanted.spares;
  const spacingM = spacingFor(ground, Math.max(wanted.candidates, 4 * all), random);
  if (spacingM === null) {
    return planProblem('plan-ground-not-found', { stratum: name, tries: 20_000, found: 0, wanted: all });
  }
  const places = candidateGrid(ground, spacingM, random);
  if (places === null || places.length > mostCandidates) {
    const candidates = places?.length ?? mostCandidates;
    return planProblem('plan-too-many-candidates', {
      ...{ stratum: name, candidates, most: mostCandidates, spacingM },
    });
  }
  if (places.length < all) {
    return planProblem('plan-too-few-candidates', { stratum: name, candidates: places.length, wanted: all });
  }
  const points = places.map(directionOf);
  const weights = places.map((place) => wanted.weight?.at(place) ?? 1);
  const drawn = localPivotalDraw({ points, inclusion: inclusionOf(weights, all) }, random);
  const share = wanted.stations / drawn.length;
  const first = localPivotalDraw(
    { points: drawn.map((i) => points[i]!), inclusion: drawn.map(() => share) },
    random,
  );
  const isFirst = new Set(first);
  const later = drawn.map((_, i) => i).filter((i) => !isFirst.has(i));
  const order = [first, later].flatMap((part) => shuffled(part.length, random).map((i) => part[i]!));
  let next = 0;
  return () => (next < order.length ? places[drawn[order[next++]!]!]! : null);
}

/** Chances proportional to the weights that add up to `size`; a place that would pass 1 is certain, the rest share. */
export function inclusionOf(weights: readonly number[], size: number): readonly number[] {
  const certain = new Set<number>();
  for (;;) {
    const open = weights.map((weight, i) => (certain.has(i) ? 0 : weight));
    const total = open.reduce((a, b) => a + b, 0);
    const left = size - certain.size;
    const chances = open.map((weight, i) => (certain.has(i) ? 1 : total > 0 ? (weight / total) * left : 0));
    const over = chances.flatMap((chance, i) => (chance > 1 + 1e-12 && !certain.has(i) ? [i] : []));
    if (over.length === 0) return chances;
    for (const i of over) certain.add(i);
  }
}
