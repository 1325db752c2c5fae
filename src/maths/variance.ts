/**
 * Mean and the usual sample variance (n - 1), and the variance of a total of independent units
 * within groups, on which every design-based standard error of the house rests.
 */

/** Arithmetic mean. Throws on an empty list: a caller must say what nothing means. */
export function mean(values: ArrayLike<number>): number {
  if (values.length === 0) throw new Error('mean requires at least one value');
  return sum(values) / values.length;
}

/** Sum with Neumaier's correction, so that the order of rows does not show in the result. */
export function sum(values: ArrayLike<number>): number {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}

/** Sample variance with n - 1, since the mean was taken from the same values; null below two values. */
export function sampleVariance(values: ArrayLike<number>): number | null {
  const n = values.length;
  if (n < 2) return null;
  const centre = mean(values);
  const squares = new Float64Array(n);
  for (let i = 0; i < n; i++) squares[i] = (values[i]! - centre) ** 2;
  return sum(squares) / (n - 1);
}
