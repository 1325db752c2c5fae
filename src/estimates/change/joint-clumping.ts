/** Two surveys of one stratum with a clumping in common: what both say about both densities at once. */

import { logObservedDensity } from '../clumped/clumped-posterior.ts';
import type { PriorGrid } from '../clumped/clumped-priors.ts';
import { logSumExp } from '../clumped/log-sum.ts';
import { LATTICE_STEP_LOG, readWhereTheMassIs } from '../clumped/mass-lattice.ts';
import { negativeBinomialLikelihood } from '../clumped/negative-binomial.ts';
import { poissonLikelihood } from '../clumped/poisson.ts';
import type { PosteriorTools } from '../clumped/posterior-tools.ts';
import { requireStationCounts, type StationCount } from '../clumped/station-count.ts';

/** Log density is believed flat over this far to either side of the observed mean: a factor of 403. */
const REACH_LOG = 6;

/**
 * One survey's log likelihood at lattice points of log density, one number for each state of clumping: every k of the
 * negative binomial, every sigma of the log-normal Poisson, and not clumped at all, in this order.
 */
export interface StateLikelihood {
  readonly states: number;
  at(index: number): Float64Array;
}

/** The states of clumping with the logarithm of the belief in each before the counts. */
export function logPriorOfStates({ ks, sigmas, priors }: PosteriorTools): Float64Array {
  const { nb, pln, poisson } = priors.models;
  const shifted = (grid: PriorGrid, share: number) => grid.logWeights.map((w) => w + Math.log(share));
  return Float64Array.from([...shifted(ks, nb), ...shifted(sigmas, pln), Math.log(poisson)]);
}

/** Likelihood of the counts of one survey and stratum, whether or not an animal was seen; remembered by lattice point. */
export function stateLikelihood(counts: readonly StationCount[], tools: PosteriorTools): StateLikelihood {
  requireStationCounts(counts);
  const { ks, sigmas, rows } = tools;
  const known = new Map<number, Float64Array>();
  const negativeBinomial = negativeBinomialLikelihood(counts, ks.values);
  const lognormalPoisson = rows.likelihood(counts);
  const poisson = poissonLikelihood(counts);
  const overK = new Float64Array(ks.values.length);
  const overSigma = new Float64Array(sigmas.values.length);
  const states = overK.length + overSigma.length + 1;
  return {
    states,
    at: (index) => {
      const before = known.get(index);
      if (before !== undefined) return before;
      negativeBinomial(index * LATTICE_STEP_LOG, overK);
      lognormalPoisson(index, overSigma);
      const all = new Float64Array(states);
      all.set(overK);
      all.set(overSigma, overK.length);
      all[states - 1] = poisson(index * LATTICE_STEP_LOG);
      known.set(index, all);
      return all;
    },
  };
}

/** One survey read over the lattice: where its mass is and how finely it has to be read. */
export interface SurveyReading {
  readonly likelihood: StateLikelihood;
  readonly first: number;
  readonly last: number;
  readonly stride: number;
}

/** Where the counts of one survey, clumping summed out, have their mass. Needs at least one animal. */
export function readSurvey(counts: readonly StationCount[], tools: PosteriorTools): SurveyReading {
  const likelihood = stateLikelihood(counts, tools);
  const prior = logPriorOfStates(tools);
  const centre = logObservedDensity(counts);
  const reading = readWhereTheMassIs(
    (index) => logSumExp(likelihood.at(index).map((height, s) => height + prior[s]!)),
    (centre - REACH_LOG) / LATTICE_STEP_LOG,
    (centre + REACH_LOG) / LATTICE_STEP_LOG,
  );
  const { first, stride, logHeights } = reading;
  const lowest = Math.ceil((centre - REACH_LOG) / LATTICE_STEP_LOG / stride) * stride;
  const highest = Math.floor((centre + REACH_LOG) / LATTICE_STEP_LOG / stride) * stride;
  return {
    likelihood,
    first: Math.max(first, lowest),
    last: Math.min(first + (logHeights.length - 1) * stride, highest),
    stride,
  };
}

/** Heights of one survey for every state on one stride: plain numbers, the greatest of each state 1, its logarithm apart. */
export interface StateHeights {
  readonly first: number;
  readonly stride: number;
  readonly points: number;
  /** state by point. */
  readonly heights: readonly Float64Array[];
  readonly logGreatest: Float64Array;
}

export function stateHeights(reading: SurveyReading, stride: number): StateHeights {
  const first = Math.ceil(reading.first / stride) * stride;
  const points = Math.max(1, Math.floor((reading.last - first) / stride) + 1);
  const { states } = reading.likelihood;
  const heights = Array.from({ length: states }, () => new Float64Array(points));
  for (let i = 0; i < points; i++) {
    const row = reading.likelihood.at(first + i * stride);
    for (let s = 0; s < states; s++) heights[s]![i] = row[s]!;
  }
  const logGreatest = new Float64Array(states);
  heights.forEach((own, s) => {
    const greatest = own.reduce((a, b) => Math.max(a, b), -Infinity);
    logGreatest[s] = greatest;
    for (let i = 0; i < points; i++) own[i] = Math.exp(own[i]! - greatest);
  });
  return { first, stride, points, heights, logGreatest };
}
