/** Turns the text of one cell into a value, or says why it cannot. */

import { nearestName } from '../survey/nearest-name.ts';
import {
  dayOfSerial,
  dayReadings,
  likelyDay,
  readDay,
  readDayAsSerial,
  readDayRange,
  readPlainDay,
  readTime,
  timeOfSerial,
} from './calendar.ts';
import { withoutGuard } from './csv-text.ts';
import { readDecimal } from './decimal.ts';
import type { CommaHabit, DayHabit, Evidence } from './habits.ts';
import { maxCellLetters } from './limits.ts';
import { readList, splitCover } from './list-cell.ts';
import { readDegrees, readHalf } from './read-degrees.ts';
import { readNumber } from './read-number.ts';
import { type Reading, refused } from './refusal.ts';
import type { ColumnDefinition, CoverPart } from './table-columns.ts';

export type { Reading, Refusal } from './refusal.ts';

export type CellReader = (text: string) => Reading;

export interface CellReaderSettings {
  /** The cell's number is ten to this power of our unit: 1 for centimetres in a millimetre column. */
  readonly shift?: number;
  /** Day and time numbers of spreadsheets are understood; in text files the guard of `csv-text.ts` is taken off. */
  readonly inWorkbook?: boolean;
  /** Settled before the first cell is read: what commas mean, and which comes first of day and month. */
  readonly commas?: Evidence<CommaHabit> | null;
  readonly days?: Evidence<DayHabit> | null;
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
    const reading =
      text.length > maxCellLetters
        ? refused('cell-too-long', column, { letters: text.length, limit: maxCellLetters })
        : readCell(column, settings.inWorkbook ? text : withoutGuard(text), settings);
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
    case 'whole number': {
      const number = readNumber(column, kind, text, {
        shift: settings.shift ?? 0,
        commas: settings.commas?.habit() ?? null,
      });
      const axis = kind.is === 'number' ? kind.axis : undefined;
      return axis === undefined || number.refusal === null ? number : readDegrees(column, axis, text, number);
    }
    case 'position':
      return readHalf(column, kind.half, text);
    case 'date':
      return readDate(column, text, settings);
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

function readDate(column: ColumnDefinition, text: string, settings: CellReaderSettings): Reading {
  const day = readDay(text) ?? readPlainDay(text) ?? readDaySerial(text, settings);
  if (day !== null) return { value: day, refusal: null };
  const readings = dayReadings(text);
  if (readings !== null) return byHabit(readings, settings.days?.habit() ?? null, column, text);
  const range = readDayRange(text);
  if (range !== null) return refused('day-range', column, { first: range.first, last: range.last });
  return refused('not-a-date', column, {}, likelyDay(text) ?? readDayAsSerial(text));
}

/** The habit of the column decides; without one, only a day that reads the same both ways is no question. */
function byHabit(
  { dayFirst, monthFirst }: NonNullable<ReturnType<typeof dayReadings>>,
  habit: DayHabit | null,
  column: ColumnDefinition,
  text: string,
): Reading {
  const day = habit === 'D/M' ? dayFirst : habit === 'M/D' ? monthFirst : null;
  if (day !== null) return { value: day, refusal: null };
  if (dayFirst !== null && dayFirst === monthFirst) return { value: dayFirst, refusal: null };
  if (dayFirst === null && monthFirst === null) return refused('not-a-date', column, {}, likelyDay(text));
  const parameters: Record<string, string> = {};
  if (dayFirst !== null) parameters['dayFirst'] = dayFirst;
  if (monthFirst !== null) parameters['monthFirst'] = monthFirst;
  return refused('day-or-month-first', column, parameters);
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

/** A copy that stands alone: a piece cut from a file's text would keep the whole text in memory. */
function detached(text: string): string {
  return JSON.parse(JSON.stringify(text)) as string;
}
