import { normalQuantile } from '../maths/distributions.ts';

/**
 * Error of the mean length, in millimetres, when the first `measured` of `counted` animals are not a fair choice.
 *
 * If the order in which a diver meets the animals goes with their size (correlation rho), the mean of the first
 * is off by -rho sd phi(z) / Phi(z) with Phi(z) = measured / counted. Remedy: measure every k-th animal.
 *
 * Assumes a normal relation and many animals. 0 when all were measured; null when none was.
 * Source: mean of a truncated normal (inverse Mills ratio; from memory).
 */
export function firstMeasuredBiasMm(belt: {
  readonly correlation: number;
  readonly standardDeviationMm: number;
  readonly measured: number;
  readonly counted: number;
}): number | null {
  if (belt.measured <= 0 || belt.counted <= 0) return null;
  const share = belt.measured / belt.counted;
  if (share >= 1) return 0;
  const z = normalQuantile(share);
  const density = Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);
  return (-belt.correlation * belt.standardDeviationMm * density) / share;
}
