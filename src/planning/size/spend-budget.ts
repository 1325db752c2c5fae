import { sum } from '../../maths/variance.ts';
import type { StratumSpread } from './allocation-shares.ts';
import { type Claim, firstInPriority } from './priority-allocation.ts';

/**
 * Whole numbers of stations that a budget pays, the minima first, then one by one where the claim is greatest.
 *
 * A stratum that the rest of the money cannot reach is full; a cheaper one may still take a station. With `seeksBest` the
 * whole numbers with the smallest variance of the mean are looked for, since one by one can end a station short of them:
 * the last of the money fits nowhere. Not looked for where the ways are too many to try (dozens of strata with odd costs).
 */
export function spendBudget(
  claims: readonly Claim[],
  spreads: readonly StratumSpread[],
  asked: { readonly budget: number; readonly seeksBest: boolean },
): readonly number[] {
  const minima = claims.map((claim) => claim.minimum);
  const oneByOne = spendRest(claims, spreads, { from: minima, budget: asked.budget });
  const best = asked.seeksBest ? bestSplit(claims, spreads, { oneByOne, budget: asked.budget }) : null;
  // What the best split leaves pays at most for strata without spread.
  return best === null ? oneByOne : spendRest(claims, spreads, { from: best, budget: asked.budget });
}

function spendRest(
  claims: readonly Claim[],
  spreads: readonly StratumSpread[],
  money: { readonly from: readonly number[]; readonly budget: number },
): readonly number[] {
  const given = [...money.from];
  const costOf = (h: number) => spreads[h]!.costPerStation;
  for (;;) {
    const left = money.budget - sum(given.map((n, h) => n * costOf(h)));
    const isPayable = (h: number) => costOf(h) <= left + rounding * money.budget;
    const payable = claims.map((claim, h) => (isPayable(h) ? claim : { ...claim, maximum: 0 }));
    const next = firstInPriority(payable, given);
    if (next === null) return given;
    given[next]!++;
  }
}

const rounding = 1e-12;

/** A split of the strata looked at so far. */
interface Part {
  readonly cost: number;
  readonly variance: number;
  readonly given: readonly number[];
}

/** More parts than this at one stratum are not tried. */
const mostParts = 200_000;

/**
 * The whole numbers with the smallest variance for the money, or null when the ways are too many. Stratum by stratum; a
 * part goes on only if no other costs as little and leaves as little variance, and if the rest of the money, split
 * without rounding, could still beat what is known.
 */
function bestSplit(
  claims: readonly Claim[],
  spreads: readonly StratumSpread[],
  known: { readonly oneByOne: readonly number[]; readonly budget: number },
): readonly number[] | null {
  const squares = spreads.map(({ weight, standardDeviation }) => (weight * standardDeviation) ** 2);
  const costs = spreads.map(({ costPerStation }) => costPerStation);
  const budget = known.budget * (1 + rounding);
  const toBeat = varianceSum(squares, known.oneByOne) * (1 + rounding);
  let parts: readonly Part[] = [{ cost: 0, variance: 0, given: [] }];
  for (let h = 0; h < spreads.length; h++) {
    const rest = claims.map((_, i) => i).filter((i) => i > h);
    const restCost = sum(rest.map((i) => claims[i]!.minimum * costs[i]!));
    const restRoots = sum(rest.map((i) => Math.sqrt(squares[i]! * costs[i]!)));
    const longer: Part[] = [];
    for (const part of parts) {
      const most = squares[h] === 0 ? claims[h]!.minimum : (claims[h]!.maximum ?? Infinity);
      for (let n = claims[h]!.minimum; n <= most; n++) {
        const cost = part.cost + n * costs[h]!;
        if (cost + restCost > budget) break;
        const variance = part.variance + squares[h]! / n;
        const least = restRoots === 0 ? 0 : restRoots ** 2 / (budget - cost);
        if (variance + least <= toBeat) longer.push({ cost, variance, given: [...part.given, n] });
      }
      if (longer.length > mostParts) return null;
    }
    parts = undominated(longer);
  }
  return parts.at(-1)?.given ?? null;
}

/** Dearer parts stay only where they leave less variance; the last one leaves least. */
function undominated(parts: readonly Part[]): readonly Part[] {
  const kept: Part[] = [];
  for (const part of parts.toSorted((a, b) => a.cost - b.cost || a.variance - b.variance)) {
    const last = kept.at(-1);
    if (last === undefined || part.variance < last.variance * (1 - rounding)) kept.push(part);
  }
  return kept;
}

function varianceSum(squares: readonly number[], given: readonly number[]): number {
  return sum(squares.map((square, h) => square / given[h]!));
}
