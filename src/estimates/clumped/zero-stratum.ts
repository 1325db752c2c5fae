import {
  type Belief,
  beliefFromLogHeights,
  equalTailedInterval,
  type FadingBand,
  quantilePerHa,
} from './belief.ts';
import type { ClumpedPosterior } from './clumped-posterior.ts';
import { type ClumpedPriors, kGrid } from './clumped-priors.ts';
import { logSumExp } from './log-sum.ts';
import { negativeBinomialLikelihood } from './negative-binomial.ts';
import { requireStationCounts, SQUARE_METRES_PER_HA } from './station-count.ts';

/** The belief of a stratum without animals ends at this many times its one-sided 95 % bound. */
const ZERO_STRATUM_CAP = 2;
const MISS = 0.05;
/** Below the cap by exp(-24) a belief that falls as the root of the density has 6 millionths left. */
const DEPTH_LOG = 24;
const STEP_LOG = 0.05;
const BAND_POINTS = 100;

/**
 * Belief about the density of a stratum in which no animal was seen, inside a survey that has
 * animals elsewhere.
 *
 * A flat belief in log density is improper here: nothing seen fits every density near zero equally
 * well, and where the grid is cut would decide the answer. The prior used instead goes as one over
 * the root of the density (Jeffreys' for a Poisson mean, from memory), times the negative binomial
 * likelihood of zeros with k summed over its prior, and ends at twice the one-sided 95 % bound of
 * METHODS c5 for the prior's median k: beyond the bound the animals would be missed in fewer than one
 * survey in twenty, and the benchmark sees no difference in width between caps of 0.5 and 4 bounds.
 * So an empty stratum adds a little, and never nothing.
 */
export function zeroStratumPosterior(
  areasM2: readonly number[],
  priors: ClumpedPriors,
  capInBounds: number = ZERO_STRATUM_CAP,
): ClumpedPosterior {
  const belief = zeroStratumBelief(areasM2, priors, capInBounds);
  return {
    animalsSeen: false,
    belief,
    modelWeights: { nb: 1, pln: 0, poisson: 0 },
    priors,
    quantile: (p) => quantilePerHa(belief, p),
    interval: (confidence) => equalTailedInterval(belief, confidence),
  };
}

function zeroStratumBelief(areasM2: readonly number[], priors: ClumpedPriors, capInBounds: number): Belief {
  const counts = areasM2.map((areaM2) => ({ animals: 0, areaM2 }));
  requireStationCounts(counts);
  const highest = Math.log(capInBounds * zeroBoundPerHa(areasM2, priors.negativeBinomialK.median, MISS));
  const ks = kGrid(priors.negativeBinomialK);
  const likelihood = negativeBinomialLikelihood(counts, ks.values);
  const overK = new Float64Array(ks.values.length);
  const points = Math.round(DEPTH_LOG / STEP_LOG) + 1;
  const lowest = highest - DEPTH_LOG;
  const logHeights = new Float64Array(points).map((_, i) => {
    const logDensity = lowest + i * STEP_LOG;
    likelihood(logDensity, overK);
    for (let j = 0; j < overK.length; j++) overK[j] = overK[j]! + ks.logWeights[j]!;
    return logDensity / 2 + logSumExp(overK);
  });
  return beliefFromLogHeights(lowest, STEP_LOG, logHeights);
}

/**
 * Density per hectare at which clumped animals (negative binomial, this k) would be missed at every
 * station with the probability `miss`: the solution of sum k ln(1 + D a / k) = -ln(miss).
 */
function zeroBoundPerHa(areasM2: readonly number[], k: number, miss: number): number {
  const areasHa = areasM2.map((areaM2) => areaM2 / SQUARE_METRES_PER_HA);
  const missedBy = (density: number) =>
    areasHa.reduce((sum, areaHa) => sum + k * Math.log1p((density * areaHa) / k), 0) + Math.log(miss);
  let low = 0;
  let high = 1;
  while (missedBy(high) < 0) high *= 2;
  for (let round = 0; round < 200 && high - low > 1e-13 * high; round++) {
    const middle = (low + high) / 2;
    if (missedBy(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Shape of the belief when no animal was seen anywhere: a band that fades from 1 at density zero to one
 * minus the confidence at the one-sided bound (METHODS c5). The weight at a density is the probability
 * that every station would have missed the animals.
 */
export function zeroBelief(areasM2: readonly number[], k: number, confidence = 0.95): FadingBand {
  requireStationCounts(areasM2.map((areaM2) => ({ animals: 0, areaM2 })));
  const bound = zeroBoundPerHa(areasM2, k, 1 - confidence);
  const densityPerHa = Array.from({ length: BAND_POINTS }, (_, i) => (bound * i) / (BAND_POINTS - 1));
  const relativeWeight = densityPerHa.map((density) =>
    areasM2.reduce((weight, areaM2) => weight * (1 + (density * areaM2) / SQUARE_METRES_PER_HA / k) ** -k, 1),
  );
  return { densityPerHa, relativeWeight };
}
