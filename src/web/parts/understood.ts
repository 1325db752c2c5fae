/** What was understood, in words, beside what was typed. */

import { measuredIn } from '../../tasks/sheets/length-stream.ts';
import type { SpeciesGroup } from '../../tasks/sheets/running-list.ts';
import { animalsIn, type BeltReading } from '../../tasks/sheets/typed-sheet.ts';
import type { Words } from '../words/en.ts';

type UnderstoodWords = Pick<Words['sheets'], 'understood' | 'zero' | 'totals'>;

/** "3 animals, 182-240 mm, 12 more counted"; empty where there is no number yet. */
export function understood({ lengths, more, writtenZero }: SpeciesGroup, words: UnderstoodWords): string {
  const measured = measuredIn(lengths);
  if (measured === 0 && !more) return writtenZero ? words.zero : '';
  const mm = lengths.map((one) => one.lengthMm);
  return words.understood(measured, Math.min(...mm), Math.max(...mm), more ?? 0);
}

/** Of the whole belt. */
export function totalsOf({ groups }: BeltReading, words: UnderstoodWords): string {
  return words.totals(
    groups.reduce((sum, group) => sum + animalsIn(group), 0),
    groups.reduce((sum, group) => sum + measuredIn(group.lengths), 0),
    groups.filter((group) => animalsIn(group) > 0).length,
  );
}
