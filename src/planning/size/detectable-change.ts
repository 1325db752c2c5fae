import { normalQuantile, tQuantile } from '../../maths/distributions.ts';
import { findRoot } from '../../maths/search.ts';
import { noncentralTAbove } from './noncentral-t.ts';
import { type Planned, planned, planProblem, refused, stops } from './plan-problem.ts';
import { numberProblems, wholeProblems } from './typed-numbers.ts';

export interface TwoSurveys {
  /** Stations of the earlier survey and of the planned one, drawn independently. */
  readonly stationsBefore: number;
  readonly stationsAfter: number;
  /** Standard deviation between stations over their mean, alike in both. */
  readonly stationCv: number;
  /** Two-sided risk of a false alarm. */
  readonly significance?: number;
  /** Wanted probability of telling the change. */
  readonly power?: number;
}

export interface DetectableChange {
  /** Smallest difference over the mean, by the t test; above 1 no fall, however complete, would be told. */
  readonly relativeDifference: number;
  /** The same by the normal distribution, always a little too small. */
  readonly normalDifference: number;
  /** Smallest fall as a share (0.5: a halving), from the log ratio; never reaches 1. */
  readonly fall: number;
  /** Smallest rise as a share (1: a doubling), from the log ratio. */
  readonly rise: number;
}

/**
 * Smallest change between two independent surveys that would be told, as shares of the earlier mean.
 *
 * Answers "what is the smallest change this plan can prove?". The difference solves the power of the two-sided t
 * test (noncentral t, the far tail left out as R does); the fall and the rise come from the log ratio,
 * 1 - exp(-(t_a + t_b) cv sqrt(1/n1 + 1/n2)), which suits densities: a fall can never pass 100 %.
 * Assumes random stations and the same CV before and after. Two stations in all leave nothing to tell: refused.
 * Source: R power.t.test; Cohen 1988 (64 a group for 0.5, from memory); log form METHODS f.
 */
export function detectableChange(surveys: TwoSurveys): Planned<DetectableChange> {
  const { stationsBefore, stationsAfter, stationCv, significance = 0.1, power = 0.8 } = surveys;
  const problems = [
    ...wholeProblems('stationsBefore', stationsBefore, { atLeast: 1 }),
    ...wholeProblems('stationsAfter', stationsAfter, { atLeast: 1 }),
    ...numberProblems('stationCv', stationCv, { above: 0 }),
    ...numberProblems('significance', significance, { above: 0, below: 0.5 }),
    ...numberProblems('power', power, { atLeast: 0.5, below: 1 }),
  ];
  if (stops(problems)) return refused(problems);
  const degreesOfFreedom = stationsBefore + stationsAfter - 2;
  if (degreesOfFreedom === 0) return refused([planProblem('plan-change-not-tellable', { stations: 2 })]);
  const error = stationCv * Math.sqrt(1 / stationsBefore + 1 / stationsAfter);
  return planned({
    relativeDifference: error * noncentralityFor({ degreesOfFreedom, significance, power }),
    normalDifference: error * (normalQuantile(1 - significance / 2) + normalQuantile(power)),
    ...detectableOnLog({ error, degreesOfFreedom, significance, power }),
  });
}

/**
 * Smallest fall and rise, as shares, that the log ratio of two means tells; `error` is its standard error. Cheap enough
 * for a curve. See `detectableChange`.
 */
export function detectableOnLog(test: {
  readonly error: number;
  readonly degreesOfFreedom: number;
  readonly significance: number;
  readonly power: number;
}): Pick<DetectableChange, 'fall' | 'rise'> {
  const { error, degreesOfFreedom, significance, power } = test;
  const onLog =
    error * (tQuantile(1 - significance / 2, degreesOfFreedom) + tQuantile(power, degreesOfFreedom));
  return { fall: -Math.expm1(-onLog), rise: Math.expm1(onLog) };
}

/** The difference, in standard errors, that a two-sided t test tells with the wanted power. */
export function noncentralityFor(test: {
  readonly degreesOfFreedom: number;
  readonly significance: number;
  readonly power: number;
}): number {
  const { degreesOfFreedom, significance, power } = test;
  const critical = tQuantile(1 - significance / 2, degreesOfFreedom);
  const short = (noncentrality: number) =>
    noncentralTAbove(critical, { degreesOfFreedom, noncentrality }) - power;
  let high = 4;
  while (short(high) < 0) high *= 2;
  return findRoot(short, { low: 0, high }, 1e-12);
}
