import type { Interval } from '../shapes.ts';
import { type Belief, beliefFromLogHeights, equalTailedInterval, quantilePerHa } from './belief.ts';
import type { ClumpedPriors, ModelShares } from './clumped-priors.ts';
import { logSumExp } from './log-sum.ts';
import { interpolated, LATTICE_STEP_LOG, type LatticeReading, readWhereTheMassIs } from './mass-lattice.ts';
import { negativeBinomialLikelihood } from './negative-binomial.ts';
import { poissonLikelihood } from './poisson.ts';
import type { PosteriorTools } from './posterior-tools.ts';
import { requireStationCounts, SQUARE_METRES_PER_HA, type StationCount } from './station-count.ts';

/** Belief about the density of one stratum after its counts, and how it came about. */
export interface ClumpedPosterior {
  /** False for a stratum without animals, whose belief rests on another prior. */
  readonly animalsSeen: boolean;
  readonly belief: Belief;
  /** Belief in each model after the counts. */
  readonly modelWeights: ModelShares;
  readonly priors: ClumpedPriors;
  readonly quantile: (p: number) => number;
  readonly interval: (confidence: number) => Interval;
}

/** Log density is believed flat over this far to either side of the observed mean: a factor of 403. */
const REACH_LOG = 6;
const FINER = 4;
const FLOOR_LOG = 60;

interface ModelHeights {
  readonly nb: number;
  readonly pln: number;
  readonly poisson: number;
  readonly all: number;
}

/** See `ClumpedIntervals.posterior`. */
export function clumpedPosterior(counts: readonly StationCount[], tools: PosteriorTools): ClumpedPosterior {
  requireStationCounts(counts);
  const centre = logObservedDensity(counts);
  const heightsAt = modelHeights(counts, tools);
  const reading = readWhereTheMassIs(
    (index) => heightsAt(index).all,
    (centre - REACH_LOG) / LATTICE_STEP_LOG,
    (centre + REACH_LOG) / LATTICE_STEP_LOG,
  );
  const belief = beliefFromReading(reading, centre);
  return {
    animalsSeen: true,
    belief,
    modelWeights: modelWeights(reading, heightsAt),
    priors: tools.priors,
    quantile: (p) => quantilePerHa(belief, p),
    interval: (confidence) => equalTailedInterval(belief, confidence),
  };
}

/** Logarithm of all animals over all searched area, per hectare: the middle of the flat range. */
export function logObservedDensity(counts: readonly StationCount[]): number {
  const animals = counts.reduce((sum, count) => sum + count.animals, 0);
  const areaM2 = counts.reduce((sum, count) => sum + count.areaM2, 0);
  if (animals === 0) throw new Error('clumped posterior requires at least one animal');
  return Math.log((animals / areaM2) * SQUARE_METRES_PER_HA);
}

/** Belief in each model at a lattice point times its likelihood, clumping summed out; remembered for this data set. */
function modelHeights(
  counts: readonly StationCount[],
  tools: PosteriorTools,
): (index: number) => ModelHeights {
  const { ks, sigmas, rows } = tools;
  const { models } = tools.priors;
  const known = new Map<number, ModelHeights>();
  const negativeBinomial = negativeBinomialLikelihood(counts, ks.values);
  const lognormalPoisson = rows.likelihood(counts);
  const poisson = poissonLikelihood(counts);
  const overK = new Float64Array(ks.values.length);
  const overSigma = new Float64Array(sigmas.values.length);
  return (index) => {
    const before = known.get(index);
    if (before !== undefined) return before;
    negativeBinomial(index * LATTICE_STEP_LOG, overK);
    lognormalPoisson(index, overSigma);
    for (let j = 0; j < overK.length; j++) overK[j] = overK[j]! + ks.logWeights[j]!;
    for (let j = 0; j < overSigma.length; j++) overSigma[j] = overSigma[j]! + sigmas.logWeights[j]!;
    const nb = Math.log(models.nb) + logSumExp(overK);
    const pln = Math.log(models.pln) + logSumExp(overSigma);
    const unclumped = Math.log(models.poisson) + poisson(index * LATTICE_STEP_LOG);
    const heights = { nb, pln, poisson: unclumped, all: logSumExp([nb, pln, unclumped]) };
    known.set(index, heights);
    return heights;
  };
}

/** A finer grid that ends exactly where the flat range ends, so that the units of the areas cannot matter. */
function beliefFromReading(reading: LatticeReading, centre: number): Belief {
  const { first, stride, logHeights } = reading;
  const last = first + (logHeights.length - 1) * stride;
  const low = Math.max(first * LATTICE_STEP_LOG, centre - REACH_LOG);
  const high = Math.min(last * LATTICE_STEP_LOG, centre + REACH_LOG);
  const cells = Math.ceil(((high - low) / (stride * LATTICE_STEP_LOG)) * FINER);
  const step = (high - low) / cells;
  const floor = logHeights.reduce((a, b) => Math.max(a, b), -Infinity) - FLOOR_LOG;
  const held = { ...reading, logHeights: logHeights.map((height) => Math.max(height, floor)) };
  const fine = new Float64Array(cells + 1).map((_, i) => interpolated(held, low + i * step));
  return beliefFromLogHeights(low, step, fine);
}

function modelWeights(reading: LatticeReading, heightsAt: (index: number) => ModelHeights): ModelShares {
  const heights = Array.from(reading.logHeights, (_, i) => heightsAt(reading.first + i * reading.stride));
  const all = logSumExp(heights.map((height) => height.all));
  const share = (model: keyof ModelShares) =>
    Math.exp(logSumExp(heights.map((height) => height[model])) - all);
  return { nb: share('nb'), pln: share('pln'), poisson: share('poisson') };
}
