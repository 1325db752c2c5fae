import { twoSidedQuantile } from '../maths/distributions.ts';
import type { Interval } from './shapes.ts';
import type { Spreadable } from './t-interval.ts';

/**
 * Interval value / C to value * C, with C = exp(q sqrt(ln(1 + cv^2))) and q from t (or the normal when the
 * degrees of freedom are null): for densities, which cannot be negative and err upward.
 *
 * Null for a value of zero (nothing seen has its own bound), for an unknown standard error, and when no
 * degrees of freedom are left. Source: Burnham et al. 1987; Buckland et al. 1993 (formula read on a statistics
 * training page).
 */
export function lognormalInterval(estimate: Spreadable, confidence = 0.95): Interval | null {
  const { value, standardError } = estimate;
  const q = twoSidedQuantile(confidence, estimate.degreesOfFreedom);
  if (value === null || value <= 0 || standardError === null || q === null) return null;
  const factor = Math.exp(q * Math.sqrt(Math.log1p((standardError / value) ** 2)));
  return Number.isFinite(factor) ? [value / factor, value * factor] : null;
}
