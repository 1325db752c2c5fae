/** The few draws the demo needs, from a seeded generator. They use only exp, log and square root. */

import { type SeededRandom, seededRandom } from '../../maths/random.ts';

/** An independent generator, so that a change in one part of the demo leaves the other parts alone. */
export function separate(random: SeededRandom): SeededRandom {
  return seededRandom(random.below(2 ** 31));
}

/** One of the values, all equally likely. */
export function oneOf<Value>(values: readonly Value[], random: SeededRandom): Value {
  return values[random.below(values.length)]!;
}

/** A whole number from `from` to `to`, both included. */
export function between(from: number, to: number, random: SeededRandom): number {
  return from + random.below(to - from + 1);
}

/** Standard normal (polar method, Marsaglia and Bray 1964, from memory). */
export function drawNormal(random: SeededRandom): number {
  for (;;) {
    const x = 2 * random.uniform() - 1;
    const y = 2 * random.uniform() - 1;
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
  }
}

/**
 * Gamma with the given shape and scale 1, so that mean and variance both equal the shape
 * (Marsaglia and Tsang 2000, from memory; shapes under 1 through shape + 1 and a uniform power).
 */
export function drawGamma(shape: number, random: SeededRandom): number {
  if (shape < 1) return drawGamma(shape + 1, random) * Math.exp(Math.log(1 - random.uniform()) / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const normal = drawNormal(random);
    const root = 1 + c * normal;
    if (root <= 0) continue;
    const cube = root * root * root;
    const logUniform = Math.log(1 - random.uniform());
    if (logUniform < 0.5 * normal * normal + d - d * cube + d * Math.log(cube)) return d * cube;
  }
}

/** Poisson with the given mean, by multiplying uniforms (Knuth, from memory), in pieces so that large means work. */
export function drawPoisson(mean: number, random: SeededRandom): number {
  let drawn = 0;
  let left = mean;
  for (; left > largestPiece; left -= largestPiece) drawn += drawSmallPoisson(largestPiece, random);
  return drawn + drawSmallPoisson(left, random);
}

const largestPiece = 20;

function drawSmallPoisson(mean: number, random: SeededRandom): number {
  const end = Math.exp(-mean);
  let product = random.uniform();
  let drawn = 0;
  while (product > end) {
    product *= random.uniform();
    drawn++;
  }
  return drawn;
}
