import { twoSidedQuantile } from '../maths/distributions.ts';
import type { Interval, MeanEstimate } from './shapes.ts';

/** What an interval needs to know of an estimate. Null degrees of freedom with a known error mean the normal. */
export type Spreadable = Pick<MeanEstimate, 'value' | 'standardError' | 'degreesOfFreedom'>;

/**
 * Interval value +/- t times standard error, in the unit of the value.
 *
 * Symmetric, so with few stations and clumped animals it reaches below zero and misses upward: it is kept as
 * R gives it, never cut at zero. Null when value or standard error is unknown or no degrees of freedom are left.
 * Source: Cochran 1977, section 2.8 (from memory).
 */
export function tInterval(estimate: Spreadable, confidence = 0.95): Interval | null {
  const { value, standardError } = estimate;
  const q = twoSidedQuantile(confidence, estimate.degreesOfFreedom);
  if (value === null || standardError === null || q === null) return null;
  return [value - q * standardError, value + q * standardError];
}
