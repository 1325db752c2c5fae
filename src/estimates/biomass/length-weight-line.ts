/** A length-weight pair brought to one pair of units, and what one animal weighs by it. */

import type { LengthWeight } from '../../survey/value-words.ts';

/** Variances of ln a and of b, and their covariance. */
export type PairCovariance = NonNullable<LengthWeight['covariance']>;

/** ln W = lnA + b ln L, with L in millimetres and W in grams. */
export interface LengthWeightLine {
  readonly lnA: number;
  readonly b: number;
  /** What the curve is multiplied by to give mean weights; 1 where the spread about it is not known. */
  readonly correction: number;
  readonly covariance: PairCovariance | null;
}

/**
 * A published or own pair in millimetres and grams.
 *
 * From centimetres a becomes a * 10^(-b), so that ln a moves by -b ln 10 and its variance with it; from kilograms it
 * becomes 1000 times itself. A curve through logarithms gives the middle weight, which is below the mean one: where
 * the residual standard deviation s of ln W is told, weights are multiplied by exp(s^2 / 2); where it is not, nothing is
 * corrected, because most published pairs leave it out. Assumes normal residuals of ln W.
 * Source: METHODS e; Baskerville 1972, Sprugel 1983 (from memory).
 */
export function lengthWeightLine(pair: LengthWeight): LengthWeightLine {
  const shift = pair.lengthUnit === 'cm' ? Math.LN10 : 0;
  const grams = pair.weightUnit === 'kg' ? Math.log(1000) : 0;
  return {
    lnA: Math.log(pair.a) - shift * pair.b + grams,
    b: pair.b,
    correction: pair.residualSdLn === null ? 1 : Math.exp(pair.residualSdLn ** 2 / 2),
    covariance: pair.covariance === null ? null : shifted(pair.covariance, shift),
  };
}

function shifted({ lnAVariance, lnABCovariance, bVariance }: PairCovariance, shift: number): PairCovariance {
  return {
    lnAVariance: lnAVariance - 2 * shift * lnABCovariance + shift ** 2 * bVariance,
    lnABCovariance: lnABCovariance - shift * bVariance,
    bVariance,
  };
}

/** Mean weight in grams of animals of one length in millimetres. Never to be asked for the mean length of many. */
export function weightOfLengthG(line: LengthWeightLine, lengthMm: number): number {
  return Math.exp(line.lnA + line.b * Math.log(lengthMm)) * line.correction;
}
