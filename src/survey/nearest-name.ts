/** Finds the name a person most likely meant. */

import { distance } from 'fastest-levenshtein';

/**
 * The known name nearest to the one that was written, or null when none is near enough to be worth asking about.
 *
 * Capitals, spaces, punctuation and accents do not count: "Length MM" is as near to "length_mm" as can be. Of the
 * letters and digits that remain two may differ, one in names of three or four, none in shorter ones (S1 is not a
 * misspelt S2). Two letters exchanged are two that differ. More than two would take one species of a genus for
 * another. The bounds are our own choice; the distance is the edit distance of Levenshtein (1966, from memory).
 * Of equally near names the first one listed wins, so the answer never depends on chance.
 */
export function nearestName(name: string, known: Iterable<string>): string | null {
  const written = bare(name);
  if (written === '') return null;
  let nearest: string | null = null;
  let nearestEdits = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const other = bare(candidate);
    const bound = editsAllowed(Math.max(written.length, other.length));
    if (Math.abs(other.length - written.length) > bound) continue;
    const edits = distance(written, other);
    if (edits > bound || edits >= nearestEdits) continue;
    nearest = candidate;
    nearestEdits = edits;
  }
  return nearest;
}

/** Letters and digits only, small, without accents: what is left when typing habits are taken away. */
function bare(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

function editsAllowed(letters: number): number {
  if (letters < 3) return 0;
  return letters < 5 ? 1 : 2;
}
