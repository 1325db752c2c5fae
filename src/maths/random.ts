/**
 * Chance as an argument: a generator that repeats itself exactly from its seed, so that every
 * drawn interval, sample and demo can be made again from the number printed beside it.
 */

import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Random whole numbers alone: all that resampling needs, so that a test can replay stored picks. */
export interface Picker {
  /** A whole number from 0 to n - 1, all equally likely. */
  below(n: number): number;
}

export interface SeededRandom extends Picker {
  readonly seed: number;
  /** A number from 0 (included) to 1 (excluded), in steps of 2^-53. */
  uniform(): number;
}

/**
 * A generator started from a whole-number seed. It has state: pass it on, never share it between
 * two answers that must each be repeatable alone.
 *
 * `below` multiplies the raw 32 bits instead of rejecting: unequal by less than n / 2^32, which no
 * survey can see, and a few nanoseconds a pick.
 */
export function seededRandom(seed: number): SeededRandom {
  const generator = xoroshiro128plus(seed | 0);
  // Neighbouring seeds start in neighbouring states; the first outputs would be nearly equal.
  for (let i = 0; i < 64; i++) generator.next();
  return {
    seed,
    below: (n) => Math.floor((generator.next() >>> 0) * n * twoToMinus32),
    uniform: () => ((generator.next() >>> 5) * 67_108_864 + (generator.next() >>> 6)) * twoToMinus53,
  };
}

const twoToMinus32 = 2 ** -32;
const twoToMinus53 = 2 ** -53;
