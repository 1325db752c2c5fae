export interface Claim {
  /** What a stratum brings to the standard error: area share times spread (over the root of the cost, if that counts). */
  readonly weight: number;
  readonly minimum: number;
  /** As many as it can hold; null without limit. */
  readonly maximum: number | null;
}

/**
 * Whole numbers of stations by priority values: the exact best split of a whole number of stations.
 *
 * Every stratum starts with its minimum; each further station goes where weight / sqrt(k (k + 1)) is greatest, k
 * being the stations already there. No other whole split of the same number has a smaller sum of weight^2 / n.
 * Equal priorities go to the stratum named first. A stratum of weight zero keeps its minimum while others can take more.
 * Throws when a minimum is below 1, or the number is below the minima or above the maxima together.
 * Source: Wright 2012 (exact optimal allocation; from memory); checked against every possible split.
 */
export function priorityAllocation(claims: readonly Claim[], stations: number): readonly number[] {
  const given = claims.map((claim) => claim.minimum);
  let left = stations - given.reduce((total, n) => total + n, 0);
  if (left < 0 || given.some((n) => !(n >= 1))) {
    throw new Error('priorityAllocation requires minima of at least 1 that fit the number of stations');
  }
  for (; left > 0; left--) {
    const next = firstInPriority(claims, given);
    if (next === null) throw new Error('priorityAllocation requires room for every station');
    given[next]!++;
  }
  return given;
}

/** The stratum that gets the next station; null when all are full. */
export function firstInPriority(claims: readonly Claim[], given: readonly number[]): number | null {
  let best: number | null = null;
  let greatest = -1;
  claims.forEach((claim, h) => {
    const k = given[h]!;
    if (claim.maximum !== null && k >= claim.maximum) return;
    const priority = claim.weight / Math.sqrt(k * (k + 1));
    // Beyond rounding: two strata that are alike must not be told apart by the order of a sum.
    if (priority > greatest * (1 + 1e-12)) {
      best = h;
      greatest = priority;
    }
  });
  return best;
}
