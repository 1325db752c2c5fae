import { sum } from '../maths/variance.ts';
import type { MeanEstimate } from './shapes.ts';
import { designDegreesOfFreedom, spreadOf } from './spread.ts';

/** Sampling units of one stratum, each with two amounts whose weighted sums are divided. */
export interface RatioStratum {
  readonly name: string;
  /** What one sampling unit stands for: stratum weight over units visited. */
  readonly unitWeight: number;
  readonly numerators: readonly number[];
  readonly denominators: readonly number[];
  readonly populationUnits: number | null;
}

export interface RatioEstimate extends MeanEstimate {
  /** Weighted sum of the denominators: what the ratio rests on. */
  readonly denominator: number;
  /** w (numerator - R denominator) / sum of w denominator for every unit: what enters the variance. */
  readonly contributions: readonly (readonly number[])[];
}

/**
 * Ratio of two weighted sums over stations, with its standard error: animals over area, length over
 * animals, presence over stations, values over stations of a subpopulation.
 *
 * ALL sampling units of the strata must be given; those that hold nothing have zeros and stay in the
 * variance. Degrees of freedom are units minus strata.
 *
 * The value is null when the denominators sum to zero (the caller says why); the standard error is
 * null with 'lone-station' when a stratum has one unit. Throws without strata.
 * Source: Cochran 1977, sections 2.11, 5A.14 and 6 (from memory); R survey svyratio.
 */
export function weightedRatio(strata: readonly RatioStratum[]): RatioEstimate {
  if (strata.length === 0) throw new Error('weightedRatio requires at least one stratum');
  const numerator = weightedSum(strata, (stratum) => stratum.numerators);
  const denominator = weightedSum(strata, (stratum) => stratum.denominators);
  if (denominator === 0) {
    return {
      value: null,
      standardError: null,
      degreesOfFreedom: null,
      reason: null,
      denominator,
      contributions: [],
    };
  }
  const value = numerator / denominator;
  const units = strata.map((stratum) => ({
    name: stratum.name,
    populationUnits: stratum.populationUnits,
    contributions: stratum.numerators.map(
      (amount, i) => (stratum.unitWeight * (amount - value * stratum.denominators[i]!)) / denominator,
    ),
  }));
  const { standardError, reason } = spreadOf(units);
  return {
    value,
    standardError,
    degreesOfFreedom: standardError === null ? null : designDegreesOfFreedom(units),
    reason,
    denominator,
    contributions: units.map((unit) => unit.contributions),
  };
}

function weightedSum(
  strata: readonly RatioStratum[],
  amounts: (stratum: RatioStratum) => readonly number[],
): number {
  return sum(strata.map((stratum) => stratum.unitWeight * sum(amounts(stratum))));
}

/**
 * Weighted total of the numerators alone, with its standard error: the estimated amount in the whole area
 * where the area that holds it is itself only estimated. Same assumptions and nulls as the ratio.
 */
export function weightedTotal(strata: readonly RatioStratum[]): MeanEstimate {
  if (strata.length === 0) throw new Error('weightedTotal requires at least one stratum');
  const units = strata.map((stratum) => ({
    name: stratum.name,
    populationUnits: stratum.populationUnits,
    contributions: stratum.numerators.map((amount) => stratum.unitWeight * amount),
  }));
  const { standardError, reason } = spreadOf(units);
  return {
    value: weightedSum(strata, (stratum) => stratum.numerators),
    standardError,
    degreesOfFreedom: standardError === null ? null : designDegreesOfFreedom(units),
    reason,
  };
}
