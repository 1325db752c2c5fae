import { type SeededRandom, seededRandom } from '../../maths/random.ts';

/**
 * Chance of its own for each stratum, from the seed of the plan and the name of the stratum.
 *
 * A stratum added, dropped or moved in the list then leaves the draws of the others as they were.
 * The name is folded by FNV-1a (Fowler, Noll and Vo, public domain; from memory).
 */
export function stratumRandom(seed: number, stratum: string): SeededRandom {
  let folded = 0x811c9dc5;
  for (let i = 0; i < stratum.length; i++) folded = Math.imul(folded ^ stratum.charCodeAt(i), 0x01000193);
  return seededRandom(folded ^ Math.imul(seed + 1, 0x9e3779b1));
}
