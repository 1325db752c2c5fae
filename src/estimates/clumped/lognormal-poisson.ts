import { logGamma } from '../../maths/distributions.ts';

/** Nodes reach down to exp(-110) animals: below every mean that 1 m2 and ten thousand stations can show. */
const LOWEST_LOG_RATE = -110;
/** Below exp(-745) a double is zero: nodes beyond add nothing. */
const DEEPEST_LOG = -745;
const NEGLIGIBLE = 1e-10;

/** Log probability of one count at one log mean, one number per standard deviation of the log rate. */
export type LogProbabilitiesAt = (logMean: number) => Float64Array;

/**
 * Probability of a count under the log-normal-Poisson mixture: the count is Poisson, its log rate
 * is normal with standard deviation sigma, and the expected rate is exp(logMean).
 *
 * P(x) = integral of Poisson(x; exp u) times Normal(u; logMean - sigma^2 / 2, sigma^2) du, by the
 * trapezoid rule on a fixed grid of u outward from the greatest term. The rule converges faster
 * than any power once its step is below the width of the integrand (Trefethen & Weideman 2014,
 * from memory). The Poisson factor is tabulated once for each count; the normal factor follows by
 * multiplication from node to node. Relative error below 1e-6; the test shows it.
 */
export function lognormalPoisson(animals: number, sigmas: Float64Array): LogProbabilitiesAt {
  const bump = poissonBump(animals, Math.min(...sigmas));
  const spreads = Array.from(sigmas, (sigma) => spreadOf(bump, sigma));
  return (logMean) => {
    const row = new Float64Array(sigmas.length);
    for (let j = 0; j < row.length; j++) {
      const spread = spreads[j]!;
      row[j] = logProbability(bump, logMean - spread.variance / 2, spread);
    }
    return row;
  };
}

/** The Poisson probability of one count as a function of the log rate, relative to its greatest value. */
interface PoissonBump {
  readonly animals: number;
  /** Minus infinity for no animals. */
  readonly logAnimals: number;
  readonly logGreatest: number;
  readonly lowest: number;
  readonly step: number;
  readonly heights: Float64Array;
}

function poissonBump(animals: number, smallestSigma: number): PoissonBump {
  const step = widestStep(animals, smallestSigma);
  const peakTerm = animals === 0 ? 0 : animals * Math.log(animals) - animals;
  const logHeight = (logRate: number) => animals * logRate - Math.exp(logRate) - peakTerm;
  const centre = animals === 0 ? 0 : Math.log(animals);
  let low = Math.floor(centre / step);
  let high = low + 1;
  while (logHeight(low * step) > DEEPEST_LOG && low * step > LOWEST_LOG_RATE) low -= 1;
  while (logHeight(high * step) > DEEPEST_LOG) high += 1;
  const heights = Float64Array.from({ length: high - low + 1 }, (_, i) =>
    Math.exp(logHeight((low + i) * step)),
  );
  return {
    animals,
    logAnimals: Math.log(animals),
    logGreatest: peakTerm - logGamma(animals + 1),
    lowest: low * step,
    step,
    heights,
  };
}

/** A little under the standard deviation of the product of the two factors, and safe for its skewness at few animals. */
function widestStep(animals: number, sigma: number): number {
  return 0.9 / Math.sqrt(animals + 2 + 1 / sigma ** 2);
}

/** What does not change from one mean to the next for one standard deviation of the log rate. */
interface Spread {
  readonly variance: number;
  readonly precision: number;
  /** Nodes of the bump passed over from one term to the next. */
  readonly stride: number;
  /** Factor by which the ratio of neighbouring normal heights shrinks from node to node. */
  readonly shrink: number;
  readonly logScale: number;
}

function spreadOf(bump: PoissonBump, sigma: number): Spread {
  const stride = Math.max(1, Math.floor(widestStep(bump.animals, sigma) / bump.step));
  const width = stride * bump.step;
  const logScale = Math.log(width / (sigma * Math.sqrt(2 * Math.PI))) + bump.logGreatest;
  return {
    variance: sigma ** 2,
    precision: 1 / sigma ** 2,
    stride,
    shrink: Math.exp(-((width / sigma) ** 2)),
    logScale,
  };
}

function logProbability(bump: PoissonBump, mu: number, spread: Spread): number {
  const { heights, step } = bump;
  const { precision, stride, shrink } = spread;
  const nearest = Math.round((nearTheGreatestTerm(bump, mu, precision) - bump.lowest) / step);
  const start = Math.min(heights.length - 1, Math.max(0, nearest));
  const offset = bump.lowest + start * step - mu;
  const width = stride * step;
  const half = -0.5 * width * width * precision;
  let total = heights[start]!;

  let normal = 1;
  const firstRatio = Math.exp(half - offset * width * precision);
  let ratio = firstRatio;
  for (let i = start + stride; i < heights.length; i += stride) {
    normal *= ratio;
    ratio *= shrink;
    const term = normal * heights[i]!;
    total += term;
    if (term < NEGLIGIBLE * total) break;
  }
  normal = 1;
  // The two ratios multiply to `shrink`: one exponential is saved, unless the first is too small to divide by.
  ratio = firstRatio > 1e-280 ? shrink / firstRatio : Math.exp(half + offset * width * precision);
  for (let i = start - stride; i >= 0; i -= stride) {
    normal *= ratio;
    ratio *= shrink;
    const term = normal * heights[i]!;
    total += term;
    if (term < NEGLIGIBLE * total) break;
  }
  return spread.logScale - 0.5 * offset * offset * precision + Math.log(total);
}

/**
 * Log rate near which the integrand is greatest, within its width. Its slope is falling and concave, so
 * Newton's steps from a point to the right of the answer come down to it and never pass it.
 */
function nearTheGreatestTerm(bump: PoissonBump, mu: number, precision: number): number {
  const { animals, logAnimals } = bump;
  let at = Math.min(Math.max(mu, logAnimals), mu + animals / precision);
  for (let round = 0; round < 60; round++) {
    const rate = Math.exp(at);
    const move = (animals - rate - (at - mu) * precision) / (rate + precision);
    at += move;
    if (move * move * (rate + precision) < 1) break;
  }
  return at;
}
