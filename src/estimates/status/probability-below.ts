/** The chance that a density lies below a reference, and the lower limit of a density, by the design. */

import { normalCdf, normalQuantile, tCdf, tQuantile } from '../../maths/distributions.ts';

/** A density with its relative spread. */
export interface SpreadDensity {
  readonly densityPerHa: number;
  /** Coefficient of variation: standard error over density. */
  readonly cv: number;
  /** Null takes the normal distribution: degrees of freedom without end. */
  readonly degreesOfFreedom: number | null;
}

export interface ReferenceLevel {
  readonly densityPerHa: number;
  /** Coefficient of variation of the reference itself; null when it is taken as exact. */
  readonly cv: number | null;
}

/**
 * Confidence that the true density lies below a reference, between 0 and 1.
 *
 * Answers "how sure can we be that there are fewer than this?". The logarithm of the estimate is taken as normal (or t)
 * around the truth: P = F((ln reference - ln density) / s), s^2 = ln(1 + cv^2) + ln(1 + cv_reference^2). It is a
 * confidence statement of the sampling design and no belief: the clumped-count belief has its own share below.
 *
 * Null where the density is zero (nothing seen is a bound, see METHODS c5) or has no spread.
 * Source: METHODS k; vector k1 (R pnorm, pt).
 *
 *     probabilityBelow({ densityPerHa: 50, cv: 0.3, degreesOfFreedom: null }, { densityPerHa: 50, cv: null }) // 0.5
 */
export function probabilityBelow(estimate: SpreadDensity, reference: ReferenceLevel): number | null {
  const { densityPerHa, cv, degreesOfFreedom } = estimate;
  if (!(densityPerHa > 0) || !(cv > 0) || (degreesOfFreedom !== null && degreesOfFreedom <= 0)) return null;
  const spread = Math.sqrt(Math.log1p(cv ** 2) + Math.log1p((reference.cv ?? 0) ** 2));
  const distance = (Math.log(reference.densityPerHa) - Math.log(densityPerHa)) / spread;
  return degreesOfFreedom === null ? normalCdf(distance) : tCdf(distance, degreesOfFreedom);
}

/**
 * Lower one-sided log-normal limit of a density, in animals per hectare: the true density is at least this with the
 * given confidence. D / exp(q sqrt(ln(1 + cv^2))), q one-sided. Null as for `probabilityBelow`.
 * Source: METHODS k; vectors k1 and k2.
 */
export function lognormalLowerLimitPerHa(estimate: SpreadDensity, confidence: number): number | null {
  const { densityPerHa, cv, degreesOfFreedom } = estimate;
  if (!(densityPerHa > 0) || !(cv > 0) || (degreesOfFreedom !== null && degreesOfFreedom <= 0)) return null;
  const q = degreesOfFreedom === null ? normalQuantile(confidence) : tQuantile(confidence, degreesOfFreedom);
  return densityPerHa / Math.exp(q * Math.sqrt(Math.log1p(cv ** 2)));
}
