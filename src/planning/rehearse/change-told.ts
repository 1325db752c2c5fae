/** Would the report say that the density fell or rose against an earlier estimate? */

import { type Belief, beliefBelow } from '../../estimates/clumped/belief.ts';
import type { ClumpedIntervals } from '../../estimates/clumped/clumped-intervals.ts';
import { type CombinedBelief, combineStrata } from '../../estimates/clumped/combine-strata.ts';
import { clumpedUpperBoundPerHa, poissonUpperBoundPerHa } from '../../estimates/zero-count-bound.ts';
import { normalCdf, twoSidedQuantile } from '../../maths/distributions.ts';
import type { EarlierEstimate, RehearsalStratum } from './rehearsal-request.ts';
import type { SimulatedSurvey } from './simulated-survey.ts';

export type Told = 'fall' | 'rise' | 'undecided';

/** Standard deviation of the logarithm of an estimate with this CV. */
export function logErrorOf(cv: number): number {
  return Math.sqrt(Math.log1p(cv ** 2));
}

/**
 * By the log-normal interval of the ratio: ln(now / earlier) within t standard errors, sqrt(CV1^2 + CV2^2), with
 * Satterthwaite's degrees of freedom. Undecided where the survey gives no standard error.
 * Source: METHODS f (delta method; Welch 1947 for the degrees of freedom, from memory).
 */
export function toldByLogRatio(
  { estimate }: Pick<SimulatedSurvey, 'estimate'>,
  earlier: EarlierEstimate,
  confidence: number,
): Told {
  const { value, standardError, degreesOfFreedom } = estimate;
  if (value === null || standardError === null || value === 0) return 'undecided';
  const now = (standardError / value) ** 2;
  const before = earlier.cv ** 2;
  if (now + before === 0) return 'undecided';
  const part = (square: number, df: number | null) => (df === null ? 0 : square ** 2 / df);
  const inverse =
    (part(now, degreesOfFreedom) + part(before, earlier.degreesOfFreedom)) / (now + before) ** 2;
  const q = twoSidedQuantile(confidence, inverse === 0 ? null : 1 / inverse);
  if (q === null) return 'undecided';
  return toldBy(Math.log(value / earlier.densityPerHa), q * Math.sqrt(now + before));
}

function toldBy(logRatio: number, halfWidth: number): Told {
  if (logRatio + halfWidth < 0) return 'fall';
  return logRatio - halfWidth > 0 ? 'rise' : 'undecided';
}

/** The belief about the density of all strata together after the clumped-count model; null without any animal. */
export function beliefOf(
  survey: SimulatedSurvey,
  strata: readonly RehearsalStratum[],
  settings: { readonly intervals: ClumpedIntervals; readonly confidence: number },
): CombinedBelief | null {
  if (survey.animals === 0) return null;
  const { intervals, confidence } = settings;
  const parts = survey.counts.map((counts, h) => ({
    weight: strata[h]!.areaHa,
    posterior: counts.some((count) => count.animals > 0)
      ? intervals.posterior(counts)
      : intervals.zeroStratum(counts.map((count) => count.areaM2)),
  }));
  return combineStrata(parts, confidence);
}

/**
 * By the belief about the density now and a log-normal one about the earlier: told when the belief that it fell (or
 * rose) is above the upper end of the two-sided confidence, so that the interval of the ratio leaves out 1.
 */
export function toldByBelief(belief: Belief, earlier: EarlierEstimate, confidence: number): Told {
  const below = beliefInFall(belief, earlier);
  const tail = (1 - confidence) / 2;
  if (below > 1 - tail) return 'fall';
  return below < tail ? 'rise' : 'undecided';
}

function beliefInFall(belief: Belief, earlier: EarlierEstimate): number {
  const middle = Math.log(earlier.densityPerHa);
  const logError = logErrorOf(earlier.cv);
  if (logError === 0) return beliefBelow(belief, middle);
  const { lowestLogDensityPerHa, stepLog, cumulative } = belief;
  let total = 0;
  for (let i = 1; i < cumulative.length; i++) {
    const at = lowestLogDensityPerHa + (i - 0.5) * stepLog;
    total += (cumulative[i]! - cumulative[i - 1]!) * normalCdf((middle - at) / logError);
  }
  return total;
}

/**
 * No animal at all: a fall is told when the bound below which the density must lie, for animals clumped as expected, is
 * under the lower end of the earlier interval. Both at the two-sided confidence: rather too careful.
 */
export function toldByNoneSeen(
  survey: SimulatedSurvey,
  earlier: EarlierEstimate,
  settings: { readonly clumpingK: number | null; readonly confidence: number },
): Told {
  const areasHa = survey.counts.flat().map((count) => count.areaM2 / 10_000);
  const upper = (1 + settings.confidence) / 2;
  const bound =
    settings.clumpingK === null
      ? poissonUpperBoundPerHa(
          areasHa.reduce((a, b) => a + b, 0),
          upper,
        )
      : clumpedUpperBoundPerHa(areasHa, settings.clumpingK, upper);
  const q = twoSidedQuantile(settings.confidence, earlier.degreesOfFreedom);
  if (bound === null || q === null) return 'undecided';
  return bound < earlier.densityPerHa * Math.exp(-q * logErrorOf(earlier.cv)) ? 'fall' : 'undecided';
}
