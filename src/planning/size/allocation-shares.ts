/** The textbook splits of stations over strata, not rounded, and the variance that a split leaves. */

import { sum } from '../../maths/variance.ts';

/** A stratum as the formulas of allocation see it. */
export interface StratumSpread {
  /** Share of the whole area; the shares need not add up to one. */
  readonly weight: number;
  readonly standardDeviation: number;
  readonly costPerStation: number;
}

export type AllocationRule = 'proportional' | 'neyman' | 'cost-optimal';

/**
 * Shares of the stations, which add up to one.
 *
 * proportional: by area. neyman: by area times standard deviation, the smallest variance for a number of stations.
 * cost-optimal: that over the root of the cost of a station, the smallest variance for the money.
 * Throws when no stratum has any claim. Source: Cochran 1977, equations 5.26 and 5.22 (from memory).
 */
export function allocationShares(strata: readonly StratumSpread[], rule: AllocationRule): readonly number[] {
  const claims = strata.map((stratum) => claimOf(stratum, rule));
  const total = sum(claims);
  if (!(total > 0)) throw new Error('allocationShares requires a stratum with some claim');
  return claims.map((claim) => claim / total);
}

export function claimOf(stratum: StratumSpread, rule: AllocationRule): number {
  if (rule === 'proportional') return stratum.weight;
  const spread = stratum.weight * stratum.standardDeviation;
  return rule === 'neyman' ? spread : spread / Math.sqrt(stratum.costPerStation);
}

/** Variance of the area-weighted mean: sum of W^2 S^2 / n, with the weights brought to one. */
export function varianceOfAllocation(strata: readonly StratumSpread[], stations: ArrayLike<number>): number {
  const whole = sum(strata.map((stratum) => stratum.weight));
  return sum(
    strata.map(
      ({ weight, standardDeviation }, h) => ((weight / whole) * standardDeviation) ** 2 / stations[h]!,
    ),
  );
}

/** Number of stations, not rounded, that a budget pays when they are split by the rule. */
export function stationsForBudget(
  strata: readonly StratumSpread[],
  rule: AllocationRule,
  budget: number,
): number {
  const shares = allocationShares(strata, rule);
  return budget / sum(strata.map((stratum, h) => stratum.costPerStation * shares[h]!));
}

/** Number of stations, not rounded, that leaves a wanted variance of the mean when they are split by the rule. */
export function stationsForVariance(
  strata: readonly StratumSpread[],
  rule: AllocationRule,
  variance: number,
): number {
  const shares = allocationShares(strata, rule);
  // A stratum that gets nothing must not be divided by; without spread it adds nothing either.
  const claimed = strata.map((_, h) => h).filter((h) => shares[h]! > 0);
  const whole = sum(strata.map((stratum) => stratum.weight));
  const atOne = sum(
    claimed.map((h) => ((strata[h]!.weight / whole) * strata[h]!.standardDeviation) ** 2 / shares[h]!),
  );
  return atOne / variance;
}
