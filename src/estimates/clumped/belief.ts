import type { Interval } from '../shapes.ts';

/**
 * A belief about a density per hectare, on equally spaced logarithms of it.
 *
 * `densityOfBelief` is per unit of log density and its integral is one; `cumulative` is the belief
 * that the density lies below the point.
 */
export interface Belief {
  readonly lowestLogDensityPerHa: number;
  readonly stepLog: number;
  readonly densityOfBelief: Float64Array;
  readonly cumulative: Float64Array;
}

/** What a fading band is drawn from: densities per hectare, and weights of which the greatest is 1. */
export interface FadingBand {
  readonly densityPerHa: readonly number[];
  readonly relativeWeight: readonly number[];
}

const BAND_POINTS = 100;
const BAND_TAIL = 0.001;

/** Belief from logarithms of unnormalised density of belief; each cell is summed with the cubic through four points. */
export function beliefFromLogHeights(
  lowestLogDensityPerHa: number,
  stepLog: number,
  logHeights: Float64Array,
): Belief {
  const greatest = logHeights.reduce((a, b) => Math.max(a, b), -Infinity);
  const heights = logHeights.map((logHeight) => Math.exp(logHeight - greatest));
  const cumulative = new Float64Array(heights.length);
  for (let i = 1; i < heights.length; i++) cumulative[i] = cumulative[i - 1]! + cell(heights, i) * stepLog;
  const total = cumulative[cumulative.length - 1]!;
  return {
    lowestLogDensityPerHa,
    stepLog,
    densityOfBelief: heights.map((height) => height / total),
    cumulative: cumulative.map((below) => below / total),
  };
}

function cell(heights: Float64Array, i: number): number {
  const a = heights[i - 1]!;
  const b = heights[i]!;
  const before = heights[i - 2];
  const after = heights[i + 1];
  if (before === undefined || after === undefined) return (a + b) / 2;
  return Math.max(0, (13 * (a + b) - before - after) / 24);
}

/** Belief that the density lies below `exp(logDensityPerHa)`. */
export function beliefBelow(belief: Belief, logDensityPerHa: number): number {
  const position = (logDensityPerHa - belief.lowestLogDensityPerHa) / belief.stepLog;
  if (!(position > 0)) return 0;
  const i = Math.floor(position);
  if (i >= belief.cumulative.length - 1) return 1;
  return within(belief, i, position - i);
}

/** Density per hectare below which the share p of the belief lies. */
export function quantilePerHa(belief: Belief, p: number): number {
  if (!(p > 0 && p < 1)) throw new Error(`quantile requires a share between 0 and 1, got ${p}`);
  const { cumulative } = belief;
  let low = 0;
  let high = cumulative.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (cumulative[middle]! <= p) low = middle;
    else high = middle;
  }
  let left = 0;
  let right = 1;
  for (let round = 0; round < 40; round++) {
    const middle = (left + right) / 2;
    if (within(belief, low, middle) <= p) left = middle;
    else right = middle;
  }
  return Math.exp(belief.lowestLogDensityPerHa + (low + (left + right) / 2) * belief.stepLog);
}

/** The cubic through both ends of a cell with the right slope at both. */
function within(belief: Belief, i: number, share: number): number {
  const from = belief.cumulative[i]!;
  const rise = belief.cumulative[i + 1]! - from;
  const slopeA = belief.densityOfBelief[i]! * belief.stepLog;
  const slopeB = belief.densityOfBelief[i + 1]! * belief.stepLog;
  const square = share * share;
  const cube = square * share;
  const value =
    rise * (3 * square - 2 * cube) + slopeA * (cube - 2 * square + share) + slopeB * (cube - square);
  return from + Math.min(rise, Math.max(0, value));
}

/** Equal-tailed interval: as much belief is left out below as above. */
export function equalTailedInterval(belief: Belief, confidence: number): Interval {
  const tail = (1 - confidence) / 2;
  return [quantilePerHa(belief, tail), quantilePerHa(belief, 1 - tail)];
}

/** The interval, widened where needed so that the design-based estimate lies inside it. */
export function containing(interval: Interval, estimate: number): Interval {
  return [Math.min(interval[0], estimate), Math.max(interval[1], estimate)];
}

/** The middle 99.8 % of the belief at 100 densities of equal ratio, greatest weight 1. */
export function fadingBand(belief: Belief): FadingBand {
  const low = Math.log(quantilePerHa(belief, BAND_TAIL));
  const step = (Math.log(quantilePerHa(belief, 1 - BAND_TAIL)) - low) / (BAND_POINTS - 1);
  const logs = Array.from({ length: BAND_POINTS }, (_, i) => low + i * step);
  const weights = logs.map((log) => densityAt(belief, log));
  const greatest = Math.max(...weights);
  return { densityPerHa: logs.map(Math.exp), relativeWeight: weights.map((weight) => weight / greatest) };
}

function densityAt(belief: Belief, logDensityPerHa: number): number {
  const position = (logDensityPerHa - belief.lowestLogDensityPerHa) / belief.stepLog;
  const i = Math.min(belief.densityOfBelief.length - 2, Math.max(0, Math.floor(position)));
  const share = Math.min(1, Math.max(0, position - i));
  return (1 - share) * belief.densityOfBelief[i]! + share * belief.densityOfBelief[i + 1]!;
}
