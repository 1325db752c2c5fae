/** Plans how one sheet of somebody else's is read: which of their cells fill which of our columns. */

import {
  columnsOf,
  type Numbers,
  numberWithUnit,
  type PositionOf,
  shiftBetween,
  type Take,
  takeFrom,
} from './column-source.ts';
import { readDecimal } from './decimal.ts';
import { type CommaHabit, commaEvidence, type Evidence } from './habits.ts';
import type { MakeLookUp } from './look-up.ts';
import type { ColumnSource, Source, TableFill } from './mapping-schema.ts';
import type { ProblemList } from './problem-list.ts';
import { cellReader } from './read-cell.ts';
import type { Fill, SheetJob } from './read-sheet.ts';
import { absentColumn, habitsOf, type PlannedColumn, positionsOf, reportMissingColumn } from './row-plan.ts';
import { allOf, askRule, leaveOutRule } from './row-rules.ts';
import type { Sheet } from './sheets.ts';
import { alternativeOf, type ColumnDefinition } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';
import { type ToldByRules, toldByRules } from './told-by-rules.ts';

/** Where a source is read: its sheet, whom to tell, and the lists beside it. */
export interface SourcePlace {
  readonly sheet: Sheet;
  readonly problems: ProblemList;
  readonly makeLookUp: MakeLookUp;
}

export function sourceJob(source: Source, { sheet, problems, makeLookUp }: SourcePlace): SheetJob {
  const theirs = theirColumns(source);
  const isThere = (column: string, positions: ReadonlyMap<string, number>) =>
    numberedPosition(column) !== null || positions.has(column.trim().toLowerCase());
  return {
    sheet,
    headerRow: source.headerRow ?? null,
    lastRow: source.lastRow ?? null,
    isHeader(cells) {
      const names = new Map(cells.map((cell, i) => [cell.trim().toLowerCase(), i]));
      return theirs.every((column) => isThere(column, names));
    },
    plan(header) {
      const positions = positionsOf(header, sheet, problems);
      const missing = theirs.filter((column) => !isThere(column, positions));
      for (const column of missing) reportMissingColumn(column, header, sheet, problems);
      const positionOf: PositionOf = (column) =>
        numberedPosition(column) ?? positions.get(column.trim().toLowerCase()) ?? -1;
      const told = toldByRules(sheet, problems);
      const commas = sheet.mayHoldCommas() ? commaEvidence(statedCommas(source)) : null;
      const numbers = new Map();
      const place = { source, sheet, problems, makeLookUp, positionOf, told, commas, numbers };
      const fills = source.fill.map((fill) => planFill(fill, place));
      if (missing.length > 0 || fills.includes(null)) return null;
      return {
        leaveOut: source.leaveOut.map((rule) => leaveOutRule(rule, source.missing, positionOf)),
        asks: source.ask.map((rule) => askRule(rule, source.missing, positionOf)),
        fills: fills as Fill[],
        columns: new Set(theirs.map(positionOf)),
        afterHabits: told.forget,
        afterRows: told.report,
      };
    },
  };
}

/** `#3` is their third column, whatever its name, and if it has none. */
function numberedPosition(column: string): number | null {
  const number = /^#([1-9]\d{0,3})$/.exec(column.trim())?.[1];
  return number === undefined ? null : Number(number) - 1;
}

function statedCommas({ decimal }: Source): CommaHabit | null {
  if (decimal === undefined) return null;
  return decimal === 'comma' ? 'decimal' : 'thousands';
}

/** All that planning a column needs. */
interface FillPlace extends SourcePlace {
  readonly source: Source;
  readonly positionOf: PositionOf;
  readonly told: ToldByRules;
  readonly commas: Evidence<CommaHabit> | null;
  readonly numbers: Numbers;
}

/** Every column of theirs that the source speaks of, each once. */
function theirColumns(source: Source): string[] {
  const rules = [
    ...source.leaveOut,
    ...source.ask,
    ...source.fill.flatMap((fill) => [...fill.leaveOut, ...fill.where]),
  ];
  const inRules = rules.flatMap((rule) => ('repeats' in rule ? rule.repeats : [rule.column]));
  const inColumns = source.fill.flatMap((fill) => Object.values(fill.columns).flatMap(columnsOf));
  const shown = source.ask.flatMap((rule) => rule.show ?? []);
  return [...new Set([...inColumns, ...inRules, ...shown])];
}

