import { tQuantile } from '../../maths/distributions.ts';
import { mean, sampleVariance } from '../../maths/variance.ts';
import type { Interval } from '../shapes.ts';

export interface LimitsOfAgreement {
  readonly pairs: number;
  /** Mean difference, in the unit of the readings. */
  readonly bias: number;
  readonly standardDeviation: number;
  /** Within them lie about 95 % of the differences, if these are roughly normal. */
  readonly limits: Interval;
  /** 95 % t interval of the bias. */
  readonly biasInterval: Interval;
  /** Standard error of each limit. */
  readonly limitStandardError: number;
}

/**
 * Limits of agreement of paired readings (Bland and Altman), in the unit of the readings.
 *
 * Question: how far may one reading lie from the other? Mean difference ± 1.96 standard deviations of the
 * differences. Assumes independent pairs and differences that do not grow with the size of the reading; counts
 * grow, so they are read on a log scale (see `ratio-of-counts.ts`).
 *
 * Null under 3 pairs. Source: Bland and Altman 1986, Lancet i:307 (data read; formula of the standard error of a
 * limit from memory).
 */
export function limitsOfAgreement(differences: readonly number[]): LimitsOfAgreement | null {
  const pairs = differences.length;
  if (pairs < leastPairs) return null;
  const bias = mean(differences);
  const standardDeviation = Math.sqrt(sampleVariance(differences) ?? 0);
  const reach = 1.96 * standardDeviation;
  const sure = (tQuantile(0.975, pairs - 1) * standardDeviation) / Math.sqrt(pairs);
  return {
    pairs,
    bias,
    standardDeviation,
    limits: [bias - reach, bias + reach],
    biasInterval: [bias - sure, bias + sure],
    limitStandardError: standardDeviation * Math.sqrt(1 / pairs + 1.96 ** 2 / (2 * (pairs - 1))),
  };
}

/** Two pairs always give a spread, and it says nothing. */
export const leastPairs = 3;
