import { sum } from '../../maths/variance.ts';
import { type Planned, planned, planProblem, refused, stops } from './plan-problem.ts';
import { priorityAllocation } from './priority-allocation.ts';
import { numberProblems, repeatedNames, wholeProblems } from './typed-numbers.ts';

export interface SharedAllocationRequest {
  readonly strata: readonly { readonly name: string; readonly areaHa: number }[];
  /** For each species the standard deviation in each stratum (in their order), its mean, and the wanted CV. */
  readonly species: readonly {
    readonly species: string;
    readonly meanPerHa: number;
    readonly targetCv: number;
    readonly standardDeviations: readonly number[];
  }[];
  readonly stations: number;
  readonly minimum?: number;
}

export interface SharedAllocation {
  readonly stations: readonly { readonly name: string; readonly stations: number }[];
  readonly species: readonly {
    readonly species: string;
    readonly cv: number;
    readonly targetCv: number;
    /** cv over target: at most 1 where the target is reached. */
    readonly shortfall: number;
    /** The CV this species would have if the stations were split for it alone (not rounded). */
    readonly cvIfAlone: number;
  }[];
  /** The greatest cv over target, which the split makes as small as it can. */
  readonly worst: number;
  /** No split of the same number of stations, whole or not, has a smaller worst than this. */
  readonly leastPossible: number;
}

/**
 * Stations over strata for several species at once: the split that makes the worst cv over target smallest.
 *
 * The species are given weights; for given weights the best split is Neyman's with their summed variances, and the
 * weights move towards the species that is worst off until nothing is gained (multiplicative steps). The bound
 * `leastPossible` comes from the same weights, so the table itself shows how near to the best the split is.
 * Whole numbers by priority values at or above the minimum (3 when not said), then single stations are moved while the
 * worst becomes smaller: for two strata that is the best whole split, for more it is near it.
 * Source: weighted minimax as in Bethel 1989 (from memory), with a bound of our own from weak duality.
 */
export function sharedAllocation(request: SharedAllocationRequest): Planned<SharedAllocation> {
  const { strata, species, stations, minimum = 3 } = request;
  const problems = [
    ...(strata.length === 0 ? [planProblem('plan-no-strata')] : []),
    ...(species.length === 0 ? [planProblem('plan-no-species')] : []),
    ...repeatedNames(strata.map((stratum) => stratum.name)),
    ...repeatedNames(species.map((one) => one.species)),
    ...wholeProblems('stations', stations, { atLeast: 1, atMost: 100_000 }),
    ...wholeProblems('minimum', minimum, { atLeast: 1 }),
    ...strata.flatMap((stratum) => numberProblems('areaHa', stratum.areaHa, { above: 0 })),
    ...species.flatMap((one) => [
      ...numberProblems('meanPerHa', one.meanPerHa, { above: 0 }),
      ...numberProblems('targetCv', one.targetCv, { above: 0 }),
      ...one.standardDeviations.flatMap((sd) => numberProblems('standardDeviation', sd, { atLeast: 0 })),
    ]),
  ];
  if (stops(problems)) return refused(problems);
  const needed = minimum * strata.length;
  if (stations < needed) {
    const count = strata.length;
    return refused([planProblem('plan-minimum-needs-more', { stations, minimum, strata: count, needed })]);
  }
  const relative = relativeVariances(request);
  if (relative.every((row) => row.every((v) => v === 0)))
    return refused([planProblem('plan-no-spread-anywhere')]);
  return planned(split(request, relative, minimum));
}

/** For each species and stratum what it adds to (cv / target)^2, times the stations there. */
function relativeVariances({ strata, species }: SharedAllocationRequest): readonly (readonly number[])[] {
  const whole = sum(strata.map((stratum) => stratum.areaHa));
  return species.map((one) => {
    if (one.standardDeviations.length !== strata.length)
      throw new Error('sharedAllocation requires one standard deviation per stratum');
    return strata.map(
      (stratum, h) =>
        (((stratum.areaHa / whole) * one.standardDeviations[h]!) / (one.meanPerHa * one.targetCv)) ** 2,
    );
  });
}

function split(
  { strata, species, stations }: SharedAllocationRequest,
  relative: readonly (readonly number[])[],
  minimum: number,
): SharedAllocation {
  const { claims, bound } = bestWeights(relative, stations);
  const start = priorityAllocation(
    claims.map((weight) => ({ weight, minimum, maximum: null })),
    stations,
  );
  const given = improved(start, minimum, (some) => worstOf(relative, some));
  const rows = species.map((one, j) => {
    const shortfall = Math.sqrt(sum(relative[j]!.map((v, h) => v / given[h]!)));
    const alone = sum(relative[j]!.map(Math.sqrt)) / Math.sqrt(stations);
    const { targetCv } = one;
    return {
      species: one.species,
      targetCv,
      shortfall,
      cv: shortfall * targetCv,
      cvIfAlone: alone * targetCv,
    };
  });
  return {
    stations: strata.map((stratum, h) => ({ name: stratum.name, stations: given[h]! })),
    species: rows,
    worst: Math.max(...rows.map((row) => row.shortfall)),
    leastPossible: Math.sqrt(bound),
  };
}

function worstOf(relative: readonly (readonly number[])[], given: readonly number[]): number {
  return Math.max(...relative.map((row) => sum(row.map((v, h) => v / given[h]!))));
}

/** Moves one station at a time to where it makes the worst smaller, until no single move does. */
function improved(
  start: readonly number[],
  minimum: number,
  worstAt: (given: readonly number[]) => number,
): readonly number[] {
  let given = start;
  let worst = worstAt(given);
  for (;;) {
    let better: readonly number[] | null = null;
    for (const [from, to] of pairsOf(given.length)) {
      if (given[from]! <= minimum) continue;
      const moved = given.map((n, h) => n - Number(h === from) + Number(h === to));
      const after = worstAt(moved);
      if (after >= worst * (1 - 1e-12)) continue;
      better = moved;
      worst = after;
    }
    if (better === null) return given;
    given = better;
  }
}

function pairsOf(count: number): readonly (readonly [number, number])[] {
  const all = Array.from({ length: count }, (_, i) => i);
  return all.flatMap((from) => all.filter((to) => to !== from).map((to) => [from, to] as const));
}

/** The weights of the species with the greatest lower bound, and the claims of the strata under them. */
function bestWeights(relative: readonly (readonly number[])[], stations: number) {
  let weights = relative.map(() => 1 / relative.length);
  let best = { claims: claimsUnder(relative, weights), bound: 0 };
  for (let round = 0; round < 2000; round++) {
    const claims = claimsUnder(relative, weights);
    const total = sum(claims);
    const bound = total ** 2 / stations;
    if (bound > best.bound) best = { claims, bound };
    // (cv / target)^2 of each species under Neyman's split for these weights.
    const squares = relative.map((row) =>
      sum(row.map((v, h) => (v === 0 ? 0 : (v * total) / (claims[h]! * stations)))),
    );
    const moved = weights.map((weight, j) => weight * squares[j]!);
    const all = sum(moved);
    const next = moved.map((weight) => weight / all);
    const isStill = next.every((weight, j) => Math.abs(weight - weights[j]!) < 1e-12);
    weights = next;
    if (isStill) break;
  }
  return best;
}

function claimsUnder(relative: readonly (readonly number[])[], weights: readonly number[]): number[] {
  const strata = relative[0]!.length;
  return Array.from({ length: strata }, (_, h) =>
    Math.sqrt(sum(relative.map((row, j) => weights[j]! * row[h]!))),
  );
}
