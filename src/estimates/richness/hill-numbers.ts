import { logGamma } from '../../maths/distributions.ts';

/** Hill numbers of order 0, 1 and 2, in effective species. */
export interface HillNumbers {
  /** Species. */
  readonly order0: number;
  /** Common species: the exponential of Shannon's index. */
  readonly order1: number;
  /** Dominant species: the inverse of Simpson's index. */
  readonly order2: number;
}

/**
 * Hill numbers of a list of counts, in effective species.
 *
 * Question: how many equally common species would be as varied as these? (sum p^q)^(1/(1-q)), with q = 1 as the
 * limit exp(H). Order 0 counts the rarest as much as the commonest and grows with effort; order 2 hardly does.
 * Null when nothing was counted. Source: Hill 1973, Ecology 54:427 (from memory; R package vegan agrees).
 */
export function hillNumbers(counts: readonly number[]): HillNumbers | null {
  const animals = counts.reduce((total, count) => total + count, 0);
  return hillNumbersAt(counts, animals);
}

/**
 * Hill numbers that fewer animals of the same list would show on average, in effective species.
 *
 * The expected number of species seen k times among `animals` drawn without replacement, put into Hill's formula.
 * Order 0 is Hurlbert's rarefaction. Assumes animals found one by one and well mixed; clumped animals come together, so fewer
 * species than this would be found. Null when nothing was counted or more animals are asked than were found.
 * Source: Chao et al. 2014, Ecological Monographs 84:45 (from memory). Cost: species × animals.
 */
export function hillNumbersAt(counts: readonly number[], animals: number): HillNumbers | null {
  const all = counts.reduce((total, count) => total + count, 0);
  if (all === 0 || animals < 1 || animals > all) return null;
  const logDraws = logChoose(all, animals);
  let order0 = 0;
  let entropy = 0;
  let squares = 0;
  for (const count of counts) {
    const least = Math.max(1, animals - (all - count));
    for (let k = least; k <= Math.min(count, animals); k++) {
      const chance = Math.exp(logChoose(count, k) + logChoose(all - count, animals - k) - logDraws);
      const share = k / animals;
      order0 += chance;
      entropy -= chance * share * Math.log(share);
      squares += chance * share ** 2;
    }
  }
  return { order0, order1: Math.exp(entropy), order2: 1 / squares };
}

/** Logarithm of the number of ways to choose; minus infinity where there is none. */
export function logChoose(from: number, some: number): number {
  if (some < 0 || some > from) return Number.NEGATIVE_INFINITY;
  if (some === 0 || some === from) return 0;
  return logGamma(from + 1) - logGamma(some + 1) - logGamma(from - some + 1);
}
