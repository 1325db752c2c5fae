/** One-dimensional searches: where a function crosses zero, and where it is greatest. */

/**
 * The x between `low` and `high` where the function crosses zero, by bisection speeded up with
 * false position (Illinois rule). Throws when both ends lie on the same side: the caller must bracket.
 * Stops when the bracket is narrower than `tolerance` times the larger end.
 */
export function findRoot(
  f: (x: number) => number,
  bracket: { readonly low: number; readonly high: number },
  tolerance = 1e-13,
): number {
  let a = bracket.low;
  let b = bracket.high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new Error('findRoot requires ends on opposite sides of zero');
  let side = 0;
  for (let step = 0; step < 300; step++) {
    if (Math.abs(b - a) <= tolerance * Math.max(Math.abs(a), Math.abs(b), tolerance)) break;
    // Every third step halves the bracket, so that a flat function cannot stall the search.
    const guess = step % 3 === 2 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    const x = guess > Math.min(a, b) && guess < Math.max(a, b) ? guess : (a + b) / 2;
    const fx = f(x);
    if (fx === 0) return x;
    if (fx * fb > 0) {
      b = x;
      fb = fx;
      if (side === 1) fa /= 2;
      side = 1;
    } else {
      a = x;
      fa = fx;
      if (side === -1) fb /= 2;
      side = -1;
    }
  }
  return (a + b) / 2;
}

export interface Maximum {
  readonly at: number;
  readonly value: number;
}

/**
 * Where a function with a single hill is greatest between `low` and `high`, by golden section.
 * The place is good to about 1e-8 of the bracket, the height to rounding.
 */
export function findMaximum(
  f: (x: number) => number,
  bracket: { readonly low: number; readonly high: number },
  tolerance = 1e-9,
): Maximum {
  let { low, high } = bracket;
  let left = high - golden * (high - low);
  let right = low + golden * (high - low);
  let fLeft = f(left);
  let fRight = f(right);
  while (high - low > tolerance) {
    if (fLeft >= fRight) {
      high = right;
      right = left;
      fRight = fLeft;
      left = high - golden * (high - low);
      fLeft = f(left);
    } else {
      low = left;
      left = right;
      fLeft = fRight;
      right = low + golden * (high - low);
      fRight = f(right);
    }
  }
  return fLeft >= fRight ? { at: left, value: fLeft } : { at: right, value: fRight };
}

const golden = (Math.sqrt(5) - 1) / 2;
