/** Turns the text of one cell into a value, or says why it cannot. */

import type { Parameters, ProblemCode } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';
import { dayOfSerial, likelyDay, readDay, readTime, timeOfSerial } from './calendar.ts';
import { withoutGuard } from './csv-text.ts';
import { likelyDecimal, readDecimal } from './decimal.ts';
import { readList, splitCover } from './list-cell.ts';
import type { CellContent, ColumnDefinition, ColumnKind, CoverPart, NumberRange } from './table-columns.ts';

/** Why a cell was not understood; the caller adds the place. */
export interface Refusal {
  readonly code: ProblemCode;
  readonly parameters: Parameters;
  readonly suggestion: string | null;
}

/** Either a value or a refusal, never both. */
export interface Reading {
  readonly value: CellContent;
  readonly refusal: Refusal | null;
}

export type CellReader = (text: string) => Reading;

export interface CellReaderSettings {
  /** The cell's number is ten to this power of our unit: 1 for centimetres in a millimetre column. */
  readonly shift?: number;
  /** Day and time numbers of spreadsheets are understood; in text files the guard of `csv-text.ts` is taken off. */
  readonly inWorkbook?: boolean;
}

/**
 * Makes the reader of one column. Equal texts are read once and give the same value, so that a million
 * rows with the same few stations, species and lengths keep few strings and cost one look-up each.
 */
export function cellReader(column: ColumnDefinition, settings: CellReaderSettings = {}): CellReader {
  const known = new Map<string, Reading>();
  let lastWritten: string | null = null;
  let last: Reading;
  return (written) => {
    // The same name down the column is the rule: comparing costs less than a look-up.
    if (written === lastWritten) return last;
    const reading = known.get(written) ?? read(written);
    lastWritten = written;
    last = reading;
    return reading;
  };

  function read(written: string): Reading {
    const text = written.trim();
    const reading = readCell(column, settings.inWorkbook ? text : withoutGuard(text), settings);
    if (known.size < rememberedTexts) known.set(written, reading);
    return reading;
  }
}

const rememberedTexts = 100_000;

function readCell(column: ColumnDefinition, text: string, settings: CellReaderSettings): Reading {
  if (text === '') {
    return column.filled ? refused('missing-value', column) : { value: column.whenEmpty, refusal: null };
  }
  const kind = column.kind;
  switch (kind.is) {
    case 'text':
      return { value: detached(text), refusal: null };
    case 'number':
    case 'whole number':
      return readNumber(column, kind, text, settings.shift ?? 0);
    case 'date':
      return (
        found(readDay(text) ?? readDaySerial(text, settings)) ??
        refused('not-a-date', column, {}, likelyDay(text))
      );
    case 'time':
      return found(readTime(text) ?? readTimeSerial(text, settings)) ?? refused('not-a-time', column);
    case 'yes':
      return readYes(column, text);
    case 'one of':
      return readOption(column, kind.options, text);
    case 'list':
      return { value: readList(detached(text)), refusal: null };
    case 'cover':
      return readCover(column, detached(text));
  }
}

function found(value: string | null): Reading | null {
  return value === null ? null : { value, refusal: null };
}

function readNumber(
  column: ColumnDefinition,
  kind: NumberRange & { readonly is: ColumnKind['is'] },
  text: string,
  shift: number,
): Reading {
  const value = readDecimal(text, shift);
  if (value === null) return refused('not-a-number', column, {}, likelyDecimal(text));
  if (kind.is === 'whole number' && !Number.isInteger(value)) return refused('not-a-whole-number', column);
  if (isOutside(value, kind) || (kind.is === 'whole number' && !Number.isSafeInteger(value))) {
    return refused('number-out-of-range', column, { range: rangeInSigns(kind) });
  }
  return { value, refusal: null };
}

function isOutside(value: number, range: NumberRange): boolean {
  if (range.atLeast !== undefined && value < range.atLeast) return true;
  if (range.above !== undefined && value <= range.above) return true;
  return range.atMost !== undefined && value > range.atMost;
}

/** A range in signs that need no translation: `> 0`, `≥ 1`, `-90 … 90`. */
function rangeInSigns(range: NumberRange): string {
  if (range.atLeast !== undefined && range.atMost !== undefined) return `${range.atLeast} … ${range.atMost}`;
  if (range.above !== undefined) return `> ${range.above}`;
  return `≥ ${range.atLeast ?? 0}`;
}

function readDaySerial(text: string, settings: CellReaderSettings): string | null {
  const serial = settings.inWorkbook ? readDecimal(text) : null;
  return serial === null ? null : dayOfSerial(serial);
}

function readTimeSerial(text: string, settings: CellReaderSettings): string | null {
  const serial = settings.inWorkbook ? readDecimal(text) : null;
  return serial === null ? null : timeOfSerial(serial);
}

function readYes(column: ColumnDefinition, text: string): Reading {
  const answer = text.toLowerCase();
  if (yesWords.has(answer)) return { value: true, refusal: null };
  if (noWords.has(answer)) return { value: false, refusal: null };
  return refused('not-one-of', column, { options: 'yes, no' }, null);
}

const yesWords: ReadonlySet<string> = new Set(['yes', 'y', 'true', '1', 'x']);
const noWords: ReadonlySet<string> = new Set(['no', 'n', 'false', '0']);

function readOption(column: ColumnDefinition, options: readonly string[], text: string): Reading {
  const small = text.toLowerCase();
  const option = options.find((candidate) => candidate === small);
  if (option !== undefined) return { value: option, refusal: null };
  return refused('not-one-of', column, { options: options.join(', ') }, nearestName(text, options));
}

function readCover(column: ColumnDefinition, text: string): Reading {
  const cover: CoverPart[] = [];
  for (const item of readList(text)) {
    const part = splitCover(item);
    const percent = part === null ? null : readDecimal(part.percent.replace(/\s*%$/, ''));
    if (part === null || percent === null) return refused('cover-not-understood', column, { part: item });
    if (percent < 0 || percent > 100) return refused('number-out-of-range', column, { range: '0 … 100' });
    cover.push({ name: part.name, percent });
  }
  return { value: cover, refusal: null };
}

function refused(
  code: ProblemCode,
  column: ColumnDefinition,
  parameters: Parameters = {},
  suggestion: string | null = null,
): Reading {
  return { value: null, refusal: { code, parameters: { column: column.column, ...parameters }, suggestion } };
}

/** A copy that stands alone: a piece cut from a file's text would keep the whole text in memory. */
function detached(text: string): string {
  return JSON.parse(JSON.stringify(text)) as string;
}
