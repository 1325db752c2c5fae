import { logGamma } from '../maths/distributions.ts';

export interface StoppedCounts {
  /** Belts and species with a count exactly at the cap, all measured. */
  readonly atCap: number;
  /** Belts and species with a count at the cap or above. */
  readonly dense: number;
  /** Chance of so many at the cap, if honest belts stood there as often as just below. */
  readonly chance: number;
  readonly isStopped: boolean;
}

/**
 * Counts that stop at the number of animals to be measured: did the diver go on counting after the last length?
 *
 * Under honest counting, about as many belts have exactly 30 animals as have 29, 28 or 27: the mean of those three
 * over the number of dense belts is the honest rate, and never less than one in ten. A stop is claimed from 3 belts
 * at the cap whose number has a binomial chance of 1 in 1000 or less at that rate.
 *
 * Assumes that the counts around the cap fall off smoothly, as clumped counts do.
 * Source: binomial tail (textbook); the least rate of one in ten is ours, see docs/methods/checks.md.
 */
export function stoppedCounts(counts: {
  readonly atCap: number;
  readonly dense: number;
  /** Belts and species with a count of one, two or three less than the cap. */
  readonly justBelow: number;
}): StoppedCounts {
  const { atCap, dense, justBelow } = counts;
  const honestRate = Math.min(0.95, Math.max(leastRate, justBelow / (3 * Math.max(1, dense))));
  const chance = binomialUpperTail(dense, atCap, honestRate);
  return { atCap, dense, chance, isStopped: atCap >= leastAtCap && chance <= 0.001 };
}

/** Chance of `least` or more successes of `trials`. */
function binomialUpperTail(trials: number, least: number, rate: number): number {
  let total = 0;
  for (let successes = least; successes <= trials; successes++) {
    const logWays = logGamma(trials + 1) - logGamma(successes + 1) - logGamma(trials - successes + 1);
    total += Math.exp(logWays + successes * Math.log(rate) + (trials - successes) * Math.log1p(-rate));
  }
  // Three of three are a thousandth exactly; rounding must not decide.
  return Math.min(1, total * (1 - 1e-12));
}

const leastRate = 0.1;
const leastAtCap = 3;
