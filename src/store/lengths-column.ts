/**
 * The measured lengths of a tally as one column of JSON: [[lengthMm, n], …], or
 * [lengthMm, n, measure, photo] where one of the two is known. A million animals are imported
 * with their tallies this way; the view `lengths` unfolds the column for people.
 */

import type { Length } from '../survey/words.ts';

type LengthPair = readonly [lengthMm: number, n: number, measure?: Length['measure'], photo?: string | null];

export function lengthsColumn(lengths: readonly Length[]): string {
  let text = '[';
  for (const { lengthMm, n, measure, photo } of lengths) {
    if (text.length > 1) text += ',';
    // By hand, because JSON.stringify on a million small lists is half the time of an import.
    text += `[${lengthMm},${n}`;
    if (measure !== null || photo !== null) text += `,${JSON.stringify(measure)},${JSON.stringify(photo)}`;
    text += ']';
  }
  return `${text}]`;
}

export function lengthsOf(column: string): Length[] {
  if (column === '[]') return [];
  const pairs: readonly LengthPair[] = JSON.parse(column);
  return pairs.map((pair) => ({
    lengthMm: pair[0],
    n: pair[1],
    measure: pair[2] ?? null,
    photo: pair[3] ?? null,
  }));
}
