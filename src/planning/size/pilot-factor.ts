import { chiSquareQuantile } from '../../maths/distributions.ts';
import { type Planned, planned, planProblem, refused, stops } from './plan-problem.ts';
import { numberProblems } from './typed-numbers.ts';

/**
 * Factor, no unit, by which to raise the standard deviation (or CV) that a pilot of few stations showed: how much
 * greater may the true one be?
 *
 * sqrt((n - 1) / chi-square quantile(1 - assurance, n - 1)): with this factor the plan is large enough in a share
 * `assurance` of pilots, 1.29 for ten stations and 0.8. Assumes normal values; clumped counts are worse, so it is the
 * least that prudence asks. A pilot of one station showed no spread: refused.
 * Source: Browne 1995 (from memory); computed with R qchisq.
 */
export function pilotFactor(pilot: {
  readonly stations: number;
  readonly assurance?: number;
}): Planned<number> {
  const { stations, assurance = 0.8 } = pilot;
  const problems = numberProblems('assurance', assurance, { atLeast: 0.5, below: 1 });
  // Stations over several strata leave stations minus strata degrees of freedom: a fraction is allowed.
  if (!(stations >= 2)) {
    return refused([...problems, planProblem('plan-pilot-too-small', { stations, atLeast: 2 })]);
  }
  if (stops(problems)) return refused(problems);
  const degreesOfFreedom = stations - 1;
  return planned(Math.sqrt(degreesOfFreedom / chiSquareQuantile(1 - assurance, degreesOfFreedom)));
}
