/** The numbers of one scope: biomass per hectare and in all, its errors from stations and from weights, its intervals. */

import { sum } from '../../maths/variance.ts';
import type { StationObservation } from '../../survey/observation.ts';
import type { MeanWeight } from '../../survey/value-words.ts';
import type { DensityAnswer } from '../answers.ts';
import type { PointEstimate } from '../density/point-estimate.ts';
import type { ScopeInHand } from '../density/scopes.ts';
import { lognormalInterval } from '../lognormal-interval.ts';
import type { Interval } from '../shapes.ts';
import type { StationLengths } from './animals-with-weights.ts';
import type { WeightsChosen } from './choose-weights.ts';
import { converted, type ScopeNumbers } from './convert-weights.ts';
import { type LengthWeightLine, lengthWeightLine, weightOfLengthG } from './length-weight-line.ts';
import { amountOverScope } from './scope-amounts.ts';
import { weightInterval } from './weight-interval.ts';

export interface ScopeWeights {
  readonly scope: ScopeInHand;
  readonly density: DensityAnswer;
  readonly chosen: WeightsChosen;
  readonly lengths: ReadonlyMap<StationObservation, StationLengths> | null;
}

/**
 * Biomass = sum over counted animals of the weight of each one's length, over area, weighted by strata.
 * Variance = between stations + g' V g of the pair's two numbers. Source: METHODS e (vector e2, R survey and lm).
 */
export function weighScope(weights: ScopeWeights, confidence: number): ScopeNumbers {
  const { basis } = weights.chosen;
  if (basis.by === 'mean weight' && basis.means.length > 1) return rangeOfMeans(weights, basis.means);
  const animal = basis.by === 'pair' ? byLength(weights) : byMean(weights, basis.means[0]!);
  return numbersOf(weights, animal, confidence);
}

interface Weighed {
  readonly gramsAt: (observation: StationObservation) => number;
  /** Relative variance of the biomass that comes from the weights themselves; null where it is not told. */
  readonly weightRelativeVariance: number | null;
}

function byLength({ scope, chosen, lengths }: ScopeWeights): Weighed {
  if (chosen.basis.by !== 'pair' || lengths === null) throw new Error('byLength requires a pair and lengths');
  const line = { ...lengthWeightLine(chosen.basis.pair), correction: chosen.basis.correction };
  const at = (weight: (lengthMm: number) => number) => (observation: StationObservation) =>
    sum((lengths.get(observation)?.lengths ?? []).map((one) => one.animals * weight(one.lengthMm)));
  const gramsAt = at((lengthMm) => weightOfLengthG(line, lengthMm));
  const slopeAt = at((lengthMm) => weightOfLengthG(line, lengthMm) * Math.log(lengthMm));
  const biomass = amountOverScope(scope, gramsAt).density.value ?? 0;
  const slope = amountOverScope(scope, slopeAt).density.value ?? 0;
  return { gramsAt, weightRelativeVariance: parameterVariance(line, biomass, slope) };
}

/** g' V g over B^2, with g = (B, sum of c W ln L). */
function parameterVariance({ covariance }: LengthWeightLine, biomass: number, slope: number): number | null {
  if (covariance === null || biomass === 0) return null;
  const relative = slope / biomass;
  const { lnAVariance, lnABCovariance, bVariance } = covariance;
  return Math.max(0, lnAVariance + 2 * relative * lnABCovariance + relative ** 2 * bVariance);
}

function byMean(_: ScopeWeights, { weightG, standardErrorG }: MeanWeight): Weighed {
  return {
    gramsAt: (observation) => observation.animals * weightG,
    weightRelativeVariance: standardErrorG === null ? null : (standardErrorG / weightG) ** 2,
  };
}

