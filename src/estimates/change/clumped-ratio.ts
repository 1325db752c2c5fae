import { normalCdf, normalQuantile } from '../../maths/distributions.ts';
import type { SeededRandom } from '../../maths/random.ts';
import { type Belief, quantilePerHa } from '../clumped/belief.ts';
import type { ClumpedIntervals } from '../clumped/clumped-intervals.ts';
import { LATTICE_STEP_LOG } from '../clumped/mass-lattice.ts';
import type { StationCount } from '../clumped/station-count.ts';
import type { Interval } from '../shapes.ts';
import { logPriorOfStates, readSurvey, stateHeights } from './joint-clumping.ts';

/** The counts of one stratum in two surveys. */
export interface CountsOfTwo {
  readonly weight: number;
  readonly from: readonly StationCount[];
  readonly to: readonly StationCount[];
  /** How alike the errors of the two densities are, from the places worked in both; 0 for stations drawn anew. */
  readonly correlation: number;
}

/** What is believed of the ratio of two densities, later over earlier, as equally likely draws in order. */
export interface RatioBelief {
  readonly sortedRatios: Float64Array;
  quantile(p: number): number;
  interval(confidence: number): Interval;
  /** Belief that the ratio lies below. */
  below(ratio: number): number;
}

/** As for one survey (`combine-strata.ts`): what keeps the skewness of single strata from adding up in the sum. */
const TILT = 0.4;

/**
 * Belief about the ratio of two area-weighted densities from clumped counts.
 *
 * The same animals on the same ground, counted in the same way, are taken to be as clumped in both surveys: in each
 * stratum every state of clumping (k of the negative binomial, sigma of the log-normal Poisson, or none) is weighed by
 * how well it foretold the counts of both, and within a state the two densities are independent, or tied by a normal
 * copula where places were worked twice. So the clumping has to be learnt once and not twice; apart, the two
 * surveys hardly ever tell a halving. A stratum without animals in one of the surveys has the belief for empty strata there.
 *
 * Assumes random stations, full detection and the same clumping. Coverage: docs/methods/change.md.
 */
export function clumpedRatio(
  strata: readonly CountsOfTwo[],
  intervals: ClumpedIntervals,
  options: { readonly random: SeededRandom; readonly draws: number },
): RatioBelief {
  const { random, draws } = options;
  const total = strata.reduce((sum, stratum) => sum + stratum.weight, 0);
  const tilt = -TILT * (1 - strata.reduce((sum, stratum) => sum + (stratum.weight / total) ** 2, 0));
  const from = new Float64Array(draws);
  const to = new Float64Array(draws);
  for (const stratum of strata) {
    const draw = stratumSampler(stratum, intervals, tilt);
    for (let i = 0; i < draws; i++) {
      const [before, after] = draw(random);
      from[i] = from[i]! + stratum.weight * before;
      to[i] = to[i]! + stratum.weight * after;
    }
  }
  return beliefOfDraws(to.map((value, i) => value / from[i]!).sort());
}

export function beliefOfDraws(sortedRatios: Float64Array): RatioBelief {
  const quantile = (p: number) => {
    const at = p * (sortedRatios.length - 1);
    const low = Math.floor(at);
    const high = Math.min(sortedRatios.length - 1, low + 1);
    return sortedRatios[low]! + (at - low) * (sortedRatios[high]! - sortedRatios[low]!);
  };
  return {
    sortedRatios,
    quantile,
    interval: (confidence) => [quantile((1 - confidence) / 2), quantile((1 + confidence) / 2)],
    below: (ratio) => countBelow(sortedRatios, ratio) / sortedRatios.length,
  };
}

