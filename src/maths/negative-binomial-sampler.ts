import { logGamma } from './distributions.ts';
import type { SeededRandom } from './random.ts';

/**
 * Draws clumped counts: negative binomial with the given mean and clumping k (variance mean + mean^2/k).
 *
 * The cumulative shares are tabulated once up to 1 - 1e-12 and inverted by bisection, so that a
 * simulation of millions of stations costs some tens of nanoseconds a station.
 * Returns only zeros for a mean of zero. Throws for a negative mean or a k that is not positive.
 */
export function negativeBinomialSampler(population: {
  readonly mean: number;
  readonly clumpingK: number;
}): (random: SeededRandom) => number {
  if (!(population.mean >= 0) || !(population.clumpingK > 0)) {
    throw new Error('negativeBinomialSampler requires a mean of at least 0 and a positive k');
  }
  if (population.mean === 0) return () => 0;
  const cumulative = cumulativeShares(population.mean, population.clumpingK);
  return (random) => firstAbove(cumulative, random.uniform());
}

function cumulativeShares(mean: number, clumpingK: number): Float64Array {
  const shares: number[] = [];
  const logStep = Math.log(mean / (clumpingK + mean));
  const logNone = -clumpingK * Math.log1p(mean / clumpingK);
  let total = 0;
  for (let count = 0; total < 1 - 1e-12 && count < 10_000_000; count++) {
    total += Math.exp(
      logNone + count * logStep + logGamma(clumpingK + count) - logGamma(clumpingK) - logGamma(count + 1),
    );
    shares.push(total);
    // Rounding may keep the sum short of the mark for ever; far in the tail nothing more is added.
    if (count > mean && shares.length > 1 && total === shares[shares.length - 2]) break;
  }
  return Float64Array.from(shares);
}

function firstAbove(cumulative: Float64Array, uniform: number): number {
  let low = 0;
  let high = cumulative.length - 1;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (cumulative[middle]! > uniform) high = middle;
    else low = middle + 1;
  }
  return low;
}
