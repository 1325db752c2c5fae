/** From the contributions of the sampling units to a standard error, with the reason where there is none. */

import {
  type BetweenUnitVariance,
  betweenUnitVariance,
  type UnitContributions,
} from '../maths/between-unit-variance.ts';
import type { Reason } from '../survey/message.ts';

export interface Spread {
  readonly standardError: number | null;
  readonly between: BetweenUnitVariance;
  readonly reason: Reason | null;
}

/** The standard error of a total of contributions; null with 'lone-station' and the strata when one has no spread. */
export function spreadOf(strata: readonly UnitContributions[]): Spread {
  const between = betweenUnitVariance(strata);
  if (between.variance === null) {
    return { standardError: null, between, reason: loneStation(between.loneStrata) };
  }
  return { standardError: Math.sqrt(between.variance), between, reason: null };
}

function loneStation(strata: readonly string[]): Reason {
  return { code: 'lone-station', parameters: { strata: strata.join(', ') } };
}

/** Sampling units minus strata. */
export function designDegreesOfFreedom(strata: readonly UnitContributions[]): number {
  return strata.reduce((df, stratum) => df + stratum.contributions.length - 1, 0);
}

/**
 * Satterthwaite's effective degrees of freedom: few when one wild stratum carries the variance.
 * Without any variance at all: units minus strata. A stratum seen whole adds nothing.
 * Source: Satterthwaite 1946; Cochran 1977, equation 5.16 (from memory).
 */
export function satterthwaiteDegreesOfFreedom(between: BetweenUnitVariance): number {
  // Relative to the largest, so that squares of tiny variances cannot vanish.
  const largest = Math.max(...between.byStratum.map((stratum) => stratum.variance));
  if (largest === 0) return between.byStratum.reduce((df, stratum) => df + stratum.units - 1, 0);
  let total = 0;
  let squares = 0;
  for (const { variance, units } of between.byStratum) {
    if (variance === 0) continue;
    total += variance / largest;
    squares += (variance / largest) ** 2 / (units - 1);
  }
  return total ** 2 / squares;
}
