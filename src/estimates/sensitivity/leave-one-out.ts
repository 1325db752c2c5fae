/** The density with each station left out in turn, from sums that are made once. */

import type { StratumSample } from '../density/stratum-sample.ts';

/** The density of the whole scope without one station. */
export interface WithoutStation {
  readonly station: string;
  readonly stratum: string;
  readonly animals: number;
  readonly densityPerHa: number;
  /** Null where a stratum is left with one station. */
  readonly standardErrorPerHa: number | null;
  readonly degreesOfFreedom: number | null;
}

/**
 * Area-weighted density and its standard error without each station in turn, in animals per hectare.
 *
 * Answers "does it rest on one place?". A station changes its own stratum only: with deviations u from the stratum's mean
 * the mean without it is mean - u / (n - 1), and the sum of squares falls by u^2 n / (n - 1); for a ratio of sums the
 * residuals about the old ratio are moved by what the ratio moves. So all stations together cost one pass, not one
 * estimate each. The estimator of each stratum (station mean or ratio of sums) stays what it is with all stations.
 *
 * A stratum's lone station cannot be left out: it is passed over, because without it the stratum has no density.
 * Source: the updates by algebra from Cochran 1977, 2.6 and 6.3 (from memory); tested against full estimates.
 */
export function leaveOneOut(samples: readonly StratumSample[]): readonly WithoutStation[] {
  const strata = samples.map(summaryOf);
  const totalWeight = strata.reduce((total, one) => total + one.weight, 0);
  const density = strata.reduce((total, one) => total + one.weight * one.meanPerHa, 0) / totalWeight;
  const variances = strata.map((one) => varianceOf(one.sumOfSquares, one.n, one.weight / totalWeight));
  return samples.flatMap((sample, h) => {
    const stratum = strata[h]!;
    if (stratum.n < 2) return [];
    const share = stratum.weight / totalWeight;
    return sample.observed.map((observation, i) => {
      const left = without(stratum, i);
      const own = varianceOf(left.sumOfSquares, stratum.n - 1, share);
      return {
        station: observation.station.record.code,
        stratum: sample.stratum.name,
        animals: observation.animals,
        densityPerHa: density + share * (left.meanPerHa - stratum.meanPerHa),
        ...spreadOf(variances.map((variance, j) => (j === h ? own : variance))),
      };
    });
  });
}

interface Summary {
  readonly weight: number;
  readonly n: number;
  readonly meanPerHa: number;
  /** Of the values about their mean. */
  readonly sumOfSquares: number;
  readonly deviations: readonly number[];
  readonly ratio: RatioSums | null;
}

/** For a ratio of sums: counts and areas in hectares, and the sums of residuals that its changes need. */
interface RatioSums {
  readonly areasHa: readonly number[];
  readonly residuals: readonly number[];
  readonly areaHa: number;
  readonly residualSquares: number;
  readonly residualTimesArea: number;
  readonly areaSquares: number;
}

function summaryOf({ stratum, observed, valuesPerHa, estimator }: StratumSample): Summary {
  const n = valuesPerHa.length;
  const meanPerHa = total(valuesPerHa) / n;
  const deviations = valuesPerHa.map((value) => value - meanPerHa);
  const areasHa = observed.map((one) => one.searchedAreaCm2 / 1e8);
  return {
    weight: stratum.areaHa ?? 1,
    n,
    meanPerHa,
    sumOfSquares: total(deviations.map((one) => one ** 2)),
    deviations,
    ratio:
      estimator === 'ratio of sums'
        ? ratioSums(
            observed.map((one) => one.animals),
            areasHa,
            meanPerHa,
          )
        : null,
  };
}

function ratioSums(animals: readonly number[], areasHa: readonly number[], perHa: number): RatioSums {
  const residuals = animals.map((count, i) => count - perHa * areasHa[i]!);
  return {
    areasHa,
    residuals,
    areaHa: total(areasHa),
    residualSquares: total(residuals.map((one) => one ** 2)),
    residualTimesArea: total(residuals.map((one, i) => one * areasHa[i]!)),
    areaSquares: total(areasHa.map((one) => one ** 2)),
  };
}

function without({ n, meanPerHa, sumOfSquares, deviations, ratio }: Summary, i: number) {
  if (ratio !== null) return withoutFromRatio(ratio, { n, meanPerHa, i });
  const deviation = deviations[i]!;
  return {
    meanPerHa: meanPerHa - deviation / (n - 1),
    // Rounding may leave a hair below zero where all others are equal.
    sumOfSquares: Math.max(0, sumOfSquares - (deviation ** 2 * n) / (n - 1)),
  };
}

/** Residuals about the old ratio add up to zero, so the ratio without one moves by its residual over the area left. */
function withoutFromRatio(
  ratio: RatioSums,
  { n, meanPerHa, i }: { readonly n: number; readonly meanPerHa: number; readonly i: number },
) {
  const areaHa = ratio.areasHa[i]!;
  const residual = ratio.residuals[i]!;
  const left = ratio.areaHa - areaHa;
  const moved = -residual / left;
  const squares =
    ratio.residualSquares -
    residual ** 2 -
    2 * moved * (ratio.residualTimesArea - residual * areaHa) +
    moved ** 2 * (ratio.areaSquares - areaHa ** 2);
  return { meanPerHa: meanPerHa + moved, sumOfSquares: Math.max(0, squares) / (left / (n - 1)) ** 2 };
}

interface Variance {
  readonly variance: number;
  readonly degreesOfFreedom: number;
}

/** Of the stratum's part of the whole mean; null with one station. */
function varianceOf(sumOfSquares: number, n: number, share: number): Variance | null {
  if (n < 2) return null;
  return { variance: (share ** 2 * sumOfSquares) / (n - 1) / n, degreesOfFreedom: n - 1 };
}

/** Satterthwaite's degrees of freedom, as for the whole density. */
function spreadOf(variances: readonly (Variance | null)[]) {
  const known = variances.filter((one) => one !== null);
  if (known.length < variances.length) return { standardErrorPerHa: null, degreesOfFreedom: null };
  const variance = total(known.map((one) => one.variance));
  const squares = total(known.map((one) => one.variance ** 2 / one.degreesOfFreedom));
  return {
    standardErrorPerHa: Math.sqrt(variance),
    degreesOfFreedom:
      squares === 0 ? total(known.map((one) => one.degreesOfFreedom)) : variance ** 2 / squares,
  };
}

function total(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
