/**
 * Radical inverse, between 0 and 1: the digits of a whole number in a base, mirrored behind the point.
 *
 * Successive numbers fall into the largest gap left so far, which is what spreads stations.
 * Throws for an index that is not a whole number of at least 0. Source: Halton 1960 (from memory); computed with R.
 *
 *     radicalInverse(1, 2) // 0.5
 */
export function radicalInverse(index: number, base: number): number {
  if (!(Number.isSafeInteger(index) && index >= 0))
    throw new Error(`radicalInverse requires a whole index, got ${index}`);
  let left = index;
  let place = 1 / base;
  let value = 0;
  while (left > 0) {
    value += (left % base) * place;
    left = Math.floor(left / base);
    place /= base;
  }
  return value;
}
