/** Resampling whole stations within strata, and the intervals drawn from it. */

import { normalCdf, normalQuantile } from '../maths/distributions.ts';
import { interpolatedQuantile } from '../maths/quantiles.ts';
import type { Picker } from '../maths/random.ts';
import { mean, sum } from '../maths/variance.ts';
import type { Interval, StratumValues } from './shapes.ts';

/** 999, so that the 2.5 % and 97.5 % ranks are whole. */
const defaultReplicates = 999;

/**
 * Weighted stratified means of samples drawn again from the stations: one number per replicate, in the unit
 * of the values. Stations, never transects, are drawn with replacement within their stratum, as many as there are.
 *
 * The same picker gives the same draws. Throws without strata or with an empty one.
 * Cost: replicates times stations picks, a few nanoseconds each.
 * Source: Davison and Hinkley 1997, section 3.2 (from memory); R boot(strata =).
 */
export function resampledMeans(
  strata: readonly StratumValues[],
  picker: Picker,
  replicates: number = defaultReplicates,
): Float64Array {
  if (strata.length === 0 || strata.some((stratum) => stratum.values.length === 0)) {
    throw new Error('resampledMeans requires at least one station in every stratum');
  }
  const totalWeight = sum(strata.map((stratum) => stratum.weight));
  const values = strata.map((stratum) => Float64Array.from(stratum.values));
  const shares = strata.map((stratum) => stratum.weight / totalWeight / stratum.values.length);
  const means = new Float64Array(replicates);
  for (let replicate = 0; replicate < replicates; replicate++) {
    let weightedMean = 0;
    for (let h = 0; h < values.length; h++) weightedMean += shares[h]! * resampledSum(values[h]!, picker);
    means[replicate] = weightedMean;
  }
  return means;
}

function resampledSum(values: Float64Array, picker: Picker): number {
  const n = values.length;
  let total = 0;
  for (let i = 0; i < n; i++) total += values[picker.below(n)]!;
  return total;
}

/**
 * Percentile interval: the middle share of the resampled means. Too short with few stations.
 * Null without replicates. Source: Efron and Tibshirani 1993, chapter 13 (from memory).
 */
export function percentileInterval(means: Float64Array, confidence = 0.95): Interval | null {
  if (means.length === 0) return null;
  const sorted = means.toSorted();
  return [
    interpolatedQuantile(sorted, (1 - confidence) / 2),
    interpolatedQuantile(sorted, (1 + confidence) / 2),
  ];
}

export interface BcaParts {
  readonly interval: Interval;
  /** Where the value lies among the resampled means, as a normal deviate: 0 in the middle. */
  readonly bias: number;
  readonly acceleration: number;
  readonly probabilities: Interval;
}

/**
 * Bias-corrected accelerated interval (BCa): the percentile interval shifted for skewed means.
 *
 * `value` is the estimate itself. Draws equal to it but for rounding are not below it.
 * Null when every draw lies on one side of the value (all stations equal): there is nothing to correct.
 * Source: Efron and Tibshirani 1993, chapter 14 (from memory); R boot.ci with jackknife influence.
 */
export function bcaInterval(
  resampled: {
    readonly means: Float64Array;
    readonly value: number;
    readonly strata: readonly StratumValues[];
  },
  confidence = 0.95,
): BcaParts | null {
  const { means, value } = resampled;
  const below = drawsBelow(means, value);
  if (below === 0 || below === means.length) return null;
  const bias = normalQuantile(below / means.length);
  const acceleration = accelerationOf(jackknifeInfluence(resampled.strata));
  const corrected = (probability: number) => {
    const shifted = bias + normalQuantile(probability);
    return normalCdf(bias + shifted / (1 - acceleration * shifted));
  };
  const probabilities: Interval = [corrected((1 - confidence) / 2), corrected((1 + confidence) / 2)];
  const sorted = means.toSorted();
  const interval: Interval = [
    interpolatedQuantile(sorted, probabilities[0]),
    interpolatedQuantile(sorted, probabilities[1]),
  ];
  return { interval, bias, acceleration, probabilities };
}

function drawsBelow(means: Float64Array, value: number): number {
  const mark = value - 1e-9 * Math.abs(value);
  let below = 0;
  for (const draw of means) if (draw < mark) below++;
  return below;
}

/**
 * Influence of each station on the stratified mean, by leaving it out of its stratum: (n - 1) times the change.
 * For a mean that is stratum share times (value - stratum mean); a lone station has none.
 */
export function jackknifeInfluence(strata: readonly StratumValues[]): number[] {
  const totalWeight = sum(strata.map((stratum) => stratum.weight));
  return strata.flatMap((stratum) => {
    const centre = mean(stratum.values);
    return stratum.values.map((value) => (stratum.weight / totalWeight) * (value - centre));
  });
}

/** Skewness of the influences over six. Source: Efron and Tibshirani 1993, equation 14.15 (from memory). */
function accelerationOf(influence: readonly number[]): number {
  const squares = sum(influence.map((l) => l ** 2));
  return squares === 0 ? 0 : sum(influence.map((l) => l ** 3)) / (6 * squares ** 1.5);
}

/**
 * By how much the plain resampling standard error of a stratum of n stations must be multiplied to be unbiased:
 * sqrt(n / (n - 1)). Null for one station. Source: Rao and Wu 1988 (from memory).
 */
export function resamplingShortfall(stations: number): number | null {
  return stations < 2 ? null : Math.sqrt(stations / (stations - 1));
}
