/** Logarithm of the sum of exp(values): adds likelihoods too small to be written as plain numbers. */
export function logSumExp(values: ArrayLike<number>): number {
  let greatest = -Infinity;
  for (let i = 0; i < values.length; i++) if (values[i]! > greatest) greatest = values[i]!;
  if (greatest === -Infinity) return -Infinity;
  let total = 0;
  for (let i = 0; i < values.length; i++) {
    const below = values[i]! - greatest;
    if (below > -40) total += Math.exp(below);
  }
  return greatest + Math.log(total);
}
