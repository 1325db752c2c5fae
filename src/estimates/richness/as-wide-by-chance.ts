import { seededRandom } from '../../maths/random.ts';
import { logChoose } from './hill-numbers.ts';

/**
 * Share of shuffles in which the richest and the poorest scope lie at least as far apart, at equal effort.
 *
 * Question: may the scopes have the same species? Whole stations are dealt out anew to scopes of the same sizes, and
 * the range of the species at the smallest number of stations is set against the range found, (c + 1)/(B + 1).
 * The range over all scopes allows for their number; whole stations keep the clumping.
 *
 * Assumes that, if the scopes were alike, stations could be exchanged between them. It answers whether they differ at
 * all, not which of several pairs does. Null for fewer than 2 scopes. 999 shuffles from a fixed seed, so
 * that the answer is the same tomorrow. Source: permutation test (from memory of Davison and Hinkley 1997, ch. 4).
 */
export function asWideAsByChance(scopes: readonly (readonly (readonly number[])[])[]): number | null {
  if (scopes.length < 2) return null;
  const sizes = scopes.map((stations) => stations.length);
  const missed = missedBy(sizes);
  const present = scopes.flat().map((row) => row.flatMap((count, species) => (count > 0 ? [species] : [])));
  const species = scopes[0]?.[0]?.length ?? 0;
  const found = rangeOf(present, sizes, species, missed);
  const random = seededRandom(1);
  let asWide = 0;
  for (let shuffle = 0; shuffle < shuffles; shuffle++) {
    for (let i = present.length - 1; i > 0; i--) {
      const j = random.below(i + 1);
      [present[i], present[j]] = [present[j]!, present[i]!];
    }
    // Equal ranges may differ by rounding.
    if (rangeOf(present, sizes, species, missed) >= found - 1e-9) asWide++;
  }
  return (asWide + 1) / (shuffles + 1);
}

const shuffles = 999;

/** For each scope, the chance that the common number of stations misses a species found at 0, 1, 2 … of its stations. */
function missedBy(sizes: readonly number[]): readonly (readonly number[])[] {
  const some = Math.min(...sizes);
  return sizes.map((all) =>
    Array.from({ length: all + 1 }, (_, at) => Math.exp(logChoose(all - at, some) - logChoose(all, some))),
  );
}

function rangeOf(
  present: readonly (readonly number[])[],
  sizes: readonly number[],
  species: number,
  missed: readonly (readonly number[])[],
): number {
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  let from = 0;
  for (const [scope, size] of sizes.entries()) {
    const at = new Array<number>(species).fill(0);
    for (let i = from; i < from + size; i++) for (const one of present[i]!) at[one]!++;
    from += size;
    const found = at.reduce((all, stations) => all + 1 - missed[scope]![stations]!, 0);
    low = Math.min(low, found);
    high = Math.max(high, found);
  }
  return high - low;
}
