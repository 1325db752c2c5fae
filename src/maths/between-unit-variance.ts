import { mean, sum } from './variance.ts';

/** The contributions of the sampling units of one stratum to a total, empty units included as zeros. */
export interface UnitContributions {
  readonly name: string;
  readonly contributions: ArrayLike<number>;
  /** Units in the whole stratum, for the finite population correction; null when not applied. */
  readonly populationUnits: number | null;
}

/** The variance, and what each stratum gave to it; `loneStrata` is not empty where the variance is null. */
export interface BetweenUnitVariance {
  readonly variance: number | null;
  readonly byStratum: readonly { readonly variance: number; readonly units: number }[];
  readonly loneStrata: readonly string[];
}

/**
 * Variance of a total of independent sampling units drawn within strata:
 * sum over strata of (1 - f) n / (n - 1) sum (z - mean z)^2.
 *
 * Every design-based standard error of the house comes from here: a mean, a ratio, a subpopulation,
 * a raised length differ only in the contribution z of each unit.
 *
 * A stratum with one unit has no spread: the variance is null and the stratum is named, unless that
 * unit is the whole stratum. Source: Cochran 1977, chapter 5 (from memory); the `survey` package of R.
 */
export function betweenUnitVariance(strata: readonly UnitContributions[]): BetweenUnitVariance {
  const byStratum = strata.map((stratum) => ({
    variance: stratumVariance(stratum),
    units: stratum.contributions.length,
  }));
  const loneStrata = strata.filter(isLone).map((stratum) => stratum.name);
  const variance = loneStrata.length > 0 ? null : sum(byStratum.map((stratum) => stratum.variance));
  return { variance, byStratum, loneStrata };
}

/** Share of the stratum's units that were visited; 0 where no correction is applied. */
function samplingFraction(units: number, populationUnits: number | null): number {
  return populationUnits === null ? 0 : Math.min(1, units / populationUnits);
}

function isLone(stratum: UnitContributions): boolean {
  return stratum.contributions.length === 1 && samplingFraction(1, stratum.populationUnits) < 1;
}

function stratumVariance(stratum: UnitContributions): number {
  const units = stratum.contributions.length;
  if (units < 2) return 0;
  const centre = mean(stratum.contributions);
  const squares = new Float64Array(units);
  for (let i = 0; i < units; i++) squares[i] = (stratum.contributions[i]! - centre) ** 2;
  const unseen = 1 - samplingFraction(units, stratum.populationUnits);
  return ((unseen * units) / (units - 1)) * sum(squares);
}
