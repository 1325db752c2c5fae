/** Makes the text of one of our columns out of a row of somebody else's file. */

import { readDayInForm, readDayRange } from './calendar.ts';
import { readDecimal } from './decimal.ts';
import type { LookUp, MakeLookUp } from './look-up.ts';
import type { ColumnSource, FromSource } from './mapping-schema.ts';
import { numberByRule } from './written-number.ts';

export type Take = (cells: readonly string[]) => string;

/** Gives the position of one of their columns. */
export type PositionOf = (column: string) => number;

/** Numbers that were given, by rule and group: shared by all tables of a sheet, so that a swim has one number in all. */
export type Numbers = Map<string, Map<string, number>>;

/** What a column source needs to know of its file, and whom to tell what it did. */
export interface SourceContext {
  /** Texts that mean nothing was written. */
  readonly missing: readonly string[];
  readonly positionOf: PositionOf;
  readonly makeLookUp: MakeLookUp;
  readonly numbers: Numbers;
  /** A cell was read by a rule of the mapping that changes more than a name. */
  readonly byRule: (rule: string) => void;
  /** A word stands in no list. */
  readonly notListed: (word: string, list: string) => void;
}

export function takeFrom(source: ColumnSource, context: SourceContext): Take {
  if (typeof source === 'string') return cellOf(source, context.missing, context.positionOf);
  if ('constant' in source) return () => source.constant;
  if ('join' in source) return joined(source, context);
  if ('number' in source) return numbered(source, context);
  if ('lookUp' in source) return lookedUp(source, context);
  return fromCells(source, context);
}

/** Constants join what was written; where nothing was, there is nothing to join. */
function joined(source: Extract<ColumnSource, { join: unknown }>, context: SourceContext): Take {
  const parts = source.join.map((part) => takeFrom(part, context));
  const isConstant = source.join.map((part) => typeof part === 'object' && 'constant' in part);
  return (cells) => {
    const texts = parts.map((part) => part(cells));
    if (texts.every((text, i) => text === '' || isConstant[i])) return '';
    return texts.filter((text) => text !== '').join(source.separator);
  };
}

/** Their columns that a source needs. */
export function columnsOf(source: ColumnSource): readonly string[] {
  if (typeof source === 'string') return [source];
  if ('constant' in source) return [];
  if ('join' in source) return source.join.flatMap(columnsOf);
  if ('number' in source) return [...source.number, ...source.within];
  if ('lookUp' in source) return Object.values(source.lookUp.match);
  return [source.from, ...(source.otherwise ?? [])];
}

export function cellOf(column: string, missing: readonly string[], positionOf: PositionOf): Take {
  const index = positionOf(column);
  const blanks = new Set(missing.map((text) => text.trim()));
  return (cells) => {
    const text = (cells[index] ?? '').trim();
    return blanks.has(text) ? '' : text;
  };
}

/** Divers, watches, sheets of paper: whatever tells one swim from another gets numbers, in the order of the rows. */
function numbered(source: Extract<ColumnSource, { number: unknown }>, context: SourceContext): Take {
  const keyOf = (columns: readonly string[]) => {
    const takes = columns.map((column) => cellOf(column, [], context.positionOf));
    return (cells: readonly string[]) => {
      const key = takes.map((take) => take(cells)).join('\u0000');
      return source.ignoreCase ? key.toLowerCase() : key;
    };
  };
  const [groupOf, memberOf] = [keyOf(source.within), keyOf(source.number)];
  const rule = JSON.stringify(source);
  return (cells) => {
    const key = `${rule}\u0000${groupOf(cells)}`;
    const group = context.numbers.get(key) ?? new Map<string, number>();
    context.numbers.set(key, group);
    const member = memberOf(cells);
    const number = group.get(member) ?? group.size + 1;
    group.set(member, number);
    return String(number);
  };
}

function lookedUp(source: Extract<ColumnSource, { lookUp: unknown }>, context: SourceContext): Take {
  const { match, take, ...list } = source.lookUp;
  const find = context.makeLookUp({ list, by: Object.keys(match), take, ignoreCase: source.ignoreCase });
  const takes = Object.values(match).map((column) => cellOf(column, [], context.positionOf));
  const ours = new Map(Object.entries(source.values ?? {}));
  return (cells) => {
    const key = takes.map((one) => one(cells));
    const text = find?.(key);
    if (text === undefined) context.notListed(key.join(', '), list.file);
    return ours.get(text ?? '') ?? text ?? '';
  };
}

