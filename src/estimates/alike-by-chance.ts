import type { Tally } from '../survey/words.ts';

/**
 * Chance that another belt of the same richness shows the same counts and the same lengths in the same order.
 *
 * Two belts that each expect c animals both count c with chance 1 / (2 sqrt(pi c)) (Poisson with that mean; the
 * richest case, since belts of other stations expect other numbers). Two lengths are equal with the chance given for
 * the species, the sum of squared shares of its lengths. Species are taken as independent, and the species that
 * neither belt has are given nothing: both make the chance too high, so fewer pairs are asked about.
 * Source: our own screening rule; the Poisson match by Stirling's formula.
 */
export function alikeByChance(
  tallies: ReadonlyMap<string, Pick<Tally, 'count' | 'lengths'>>,
  lengthRepeats: ReadonlyMap<string, number>,
): number {
  let chance = 1;
  for (const [speciesId, { count, lengths }] of tallies) {
    if (count === 0) continue;
    // A row of several equal animals is one match, not several.
    const repeat = Math.max(leastRepeat, lengthRepeats.get(speciesId) ?? 1);
    chance *= repeat ** lengths.length / (2 * Math.sqrt(Math.PI * count));
  }
  return chance;
}

/** The same with the least chance that two lengths are equal: no belt can be alike by less. One pass, no lengths read. */
export function leastChance(tallies: ReadonlyMap<string, Pick<Tally, 'count' | 'lengths'>>): number {
  let chance = 1;
  for (const { count, lengths } of tallies.values()) {
    if (count > 0) chance *= leastRepeat ** lengths.length / (2 * Math.sqrt(Math.PI * count));
  }
  return chance;
}

/** As if 500 different lengths were all equally common: more spread than any species has in millimetres. */
const leastRepeat = 0.002;
