/** A length-weight pair from animals that were measured and weighed. */

import { mean, sum } from '../../maths/variance.ts';
import type { LengthWeight } from '../../survey/value-words.ts';
import type { Weight } from '../../survey/words.ts';

/** What one animal measured and weighed says; all of one state. */
export type Weighing = Pick<Weight, 'lengthMm' | 'weightG'>;

export interface FittedPair {
  /** In millimetres and grams, with the spread about the line and the covariance of its two numbers. */
  readonly pair: LengthWeight;
  readonly lnA: number;
  /** exp(s^2 / 2), for normal residuals. */
  readonly correction: number;
  /** Mean of exp(residual): the correction that assumes no shape (Duan 1983, from memory). */
  readonly smearing: number;
  /** Slope of the geometric mean line, sd(ln W) / sd(ln L): beside the fit, for comparison with papers that give it. */
  readonly geometricMeanSlope: number;
  /** Share of the variance of ln W that the line explains. */
  readonly rSquared: number;
}

/** Fewest weighed animals, and fewest different lengths, from which a line is made (our own choice). */
export const fewestWeighed = 5;

/**
 * ln W = ln a + b ln L by least squares, from animals of one state (live, gutted, salted or dried).
 *
 * Least squares, because weights are wanted for given lengths. Assumes that the animals were weighed independently; a
 * few from each of many stations are better than many from one. Null with fewer than five animals or fewer than three
 * different lengths. Source: METHODS e; Ricker 1973 for the other slope (from memory); R lm and vcov.
 */
export function fitLengthWeight(
  weighings: readonly Weighing[],
  weightState: LengthWeight['weightState'],
): FittedPair | null {
  const n = weighings.length;
  if (n < fewestWeighed || new Set(weighings.map((one) => one.lengthMm)).size < 3) return null;
  const x = weighings.map((one) => Math.log(one.lengthMm));
  const y = weighings.map((one) => Math.log(one.weightG));
  const meanX = mean(x);
  const meanY = mean(y);
  const xx = sum(x.map((value) => (value - meanX) ** 2));
  const yy = sum(y.map((value) => (value - meanY) ** 2));
  const b = sum(x.map((value, i) => (value - meanX) * (y[i]! - meanY))) / xx;
  if (!(b > 0)) return null;
  const lnA = meanY - b * meanX;
  const residuals = y.map((value, i) => value - lnA - b * x[i]!);
  const variance = sum(residuals.map((value) => value ** 2)) / (n - 2);
  return {
    pair: {
      what: 'length-weight',
      a: Math.exp(lnA),
      b,
      lengthUnit: 'mm',
      weightUnit: 'g',
      weightState,
      lengthMeasure: null,
      lengthMinMm: Math.min(...weighings.map((one) => one.lengthMm)),
      lengthMaxMm: Math.max(...weighings.map((one) => one.lengthMm)),
      residualSdLn: Math.sqrt(variance),
      covariance: {
        lnAVariance: variance * (1 / n + meanX ** 2 / xx),
        lnABCovariance: (-variance * meanX) / xx,
        bVariance: variance / xx,
      },
      animals: n,
    },
    lnA,
    correction: Math.exp(variance / 2),
    smearing: mean(residuals.map(Math.exp)),
    geometricMeanSlope: Math.sqrt(yy / xx),
    rSquared: yy === 0 ? 1 : 1 - (variance * (n - 2)) / yy,
  };
}