function planFill(fill: TableFill, place: FillPlace): Fill | null {
  const { source, positionOf } = place;
  const plan = tableDefinitions[fill.table].columns.map((definition) => planMapped(definition, fill, place));
  if (plan.includes(null)) return null;
  return {
    table: fill.table,
    plan: plan as PlannedColumn[],
    concerns: fill.where.length === 0 ? null : allOf(fill.where, source.missing, positionOf),
    leaveOut: fill.leaveOut.map((rule) => leaveOutRule(rule, source.missing, positionOf)),
    repeats: repeatsOf(fill),
  };
}

function repeatsOf(fill: TableFill): Fill['repeats'] {
  if (fill.distinct) return { are: 'the same', firstOf: fill.firstOf };
  return { are: fill.add ? 'added' : 'refused' };
}

function planMapped(definition: ColumnDefinition, fill: TableFill, place: FillPlace): PlannedColumn | null {
  const { source, sheet, problems, told } = place;
  const other = definition.alternative;
  const first = fill.columns[definition.column];
  const second = other === undefined ? undefined : fill.columns[other.column];
  const theirs = first ?? second;
  if (theirs === undefined) {
    if (!definition.required) return absentColumn(definition);
    reportMissingColumn(definition.column, Object.keys(fill.columns), sheet, problems);
    return null;
  }
  const ours = first === undefined ? alternativeOf(definition)! : definition;
  const ownShift = first === undefined ? other!.shift : 0;
  const shift = shiftOf(theirs, ours.column, sheet, problems);
  if (shift === null) return null;
  const usual = habitsOf(ours, place.commas);
  // A day that fits none of the forms the mapping names is a question, whatever else the column shows.
  const habits = hasDayForms(theirs) ? { ...usual, days: null } : usual;
  const read = cellReader(ours, { shift: shift + ownShift, inWorkbook: sheet.inWorkbook, ...habits });
  const label = columnsOf(theirs).join(', ') || ours.column;
  const taken = takeFrom(theirs, {
    missing: source.missing,
    positionOf: place.positionOf,
    makeLookUp: place.makeLookUp,
    numbers: place.numbers,
    byRule: (rule) => told.byRule(rule, label, fill.table),
    notListed: (word, list) => told.notListed(word, list, label),
  });
  const take = hasOwnUnits(theirs) ? inOurUnit(taken, ours.column) : taken;
  return { definition, kind: ours.kind, label, index: -1, take, read, fixed: null, second: null, ...habits };
}

function hasDayForms(theirs: ColumnSource): boolean {
  return typeof theirs === 'object' && 'from' in theirs && theirs.dateForms !== undefined;
}

function hasOwnUnits(theirs: ColumnSource): boolean {
  return typeof theirs === 'object' && 'from' in theirs && theirs.unit === 'as written';
}

/** A number without a unit is left with a question mark where its unit should stand: it is then no number, and is asked about. */
function inOurUnit(take: Take, ourColumn: string): Take {
  return (cells) => {
    const text = take(cells);
    if (text === '') return '';
    return numberWithUnit(text, ourColumn) ?? (readDecimal(text) === null ? text : `${text} (unit?)`);
  };
}

function shiftOf(theirs: ColumnSource, column: string, sheet: Sheet, problems: ProblemList): number | null {
  if (
    typeof theirs === 'string' ||
    !('from' in theirs) ||
    theirs.unit === undefined ||
    theirs.unit === 'as written'
  )
    return 0;
  const shift = shiftBetween(theirs.unit, column);
  if (shift === null) {
    const unit = theirs.unit;
    problems.add('mapping-invalid', () => ({
      place: sheet.place,
      value: unit,
      parameters: { path: `columns.${column}.unit`, expected: `a unit that fits ${column}` },
      suggestion: null,
    }));
  }
  return shift;
}
