import { chiSquareQuantile } from '../maths/distributions.ts';

export interface DigitPreference {
  readonly measured: number;
  /** Share of the lengths that end in 0 or 5; two tenths when every digit is as likely as another. */
  readonly shareOfZeroAndFive: number;
  /** Against two tenths, one degree of freedom. */
  readonly chiSquare: number;
  readonly isPreferred: boolean;
}

/**
 * Preference for the last digits 0 and 5 among measured lengths: were they read off the rule, or rounded?
 *
 * `lastDigits` holds how many lengths end in 0, 1, … 9. The null hypothesis is that the last digit is uniform,
 * which holds closely when lengths spread over several tens of units; 0 and 5 then take two tenths. The chi-square
 * sets 0 and 5 against the other eight. A preference is claimed above the 99.9 % quantile of one degree of freedom
 * (10.83) and from a share of 30 % on: thousands of lengths make a harmless 22 % significant.
 *
 * Null under 100 lengths, where fewer than 20 are expected on 0 and 5. False alarms: under 1 in 1000 recorders.
 * Source: Pearson's chi-square (from memory); digit preference as a test of measuring is common practice.
 */
export function digitPreference(lastDigits: readonly number[]): DigitPreference | null {
  const measured = lastDigits.reduce((total, n) => total + n, 0);
  if (measured < leastMeasured) return null;
  const rounded = (lastDigits[0] ?? 0) + (lastDigits[5] ?? 0);
  const expected = 0.2 * measured;
  const difference = rounded - expected;
  const chiSquare = difference ** 2 / expected + difference ** 2 / (measured - expected);
  const shareOfZeroAndFive = rounded / measured;
  const isPreferred = shareOfZeroAndFive >= leastShare && chiSquare > chiSquareQuantile(0.999, 1);
  return { measured, shareOfZeroAndFive, chiSquare, isPreferred };
}

const leastMeasured = 100;
const leastShare = 0.3;
