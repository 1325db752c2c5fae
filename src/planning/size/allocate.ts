import { sum } from '../../maths/variance.ts';
import { type AllocationGoal, checkAllocation, type PlannedStratum, spreadsOf } from './allocation-check.ts';
import {
  type AllocationRule,
  allocationShares,
  claimOf,
  type StratumSpread,
  stationsForBudget,
  stationsForVariance,
  varianceOfAllocation,
} from './allocation-shares.ts';
import { type Planned, type PlanProblem, planned, planProblem, refused, stops } from './plan-problem.ts';
import { type Claim, firstInPriority, priorityAllocation } from './priority-allocation.ts';
import { spendBudget } from './spend-budget.ts';

export interface AllocationRequest {
  readonly strata: readonly PlannedStratum[];
  readonly rule: AllocationRule;
  readonly goal: AllocationGoal;
  /** Fewest stations in any stratum; 3 when not said: two give a standard error nobody should believe. */
  readonly minimum?: number;
}

export interface AllocatedStratum {
  readonly name: string;
  /** What the rule alone would give, not rounded. */
  readonly exact: number;
  readonly stations: number;
  /** Whether the stratum has more than its rule gives, because of the minimum. */
  readonly isRaisedToMinimum: boolean;
  readonly cost: number | null;
}

export interface Allocation {
  readonly rule: AllocationRule;
  readonly minimum: number;
  readonly strata: readonly AllocatedStratum[];
  readonly stations: number;
  /** Null where the cost of a station is not known for every stratum. */
  readonly cost: number | null;
  /** Variance of the area-weighted mean; null where a standard deviation is not known. */
  readonly varianceOfMean: number | null;
  /** The same if the stations could be cut into parts: what whole numbers and the minimum cost. */
  readonly varianceOfExact: number | null;
}

/**
 * Stations over strata in whole numbers, for a number of stations, a budget or a precision.
 *
 * For a number of stations the split is the exact best one (priority values) at or above the minimum. For a budget or
 * a variance stations are added one by one, each where it takes away most variance (per cost, under the cost-optimal
 * rule), while the money lasts or until the variance is reached; for a budget under that rule the whole numbers
 * with the smallest variance are looked for (`spendBudget`). The others are the best split, or close to it.
 * Standard deviations come from a pilot: raise them by `pilotFactor` first. A stratum whose pilot stations were all
 * alike gets the minimum only, and that is said. Refuses missing areas, spreads or costs that the rule needs.
 * Source: Cochran 1977, equations 5.22 to 5.26 (from memory); Wright 2012 for whole numbers (from memory).
 */
export function allocate(request: AllocationRequest): Planned<Allocation> {
  const { strata, rule, goal, minimum = 3 } = request;
  const problems = checkAllocation(strata, { rule, goal, minimum });
  if (stops(problems)) return refused(problems);
  const spreads = spreadsOf(strata);
  const claims = spreads.map((spread, h) => ({
    weight: claimOf(spread, rule),
    minimum: Math.min(minimum, strata[h]!.mostStations ?? minimum),
    maximum: strata[h]!.mostStations ?? null,
  }));
  const given = wholeNumbers(claims, spreads, { goal, rule });
  if (given === null) {
    const room = sum(strata.map((stratum) => stratum.mostStations ?? 0));
    return refused([...problems, planProblem('plan-ground-too-small', { stations: room, room })]);
  }
  const exact = exactNumbers(spreads, rule, goal);
  return planned(allocationOf(request, { spreads, given, exact, minimum }), [
    ...problems,
    ...fullStrata(strata, given),
  ]);
}

function wholeNumbers(
  claims: readonly Claim[],
  spreads: readonly StratumSpread[],
  { goal, rule }: Pick<AllocationRequest, 'goal' | 'rule'>,
): readonly number[] | null {
  if ('stations' in goal) return priorityAllocation(claims, goal.stations);
  const given = claims.map((claim) => claim.minimum);
  if ('varianceOfMean' in goal) {
    while (varianceOfAllocation(spreads, given) > goal.varianceOfMean) {
      const next = firstInPriority(claims, given);
      if (next === null) return null;
      given[next]!++;
    }
    return given;
  }
  return spendBudget(claims, spreads, { budget: goal.budget, seeksBest: rule === 'cost-optimal' });
}

function exactNumbers(
  spreads: readonly StratumSpread[],
  rule: AllocationRule,
  goal: AllocationGoal,
): readonly number[] {
  const stations =
    'stations' in goal
      ? goal.stations
      : 'budget' in goal
        ? stationsForBudget(spreads, rule, goal.budget)
        : stationsForVariance(spreads, rule, goal.varianceOfMean);
  return allocationShares(spreads, rule).map((share) => share * stations);
}

function allocationOf(
  { strata, rule }: AllocationRequest,
  found: {
    readonly spreads: readonly StratumSpread[];
    readonly given: readonly number[];
    readonly exact: readonly number[];
    readonly minimum: number;
  },
): Allocation {
  const { spreads, given, exact, minimum } = found;
  const rows = strata.map((stratum, h) => ({
    name: stratum.name,
    exact: exact[h]!,
    stations: given[h]!,
    isRaisedToMinimum: given[h] === minimum && exact[h]! < minimum,
    cost: stratum.costPerStation === null ? null : stratum.costPerStation * given[h]!,
  }));
  const costs = rows.flatMap((row) => (row.cost === null ? [] : [row.cost]));
  const isSpreadKnown = strata.every((stratum) => stratum.standardDeviation !== null);
  const claimed = exact.map((n) => (n > 0 ? n : 1));
  return {
    rule,
    minimum,
    strata: rows,
    stations: sum(given),
    cost: costs.length < rows.length ? null : sum(costs),
    varianceOfMean: isSpreadKnown ? varianceOfAllocation(spreads, given) : null,
    varianceOfExact: isSpreadKnown ? varianceOfAllocation(spreads, claimed) : null,
  };
}

function fullStrata(strata: readonly PlannedStratum[], given: readonly number[]): readonly PlanProblem[] {
  return strata.flatMap(({ name, mostStations }, h) =>
    mostStations !== null && given[h]! >= mostStations
      ? [planProblem('plan-stratum-full', { stratum: name, stations: given[h]! })]
      : [],
  );
}
