/** For tests: comparison with a stated tolerance, because sixteen copied digits are no authority. */

/** Throws unless the numbers differ by at most `tolerance` times the expected one (or absolutely, when that is 0). */
export function near(actual: number | null | undefined, expected: number, tolerance: number): void {
  const allowed = expected === 0 ? tolerance : tolerance * Math.abs(expected);
  if (typeof actual === 'number' && Math.abs(actual - expected) <= allowed) return;
  throw new Error(`expected ${expected} within ${allowed}, got ${actual}`);
}

/** The same for lists of equal length, such as the two ends of an interval. */
export function allNear(
  actual: readonly (number | null)[] | null | undefined,
  expected: readonly number[],
  tolerance: number,
): void {
  if (actual?.length !== expected.length)
    throw new Error(`expected ${expected.length} numbers, got ${actual}`);
  expected.forEach((value, i) => {
    near(actual[i], value, tolerance);
  });
}
