/** Finds a sheet to type in: its draft, else what waits for the book, else what the book says, else a new one. */

import { unknownStation } from '../../survey/unknown-station.ts';
import type { Station } from '../../survey/words.ts';
import { type Sheet, type SheetInBook, sheetInBookSchema } from '../../tasks/sheets/sheet-schemas.ts';
import { speciesIndex, spokenName } from '../../tasks/sheets/species-ranking.ts';
import type { SurveyWords } from '../../tasks/sheets/survey-schemas.ts';
import {
  type ReadingTools,
  type TypedBelt,
  type TypedSheet,
  typedOfSheet,
} from '../../tasks/sheets/typed-sheet.ts';
import { draftOf } from '../offline/drafts.ts';
import { addressOf, queueNow } from '../offline/queue.ts';
import { askOrKept } from './book.svelte.ts';
import { newId } from './new-id.ts';

export interface OpenedSheet {
  readonly key: string;
  readonly surveyId: string;
  readonly stationId: string;
  readonly base: string | null;
  readonly before: Sheet | null;
  readonly typed: TypedSheet;
  /** When there was a draft. */
  readonly draftFrom: string | null;
  /** A request that was refused and is replaced by the next save. */
  readonly replaces: string | null;
}

export interface SheetAddress {
  readonly surveyId: string;
  readonly stationId: string;
  readonly kind: 'first' | 'new' | 'again';
}

/** Null when the sheet is in the book and cannot be had now. */
export async function openSheet(
  { surveyId, stationId, kind }: SheetAddress,
  words: SurveyWords,
  likeLast: Partial<Station>,
): Promise<OpenedSheet | null> {
  const key = kind === 'again' ? `${stationId}/again` : stationId;
  const draft = await draftOf(key);
  if (draft !== undefined)
    return { ...draft, draftFrom: draft.changedAt, replaces: await refusedOf(stationId) };
  const place = { key, surveyId, stationId, draftFrom: null };
  const standing = await standingSheet(surveyId, stationId);
  if (standing === null) {
    if (kind !== 'new') return null;
    const typed = newSheet(surveyId, stationId, words, likeLast);
    return { ...place, base: null, before: null, typed, replaces: null };
  }
  const { base, sheet, replaces } = standing;
  const tools = readingTools(words);
  const nameOf = namer(words, tools);
  const typed = typedOfSheet(sheet, tools.unit, nameOf);
  const shown = kind === 'again' ? emptied(typed) : withRoom(typed);
  return { ...place, base, before: sheet, typed: shown, replaces };
}

export function readingTools(words: SurveyWords): ReadingTools {
  const index = speciesIndex(words.species, new Set(words.targets));
  return { index, unit: words.protocol?.lengthUnit ?? 'mm' };
}

export function namer(words: SurveyWords, { index }: ReadingTools): (speciesId: string) => string {
  const species = new Map(words.species.map((one) => [one.id, one]));
  return (speciesId) => {
    const found = species.get(speciesId);
    return found === undefined ? speciesId : spokenName(found, index);
  };
}

export function emptyLine() {
  return { id: newId(), species: '', lengths: '', more: '' };
}

export function newBelt(code: string, words: SurveyWords): TypedBelt {
  const { lengthM = null, widthM = null } = words.protocol ?? {};
  return {
    id: newId(),
    code,
    swim: 1,
    status: 'done',
    lengthM: lengthM === null ? '' : String(lengthM),
    widthM,
    reason: '',
    noneSeen: false,
    note: '',
    lines: [emptyLine()],
    list: '',
  };
}

interface Standing {
  readonly base: string | null;
  readonly sheet: Sheet;
  readonly replaces: string | null;
}

async function standingSheet(surveyId: string, stationId: string): Promise<Standing | null> {
  const queued = (await queueNow()).filter((one) => one.stationId === stationId).at(-1);
  if (queued !== undefined) {
    const { requestId, request, state } = queued;
    // A refused request is mended and sent anew; a waiting one is followed.
    return state === 'waiting'
      ? { base: requestId, sheet: request.sheet, replaces: null }
      : { base: request.base, sheet: request.sheet, replaces: requestId };
  }
  const book: SheetInBook | null = await askOrKept(addressOf({ surveyId, stationId }), sheetInBookSchema);
  return book === null ? null : { base: book.revision, sheet: book.sheet, replaces: null };
}

async function refusedOf(stationId: string): Promise<string | null> {
  const found = (await queueNow()).find((one) => one.stationId === stationId && one.state === 'refused');
  return found?.requestId ?? null;
}

function newSheet(
  surveyId: string,
  stationId: string,
  words: SurveyWords,
  likeLast: Partial<Station>,
): TypedSheet {
  const belts = Array.from({ length: words.protocol?.transectsPerStation ?? 1 }, (_, i) =>
    newBelt(String(i + 1), words),
  );
  const [firstStratum] = words.strata;
  const station: Station = {
    ...unknownStation,
    id: stationId,
    surveyId,
    code: '',
    stratumId: firstStratum?.id ?? '',
    date: new Date().toLocaleDateString('sv-SE'),
    ...likeLast,
  };
  return { station, belts };
}

function withRoom(typed: TypedSheet): TypedSheet {
  return { ...typed, belts: typed.belts.map((belt) => ({ ...belt, lines: [...belt.lines, emptyLine()] })) };
}

/** For the second typing: the station and its belts stand, the counts are to be typed again. */
function emptied(typed: TypedSheet): TypedSheet {
  const belts = typed.belts.map((belt) => ({
    ...belt,
    status: 'done' as const,
    reason: '',
    noneSeen: false,
    lines: [emptyLine()],
  }));
  return { ...typed, belts };
}
