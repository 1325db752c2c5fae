import { seededRandom } from '../../maths/random.ts';
import type { Position } from '../../survey/map-area.ts';
import { candidateGrid, spacingFor } from './candidates.ts';
import { type DrawGround, directionOf } from './ground.ts';
import { simpleRandomDraw } from './simple-random.ts';
import { voronoiBalance } from './voronoi-balance.ts';

export interface SpatialBalance {
  /** Voronoi balance of the stations: 0 when each stands for the same amount of ground. */
  readonly drawn: number;
  /** Mean over simple random draws of as many places on the same ground. */
  readonly simpleRandom: number;
  /** Share of those draws that were spread at least as well. */
  readonly shareAsGood: number;
  readonly simpleDraws: number;
}

/**
 * How well stations are spread over their ground, beside simple random draws of the same number.
 *
 * The ground is a grid of about 1000 places, each with the same chance. Null for fewer than two stations, which
 * cannot be spread, and for ground that a grid does not find. Seeded: the same question has the same answer.
 * Source: `voronoiBalance`; the comparison is ours.
 */
export function spatialBalance(
  ground: DrawGround,
  stations: readonly Position[],
  seed: number,
): SpatialBalance | null {
  if (stations.length < 2) return null;
  const random = seededRandom(seed);
  const spacingM = spacingFor(ground, placesWanted, random);
  const grid = spacingM === null ? null : candidateGrid(ground, spacingM, random);
  if (grid === null || grid.length <= stations.length) return null;
  const points = grid.map(directionOf);
  const inclusion = points.map(() => stations.length / points.length);
  const balanceOf = (chosen: readonly (readonly number[])[]) => voronoiBalance({ points, inclusion }, chosen);
  const drawn = balanceOf(stations.map(directionOf));
  const simple = Array.from({ length: simpleDraws }, () =>
    balanceOf(
      simpleRandomDraw({ count: points.length, size: stations.length }, random).map((i) => points[i]!),
    ),
  );
  return {
    drawn,
    simpleRandom: simple.reduce((a, b) => a + b, 0) / simpleDraws,
    shareAsGood: simple.filter((one) => one <= drawn).length / simpleDraws,
    simpleDraws,
  };
}

const placesWanted = 1000;
const simpleDraws = 200;