function numbersOf(weights: ScopeWeights, weighed: Weighed, confidence: number): ScopeNumbers {
  const { scope, density, chosen } = weights;
  const point = amountOverScope(scope, weighed.gramsAt);
  const count = amountOverScope(scope, (one) => one.animals);
  const biomass = point.density.value!;
  const meanG = biomass / count.density.value!;
  const ofWeights = weighed.weightRelativeVariance ?? 0;
  const spread = {
    extraRelativeVariance: betweenWeights(weights, weighed, { point, count, meanG }) + ofWeights,
    degreesOfFreedom: point.density.degreesOfFreedom,
  };
  const hasSpread = point.density.standardError !== null && density.intervalPerHa !== null;
  const intervalOf = (animals: number | null, interval: Interval | null) =>
    animals === null || interval === null || !hasSpread
      ? null
      : weightInterval(
          { ...spread, densityPerHa: animals, intervalPerHa: interval, biomassPerHa: animals * meanG },
          confidence,
        );
  const standardError = hasSpread
    ? Math.hypot(point.density.standardError!, biomass * Math.sqrt(ofWeights))
    : null;
  const total = density.totalAnimals === null ? null : point.stock;
  const whole = total?.value ?? null;
  return converted(chosen.conversion, {
    meanWeightG: meanG,
    kgPerHa: biomass / 1000,
    standardErrorKgPerHa: inKg(standardError),
    samplingErrorKgPerHa: hasSpread ? inKg(point.density.standardError) : null,
    weightErrorKgPerHa:
      weighed.weightRelativeVariance === null
        ? null
        : inKg(biomass * Math.sqrt(weighed.weightRelativeVariance)),
    degreesOfFreedom: point.density.degreesOfFreedom,
    intervalKgPerHa: kgInterval(intervalOf(density.densityPerHa, density.intervalPerHa)),
    designIntervalKgPerHa: kgInterval(lognormalInterval({ ...point.density, standardError }, confidence)),
    totalKg: inKg(whole),
    totalStandardErrorKg:
      whole === null || total?.standardError === undefined || total.standardError === null || !hasSpread
        ? null
        : inKg(Math.hypot(total.standardError, whole * Math.sqrt(ofWeights))),
    totalIntervalKg: kgInterval(intervalOf(density.totalAnimals, density.totalInterval)),
  });
}

/**
 * Relative variance that the mean weight of the stations adds to that of the count. Where stations of many animals hold
 * heavier ones the two move together, and that is added; where they hold lighter ones nothing is taken away, because a
 * covariance from few stations is not to be leaned on.
 */
function betweenWeights(
  { scope, density }: ScopeWeights,
  { gramsAt }: Weighed,
  {
    point,
    count,
    meanG,
  }: { readonly point: PointEstimate; readonly count: PointEstimate; readonly meanG: number },
): number {
  const biomass = point.density.value!;
  const residual = amountOverScope(scope, (one) => gramsAt(one) - meanG * one.animals);
  const relative = (estimate: PointEstimate, by: number) => ((estimate.density.standardError ?? 0) / by) ** 2;
  const ofWeight = relative(residual, biomass);
  const together = relative(point, biomass) - relative(count, density.densityPerHa ?? Number.NaN) - ofWeight;
  return ofWeight + Math.max(0, together || 0);
}

/** Several published mean weights: from the fewest of the lightest to the most of the heaviest. */
function rangeOfMeans({ density, chosen }: ScopeWeights, means: readonly MeanWeight[]): ScopeNumbers {
  const weights = means.map(({ weightG }) => weightG);
  const range = (interval: Interval | null): Interval | null =>
    interval === null ? null : [interval[0] * Math.min(...weights), interval[1] * Math.max(...weights)];
  return converted(chosen.conversion, {
    meanWeightG: null,
    kgPerHa: null,
    standardErrorKgPerHa: null,
    samplingErrorKgPerHa: null,
    weightErrorKgPerHa: null,
    degreesOfFreedom: null,
    intervalKgPerHa: kgInterval(range(density.intervalPerHa)),
    designIntervalKgPerHa: null,
    totalKg: null,
    totalStandardErrorKg: null,
    totalIntervalKg: kgInterval(range(density.totalInterval)),
  });
}

function inKg(grams: number | null): number | null {
  return grams === null ? null : grams / 1000;
}

function kgInterval(grams: Interval | null): Interval | null {
  return grams === null ? null : [grams[0] / 1000, grams[1] / 1000];
}
