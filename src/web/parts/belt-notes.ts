/** Pencil notes of the program in the margin of a belt; none of them stops the next key. */

import { measuredIn } from '../../tasks/sheets/length-stream.ts';
import type { SpeciesGroup } from '../../tasks/sheets/running-list.ts';
import {
  type BeltReading,
  isBlank,
  isWithoutNumber,
  type TypedBelt,
} from '../../tasks/sheets/typed-sheet.ts';
import type { Words } from '../words/en.ts';

export interface NoteFrame {
  readonly nameOf: (speciesId: string) => string;
  /** How many the protocol measures; null where it does not say. */
  readonly measureFirst: number | null;
  /** Where the cursor is; empty when it is in no cell of this belt. */
  readonly activeCell: string;
  /** The cursor was in this belt and went on. */
  readonly left: boolean;
  readonly words: Words['sheets'];
}

export function beltNotes(belt: TypedBelt, reading: BeltReading, frame: NoteFrame): readonly string[] {
  const { left, words } = frame;
  const found = reading.groups.flatMap((group) => notesOf(group, isBeingTyped(group, belt, frame), frame));
  if (reading.unread.length > 0) found.push(words.lengthBeforeSpecies(reading.unread.join(' ')));
  if (left && isBlank(belt, reading)) found.push(words.blank(belt.code));
  return [...new Set(found)];
}

function notesOf(
  group: SpeciesGroup,
  beingTyped: boolean,
  { nameOf, measureFirst, words }: NoteFrame,
): string[] {
  const found: string[] = [];
  const written = group.written.trim();
  const who = group.speciesId === null ? written : nameOf(group.speciesId);
  if (group.speciesId === null && !beingTyped) found.push(words.unknownSpecies(written));
  if (group.match === 'near') found.push(words.nearSpecies(written, who));
  if (group.unread.length > 0) found.push(`${who}: ${words.noLength(group.unread.join(' '))}`);
  if (isWithoutNumber(group) && !beingTyped) found.push(words.withoutNumber(written));
  const limit = measureFirst === null ? null : limitNote(group, measureFirst, words);
  if (limit !== null) found.push(`${who}: ${limit}`);
  return found;
}

function limitNote({ lengths, more }: SpeciesGroup, limit: number, words: Words['sheets']): string | null {
  const measured = measuredIn(lengths);
  if (measured > limit) return words.overLimit(measured, limit);
  return measured === limit && !more ? words.nowCount(measured) : null;
}

/** A word that is not finished is not asked about. */
function isBeingTyped(group: SpeciesGroup, belt: TypedBelt, { activeCell }: NoteFrame): boolean {
  if (activeCell === '') return false;
  if (activeCell === `${belt.id}/list`) return true;
  return belt.lines.some((line) => line.species === group.written && activeCell.startsWith(line.id));
}
