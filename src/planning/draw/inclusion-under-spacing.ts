import { seededRandom } from '../../maths/random.ts';
import type { Position } from '../../survey/map-area.ts';
import {
  type Planned,
  type PlanProblem,
  planned,
  planProblem,
  refused,
  stops,
} from '../size/plan-problem.ts';
import { wholeProblems } from '../size/typed-numbers.ts';
import { candidateGrid, spacingFor } from './candidates.ts';
import type { DrawRequest, DrawStratum } from './draw-request.ts';
import { drawStations } from './draw-stations.ts';
import { directionOf } from './ground.ts';
import { nearestPoints } from './nearest-points.ts';

export interface CellInclusion {
  /** Middle of a cell of ground: the nearest of these is the cell of a position. */
  readonly place: Position;
  /** Chance with the spacing over the chance without it; 1 where it changes nothing. */
  readonly ratio: number;
}

export interface StratumInclusion {
  readonly stratum: string;
  readonly cells: readonly CellInclusion[];
  readonly lowestRatio: number;
  readonly highestRatio: number;
  /** Standard error of one ratio from the number of redraws: ratios within two or three of 1 show nothing. */
  readonly noise: number;
}

export interface SpacingEffect {
  readonly strata: readonly StratumInclusion[];
  readonly redraws: number;
  /** Redraws that the spacing left without enough stations; they are in no ratio. */
  readonly failed: number;
}

/**
 * What a minimum spacing does to the chances of the ground, by drawing the plan again and again with and without it.
 *
 * Passing over close positions empties the neighbourhood of fixed stations and favours edges and corners, which have
 * fewer neighbours. The ground is cut into cells (40 to a stratum), and the share of redraws with a new station in each is
 * compared. Refuses a request without spacing. Cost: two draws for each redraw. Source: METHODS h; common practice.
 */
export function inclusionUnderSpacing(
  request: DrawRequest,
  settings: { readonly redraws?: number; readonly cells?: number; readonly seed: number },
): Planned<SpacingEffect> {
  const { redraws = 1000, cells = 40, seed } = settings;
  const problems: PlanProblem[] = [
    ...wholeProblems('redraws', redraws, { atLeast: 1, atMost: 100_000 }),
    ...wholeProblems('cells', cells, { atLeast: 2, atMost: 2000 }),
    ...wholeProblems('seed', seed, { atLeast: 0, atMost: 2 ** 31 - 1 }),
    ...(request.minimumSpacingM === null
      ? [planProblem('plan-number-impossible', { what: 'minimumSpacingM', value: 'none', above: 0 })]
      : []),
  ];
  if (stops(problems)) return refused(problems);
  // A request that cannot be drawn at all is refused for its own reason.
  const trial = drawStations(request);
  if (trial.value === null) return refused(trial.problems);
  const counters = request.strata.map((stratum, h) => cellCounter(stratum, cells, seed + h));
  const random = seededRandom(seed);
  let failed = 0;
  for (let i = 0; i < redraws; i++) {
    const again = withoutSpares({ ...request, seed: random.below(2 ** 31) });
    const spaced = drawStations(again).value;
    const free = drawStations({ ...again, minimumSpacingM: null }).value;
    if (spaced === null || free === null) {
      failed++;
      continue;
    }
    counters.forEach((counter) => {
      for (const { kind, plan } of [
        { kind: 'spaced' as const, plan: spaced },
        { kind: 'free' as const, plan: free },
      ]) {
        for (const station of plan.stations)
          if (station.stratum === counter.stratum && station.selection === 'random')
            counter.count(kind, station.position);
      }
    });
  }
  return planned({ strata: counters.map((counter) => counter.result()), redraws, failed });
}

/** Spares are drawn after every station and cannot change one. */
function withoutSpares(request: DrawRequest): DrawRequest {
  // The pivotal draw takes stations and spares together: there the spares are part of the design.
  if (request.method === 'pivotal') return request;
  return { ...request, strata: request.strata.map((stratum) => ({ ...stratum, spares: 0 })) };
}

function cellCounter(stratum: DrawStratum, cells: number, seed: number) {
  const random = seededRandom(seed);
  const spacingM = spacingFor(stratum.ground, cells, random);
  const places = (spacingM === null ? null : candidateGrid(stratum.ground, spacingM, random)) ?? [];
  const tree = nearestPoints(places.map(directionOf));
  const counts = { spaced: new Float64Array(places.length), free: new Float64Array(places.length) };
  return {
    stratum: stratum.name,
    count(kind: 'spaced' | 'free', position: Position) {
      const cell = tree.nearest(directionOf(position))[0];
      if (cell !== undefined) counts[kind][cell]!++;
    },
    result(): StratumInclusion {
      const seen = places.flatMap((place, i) =>
        counts.free[i]! > 0 ? [{ place, ratio: counts.spaced[i]! / counts.free[i]! }] : [],
      );
      const ratios = seen.map((cell) => cell.ratio);
      const usual = counts.free.reduce((a, b) => a + b, 0) / Math.max(1, seen.length);
      return {
        stratum: stratum.name,
        cells: seen,
        lowestRatio: Math.min(1, ...ratios),
        highestRatio: Math.max(1, ...ratios),
        noise: usual > 0 ? Math.sqrt(2 / usual) : 0,
      };
    },
  };
}