function fromCells(source: FromSource, context: SourceContext): Take {
  const missing = [...context.missing, ...(source.missing ?? [])];
  const cells = [source.from, ...(source.otherwise ?? [])].map((column) =>
    cellOf(column, missing, context.positionOf),
  );
  const steps = stepsOf(source, context);
  return (row) => {
    const text = firstWritten(cells, row);
    return text === '' ? '' : steps.reduce((written, step) => (written === '' ? '' : step(written)), text);
  };
}

function firstWritten(cells: readonly Take[], row: readonly string[]): string {
  for (const cell of cells) {
    const text = cell(row);
    if (text !== '') return text;
  }
  return '';
}

type Step = (text: string) => string;

/** First the part that is meant, then our word for it, then the day or the number. */
function stepsOf(source: FromSource, context: SourceContext): Step[] {
  const steps: Step[] = [];
  if (source.pick !== undefined) steps.push(picked(source.pick));
  if (source.values !== undefined || source.synonyms !== undefined) steps.push(ourWord(source, context));
  // A day or number that fits no form stays as written, so that the problem shows it.
  const { dateForms, dateRange, approximate } = source;
  if (dateForms !== undefined) steps.push((text) => firstForm(text, dateForms) ?? text);
  if (dateRange !== undefined) {
    const rule = `dateRange: ${dateRange}`;
    steps.push((text) => told(readDayRange(text)?.[dateRange], text, rule, context));
  }
  if (approximate !== undefined) {
    steps.push((text) => told(numberByRule(text, approximate), text, 'approximate', context));
  }
  return steps;
}

function picked(pick: string): Step {
  const pattern = new RegExp(pick, 'u');
  return (text) => {
    const parts = pattern.exec(text);
    return parts?.[1] ?? parts?.[0] ?? '';
  };
}

/** The inline list first, then the file; a word in neither stays. */
function ourWord(source: FromSource, context: SourceContext): Step {
  const fold = (text: string) => (source.ignoreCase ? text.toLowerCase() : text);
  const ours = new Map(Object.entries(source.values ?? {}).map(([word, our]) => [fold(word), our]));
  const find = synonymsOf(source, context);
  const lists = source.synonyms?.file ?? 'values';
  return (text) => {
    const word = ours.get(fold(text)) ?? find?.([text]);
    if (word === undefined && source.unlisted === 'ask') context.notListed(text, lists);
    return word ?? text;
  };
}

function synonymsOf({ synonyms, ignoreCase }: FromSource, context: SourceContext): LookUp | null {
  if (synonyms === undefined) return null;
  const { from, to, ...list } = synonyms;
  return context.makeLookUp({ list, by: [from], take: to, ignoreCase });
}

function firstForm(text: string, forms: readonly string[]): string | null {
  for (const form of forms) {
    const day = readDayInForm(text, form);
    if (day !== null) return day;
  }
  return null;
}

function told(read: string | null | undefined, text: string, rule: string, context: SourceContext): string {
  if (read === null || read === undefined) return text;
  context.byRule(rule);
  return read;
}

/**
 * The power of ten between a unit of theirs and the unit our column is in; null when the two do not measure
 * the same thing. Our unit is the ending of the column's name.
 */
export function shiftBetween(unit: string, ourColumn: string): number | null {
  const ours = /_(mm|cm|m|ha|g)$/.exec(ourColumn)?.[1];
  return ours === undefined ? null : (powers[ours]?.[unit] ?? null);
}

const powers: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mm: { mm: 0, cm: 1, m: 3 },
  cm: { mm: -1, cm: 0, m: 2 },
  m: { mm: -3, cm: -2, m: 0, km: 3 },
  ha: { m2: -4, ha: 0, km2: 2 },
  g: { g: 0, kg: 3 },
};

/** A number with its own unit, such as `18 cm` or `180mm`, as a number in the unit of our column; null when it has none that fits. */
export function numberWithUnit(text: string, ourColumn: string): string | null {
  const parts = /^([+-]?[\d.]+)\s*([a-z]+2?)\.?$/i.exec(text.trim());
  const shift = parts === null ? null : shiftBetween(parts[2]!.toLowerCase(), ourColumn);
  const value = shift === null ? null : readDecimal(parts![1]!, shift);
  return value === null ? null : String(value);
}