function countBelow(sorted: Float64Array, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

type PairSampler = (random: SeededRandom) => readonly [before: number, after: number];

function stratumSampler(stratum: CountsOfTwo, intervals: ClumpedIntervals, tilt: number): PairSampler {
  const { from, to } = stratum;
  const isSeen = (counts: readonly StationCount[]) => counts.some((count) => count.animals > 0);
  if (isSeen(from) && isSeen(to)) return jointSampler(stratum, intervals, tilt);
  const single = (counts: readonly StationCount[]) =>
    beliefSampler(
      isSeen(counts)
        ? intervals.posterior(counts).belief
        : intervals.zeroStratum(counts.map((count) => count.areaM2)).belief,
    );
  const [before, after] = [single(from), single(to)];
  return (random) => [before(random.uniform()), after(random.uniform())];
}

const TABLE = 1024;

/** Draws from a belief through a table of its quantiles. */
function beliefSampler(belief: Belief): (uniform: number) => number {
  const logs = Float64Array.from({ length: TABLE + 1 }, (_, i) =>
    Math.log(quantilePerHa(belief, Math.min(1 - 1e-5, Math.max(1e-5, i / TABLE)))),
  );
  return (uniform) => {
    const at = uniform * TABLE;
    const i = Math.min(TABLE - 1, Math.floor(at));
    return Math.exp(logs[i]! + (at - i) * (logs[i + 1]! - logs[i]!));
  };
}

/** States with less of the belief than this cannot move a digit. */
const NEGLIGIBLE = 1e-6;

function jointSampler(stratum: CountsOfTwo, intervals: ClumpedIntervals, tilt: number): PairSampler {
  const tools = intervals.tools(Math.max(stratum.from.length, stratum.to.length));
  const prior = logPriorOfStates(tools);
  const surveys = [stratum.from, stratum.to].map((counts) => {
    const reading = readSurvey(counts, tools);
    return stateHeights(reading, reading.stride);
  });
  const tables = surveys.map((survey) =>
    survey.heights.map((heights) => cumulated(heights, tilt * survey.stride * LATTICE_STEP_LOG)),
  );
  const logWeights = prior.map(
    (weight, s) =>
      weight +
      surveys[0]!.logGreatest[s]! +
      surveys[1]!.logGreatest[s]! +
      Math.log(tables[0]![s]!.total * surveys[0]!.stride) +
      Math.log(tables[1]![s]!.total * surveys[1]!.stride),
  );
  const greatest = logWeights.reduce((a, b) => Math.max(a, b), -Infinity);
  const weights = logWeights.map((weight) => Math.exp(weight - greatest));
  const pickState = picker(weights.map((weight) => (weight < NEGLIGIBLE ? 0 : weight)));
  const densityOf = (which: 0 | 1, state: number, uniform: number) => {
    const { first, stride } = surveys[which]!;
    return Math.exp((first + stride * tables[which]![state]!.at(uniform)) * LATTICE_STEP_LOG);
  };
  const tied = tiedUniforms(stratum.correlation);
  return (random) => {
    const state = pickState(random.uniform());
    const [u, v] = tied(random);
    return [densityOf(0, state, u), densityOf(1, state, v)];
  };
}

interface CumulatedHeights {
  readonly total: number;
  /** The place in the list, with its fraction, below which the share lies. */
  at(share: number): number;
}

function cumulated(heights: Float64Array, tiltPerPoint: number): CumulatedHeights {
  const running = new Float64Array(heights.length);
  let total = 0;
  for (let i = 0; i < heights.length; i++) {
    total += heights[i]! * Math.exp(tiltPerPoint * i);
    running[i] = total;
  }
  return {
    total,
    at: (share) => {
      const wanted = share * total;
      let low = 0;
      let high = running.length - 1;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (running[middle]! <= wanted) low = middle + 1;
        else high = middle;
      }
      const below = low === 0 ? 0 : running[low - 1]!;
      const own = running[low]! - below;
      // A point stands for the cell around it.
      return low - 0.5 + (own > 0 ? (wanted - below) / own : 0.5);
    },
  };
}

function picker(weights: Float64Array): (uniform: number) => number {
  const running = new Float64Array(weights.length);
  let total = 0;
  for (let i = 0; i < weights.length; i++) {
    total += weights[i]!;
    running[i] = total;
  }
  return (uniform) => {
    const wanted = uniform * total;
    let low = 0;
    let high = weights.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (running[middle]! > wanted) high = middle;
      else low = middle + 1;
    }
    return low;
  };
}

/** Two uniform numbers that rise together as the correlation says. */
function tiedUniforms(correlation: number): (random: SeededRandom) => readonly [number, number] {
  if (correlation === 0) return (random) => [random.uniform(), random.uniform()];
  const apart = Math.sqrt(1 - correlation ** 2);
  return (random) => {
    const z = normalQuantile(random.uniform() || 1e-12);
    const other = normalQuantile(random.uniform() || 1e-12);
    return [normalCdf(z), normalCdf(correlation * z + apart * other)];
  };
}
