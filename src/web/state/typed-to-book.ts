/** From the typed cells to what the book takes: what is still in the way, and the queue to it. */

import type { Survey } from '../../survey/words.ts';
import { type Sheet, savedSchema } from '../../tasks/sheets/sheet-schemas.ts';
import type { AddWordsRequest } from '../../tasks/sheets/survey-schemas.ts';
import {
  cannotBeRead,
  type ReadingTools,
  sheetOfTyped,
  type TypedSheet,
} from '../../tasks/sheets/typed-sheet.ts';
import { daysAround, isDayUnread, stationAsWritten } from '../../tasks/sheets/written-station.ts';
import { addToQueue } from '../offline/sender.svelte.ts';
import type { Words } from '../words/en.ts';
import type { BeltReader } from './belt-reader.ts';
import { asked } from './book.svelte.ts';
import { newId } from './new-id.ts';
import type { OpenedSheet } from './open-sheet.ts';

export interface SheetFrame {
  readonly before: Sheet | null;
  readonly tools: ReadingTools;
  readonly reader: BeltReader;
  readonly words: Words['sheets'];
  /** Days are read beside its first and last day. */
  readonly survey: Survey;
}

/** The sheet as far as it can be read now. */
export function sheetNow(typed: TypedSheet, { before, tools, reader, words, survey }: SheetFrame): Sheet {
  const names = { ...words.head, ...words.fields };
  const station = stationAsWritten(typed.station, typed.written ?? {}, { survey, names });
  return sheetOfTyped({ ...typed, station }, before, { tools, newId, readingOf: reader.belt });
}

interface Saver {
  readonly stationId: string;
  readonly who: string;
  /** Station codes of this survey and whose they are. */
  readonly taken: ReadonlyMap<string, string>;
}

/** The whole sheet, or the sentence that says what is in the way. */
export function readySheet(
  typed: TypedSheet,
  { stationId, who, taken }: Saver,
  frame: SheetFrame,
): { readonly sheet: Sheet } | { readonly message: string } {
  const { words, reader, survey } = frame;
  const code = typed.station.code.trim();
  const owner = taken.get(code);
  if (code === '') return { message: words.needsCode };
  if (owner !== undefined && owner !== stationId) return { message: words.codeTaken(code) };
  if (who === '') return { message: words.needsWho };
  // A station without its day is in no survey: the one thing that is not kept for later.
  if (isDayUnread(typed.written?.date ?? '', daysAround(typed.station, survey)))
    return { message: words.needsDay };
  if (typed.belts.some((belt) => cannotBeRead(reader.belt(belt)))) return { message: words.cannotSave };
  const station = { ...typed.station, code, recorder: typed.station.recorder ?? who };
  return { sheet: sheetNow({ ...typed, station }, frame) };
}

/** Resolves when the sheet is on this disk, in place of its draft. */
export async function queueSheet(
  { surveyId, stationId, base, key, replaces }: OpenedSheet,
  sheet: Sheet,
  { who, why }: { readonly who: string; readonly why: string },
): Promise<void> {
  const requestId = newId();
  await addToQueue(
    {
      requestId,
      surveyId,
      stationId,
      stationCode: sheet.station.code,
      request: { requestId, base, who, why, sheet },
      typedAt: new Date().toISOString(),
      state: 'waiting',
      message: null,
      conflict: null,
    },
    { draft: key, request: replaces ?? undefined },
  );
}

/** Asks the book to know a species by this name; null when it does, else why not ("" when nobody answered). */
export async function addSpecies(surveyId: string, name: string, who: string): Promise<string | null> {
  const unknown = { group: null, code: null, commonName: null, localName: null, aliases: [], habitats: [] };
  const ranges = { minLengthMm: null, maxLengthMm: null, depthMinM: null, depthMaxM: null };
  const species = [{ id: newId(), name, ...unknown, ...ranges }];
  const body: AddWordsRequest = { requestId: newId(), base: null, who, strata: [], species, targets: [] };
  const answer = await asked(`/api/surveys/${surveyId}/words`, savedSchema, { method: 'POST', body });
  if (answer.state === 'ok') return null;
  return answer.state === 'refused' ? answer.message : '';
}
