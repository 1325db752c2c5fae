/** How many stations a wanted precision of one mean needs. */

import { normalQuantile, tQuantile } from '../../maths/distributions.ts';
import { type Planned, planned, refused, stops } from './plan-problem.ts';
import { numberProblems } from './typed-numbers.ts';

export interface MarginGoal {
  /** Standard deviation between stations over their mean; of a stratified survey the pooled one. */
  readonly stationCv: number;
  /** Wanted half-width of the interval as a share of the mean: 0.3 for plus or minus 30 %. */
  readonly margin: number;
  readonly confidence?: number;
  /** Stations that the whole ground could hold; null when not counted. */
  readonly populationStations: number | null;
}

export interface MarginNeed {
  /** (z cv / margin)^2, not rounded. */
  readonly withoutLimit: number;
  /** The same with the finite population correction, not rounded. */
  readonly withPopulation: number;
  /** Smallest whole number with t(n - 1) cv / sqrt(n) within the margin, ground without limit. */
  readonly withT: number;
  /** Smallest whole number with t and with the correction, never above the population: what to plan. */
  readonly stations: number;
}

/**
 * Number of stations for a relative margin of error of the mean.
 *
 * Answers "how many stations for plus or minus 30 %?". The normal formula is always too small for few stations, since
 * the spread is estimated from the same stations: `stations` therefore uses t. Assumes random stations and a mean
 * that is nearly normal; with strongly clumped animals the promise is not kept below some 30 stations.
 * Refuses a CV or margin that is not positive.
 * Source: Cochran 1977, equation 4.4 (from memory); computed with R.
 */
export function stationsForMargin(goal: MarginGoal): Planned<MarginNeed> {
  const { stationCv, margin, confidence = 0.95, populationStations } = goal;
  const problems = [
    ...numberProblems('stationCv', stationCv, { above: 0 }),
    ...numberProblems('margin', margin, { above: 0 }),
    ...numberProblems('confidence', confidence, { above: 0, below: 1 }),
    ...(populationStations === null
      ? []
      : numberProblems('populationStations', populationStations, { atLeast: 1 })),
  ];
  if (stops(problems)) return refused(problems);
  const upper = (1 + confidence) / 2;
  const withoutLimit = ((normalQuantile(upper) * stationCv) / margin) ** 2;
  const share = populationStations === null ? 0 : 1 / populationStations;
  const holds = (n: number, perPopulation: number) =>
    tQuantile(upper, n - 1) * stationCv * Math.sqrt(Math.max(0, 1 / n - perPopulation)) <= margin;
  const most = populationStations === null ? Infinity : Math.floor(populationStations);
  return planned({
    withoutLimit,
    withPopulation: withoutLimit / (1 + withoutLimit * share),
    withT: smallest((n) => holds(n, 0)),
    stations: Math.min(
      most,
      smallest((n) => n >= most || holds(n, share)),
    ),
  });
}

export interface CvNeed {
  /** Not rounded. */
  readonly exact: number;
  readonly stations: number;
}

/**
 * Number of stations at which the standard error of the mean is a wanted share of the mean: (station CV / target)^2.
 *
 * Never fewer than two, since one station shows no spread. Refuses what is not positive.
 * Source: Cochran 1977, section 4.5 (from memory).
 */
export function stationsForCv(goal: {
  readonly stationCv: number;
  readonly targetCv: number;
}): Planned<CvNeed> {
  const problems = [
    ...numberProblems('stationCv', goal.stationCv, { above: 0 }),
    ...numberProblems('targetCv', goal.targetCv, { above: 0 }),
  ];
  if (stops(problems)) return refused(problems);
  return planned(needOf((goal.stationCv / goal.targetCv) ** 2));
}

/**
 * The same from what is known of clumped counts: (1 / mean + 1 / k) / target^2, with the mean count per station and
 * the negative binomial clumping k (null: scattered, Poisson). It needs no pilot of the same size of station.
 * Source: Elliott 1977 (from memory); computed with R.
 */
export function stationsForClumpedCounts(goal: {
  readonly meanPerStation: number;
  readonly clumpingK: number | null;
  readonly targetCv: number;
}): Planned<CvNeed> {
  const problems = [
    ...numberProblems('meanPerStation', goal.meanPerStation, { above: 0 }),
    ...(goal.clumpingK === null ? [] : numberProblems('clumpingK', goal.clumpingK, { above: 0 })),
    ...numberProblems('targetCv', goal.targetCv, { above: 0 }),
  ];
  if (stops(problems)) return refused(problems);
  return planned(needOf((clumpedStationCv(goal) / goal.targetCv) ** 2));
}

/** CV between stations of clumped counts: sqrt(1 / mean + 1 / k); k null is Poisson. */
export function clumpedStationCv(counts: {
  readonly meanPerStation: number;
  readonly clumpingK: number | null;
}): number {
  return Math.sqrt(1 / counts.meanPerStation + (counts.clumpingK === null ? 0 : 1 / counts.clumpingK));
}

function needOf(exact: number): CvNeed {
  // A need that is whole but for rounding is whole: (0.3 / 0.1)^2 is nine stations.
  const whole = Math.round(exact);
  const isWhole = Math.abs(exact - whole) < 1e-9 * exact;
  return { exact, stations: Math.max(2, isWhole ? whole : Math.ceil(exact)) };
}

/** The smallest whole number from 2 on that fulfils a condition which, once fulfilled, stays so. */
export function smallest(isEnough: (n: number) => boolean): number {
  let high = 2;
  while (!isEnough(high)) {
    if (high > 1e9) throw new Error('smallest requires a condition that can be fulfilled');
    high *= 2;
  }
  let low = high === 2 ? 2 : high / 2 + 1;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(middle)) high = middle;
    else low = middle + 1;
  }
  return high;
}
