/** Which cell of a row becomes which value: worked out once per sheet, used for every row. */

import { nearestName } from '../survey/nearest-name.ts';
import { type CommaHabit, commaEvidence, type DayHabit, dayEvidence, type Evidence } from './habits.ts';
import type { ProblemList } from './problem-list.ts';
import { type CellReader, cellReader, type Reading, type Refusal } from './read-cell.ts';
import type { Sheet } from './sheets.ts';
import {
  alternativeOf,
  type CellContent,
  type ColumnDefinition,
  type ColumnKind,
  namesRead,
  type TableDefinition,
} from './table-columns.ts';

/** How the text of one of our columns is found in a row. */
export interface PlannedColumn {
  readonly definition: ColumnDefinition;
  /** What its cell holds: of an alternative column, its own kind. */
  readonly kind: ColumnKind;
  /** What the column is called in the file, so that a problem points where a person can look. */
  readonly label: string;
  /** Position of the cell; -1 when `take` makes the text. */
  readonly index: number;
  readonly take: ((cells: readonly string[]) => string) | null;
  readonly read: CellReader;
  /** The value of a column that is not there. */
  readonly fixed: Reading | null;
  /** A second column that is read where the first is empty. */
  readonly second: PlannedColumn | null;
  /** What its cells show of the writer's habits; null where nothing can be mistaken. */
  readonly commas: Evidence<CommaHabit> | null;
  readonly days: Evidence<DayHabit> | null;
  readonly isNumber: boolean;
}

export type RowPlan = readonly PlannedColumn[];

export interface RefusedCell {
  readonly column: PlannedColumn;
  readonly written: string;
  readonly refusal: Refusal;
}

/**
 * Reads one row into `values`, in the order of the table's columns. Returns null when all went well, else the
 * refused cells. A refused optional cell counts as empty, so that the row can still be referred to;
 * a cell in doubt keeps its value.
 */
export function readRow(
  plan: RowPlan,
  cells: readonly string[],
  values: CellContent[],
): RefusedCell[] | null {
  let refusedCells: RefusedCell[] | null = null;
  for (let i = 0; i < plan.length; i++) {
    let planned = plan[i]!;
    if (planned.fixed !== null) {
      values[i] = planned.fixed.value;
      continue;
    }
    let written = textIn(planned, cells);
    const { second } = planned;
    if (second !== null && written.trim() === '') {
      planned = second;
      written = textIn(planned, cells);
    }
    const own = planned.read(written);
    const reading =
      second?.kind.is === 'position' ? againstPosition(own, second, textIn(second, cells)) : own;
    values[i] = reading.value;
    if (reading.refusal === null) continue;
    if (reading.refusal.keepsValue !== true) values[i] = planned.definition.whenEmpty;
    refusedCells ??= [];
    for (const refusal of [reading.refusal, ...(reading.refusal.also ?? [])]) {
      if (!isAskedAlready(refusedCells, planned, refusal)) {
        refusedCells.push({ column: planned, written, refusal });
      }
    }
  }
  return refusedCells;
}

/** Degrees in their own column count; a position beside them that names another place is asked about. */
function againstPosition(own: Reading, column: PlannedColumn, written: string): Reading {
  if (own.refusal !== null || written.trim() === '') return own;
  const { value } = column.read(written);
  if (typeof value === 'number' && Math.abs(value - Number(own.value)) <= sameDegrees) return own;
  const parameters = { degrees: String(own.value), position: column.label, written: written.trim() };
  const refusal = { code: 'coordinates-differ', parameters, suggestion: null, keepsValue: true } as const;
  return { value: own.value, refusal };
}

/** What three decimals of a minute leave open, twice. */
const sameDegrees = 2e-5;

/** A position stands in one cell and fills two columns: it is asked about once. */
function isAskedAlready(asked: readonly RefusedCell[], planned: PlannedColumn, { code }: Refusal): boolean {
  if (planned.kind.is !== 'position') return false;
  return asked.some(({ column, refusal }) => column.label === planned.label && refusal.code === code);
}

export function textIn(planned: PlannedColumn, cells: readonly string[]): string {
  return planned.take === null ? (cells[planned.index] ?? '') : planned.take(cells);
}

/** Plan of a sheet in our own layout; null when a required column is missing. Says what it could not place. */
export function planOwnLayout(
  table: TableDefinition,
  header: readonly string[],
  sheet: Sheet,
  problems: ProblemList,
): RowPlan | null {
  const positions = positionsOf(header, sheet, problems);
  reportUnknownColumns(table, positions, sheet, problems);
  const commas = sheet.mayHoldCommas() ? commaEvidence() : null;
  const plan = table.columns.map((definition) => planColumn(definition, positions, sheet, commas));
  const missing = plan.filter((planned) => planned.fixed !== null && planned.definition.required);
  for (const { definition } of missing)
    reportMissingColumn(definition.column, [...positions.keys()], sheet, problems);
  return missing.length > 0 ? null : plan;
}

function planColumn(
  definition: ColumnDefinition,
  positions: ReadonlyMap<string, number>,
  sheet: Sheet,
  commas: Evidence<CommaHabit> | null,
): PlannedColumn {
  const first = cellAt(definition, positions.get(definition.column), sheet, 0, commas);
  const other = alternativeOf(definition);
  const shift = definition.alternative?.shift ?? 0;
  const second =
    other === null ? undefined : cellAt(other, positions.get(other.column), sheet, shift, commas);
  if (first && second) return { ...first, second };
  return first ?? second ?? absentColumn(definition);
}

function cellAt(
  definition: ColumnDefinition,
  index: number | undefined,
  sheet: Sheet,
  shift: number,
  commas: Evidence<CommaHabit> | null,
): PlannedColumn | undefined {
  if (index === undefined) return undefined;
  const habits = habitsOf(definition, commas);
  const read = cellReader(definition, { inWorkbook: sheet.inWorkbook, shift, ...habits });
  const label = definition.column;
  const kind = definition.kind;
  return { definition, kind, label, index, take: null, read, fixed: null, second: null, ...habits };
}

/** Numbers share the evidence of their sheet; each column of days has its own. */
export function habitsOf(
  { kind }: ColumnDefinition,
  commas: Evidence<CommaHabit> | null,
): Pick<PlannedColumn, 'commas' | 'days' | 'isNumber'> {
  const isNumber = kind.is === 'number' || kind.is === 'whole number';
  return { commas: isNumber ? commas : null, days: kind.is === 'date' ? dayEvidence() : null, isNumber };
}

/** A column nobody wrote: every row has its empty value. */
export function absentColumn(definition: ColumnDefinition): PlannedColumn {
  const fixed: Reading = { value: definition.whenEmpty, refusal: null };
  return {
    definition,
    kind: definition.kind,
    label: definition.column,
    index: -1,
    take: null,
    read: () => fixed,
    fixed,
    second: null,
    commas: null,
    days: null,
    isNumber: false,
  };
}

/** Where each header name stands. Capitals and outer spaces do not count; of a repeated name the first is taken. */
export function positionsOf(
  header: readonly string[],
  sheet: Sheet,
  problems: ProblemList,
): Map<string, number> {
  const positions = new Map<string, number>();
  header.forEach((written, index) => {
    const name = written.trim().toLowerCase();
    if (name === '') return;
    if (!positions.has(name)) positions.set(name, index);
    else {
      const place = { ...sheet.place, row: 1, column: written };
      problems.add('repeated-column', () => ({
        place,
        value: written,
        parameters: { column: name },
        suggestion: null,
      }));
    }
  });
  return positions;
}

function reportUnknownColumns(
  table: TableDefinition,
  positions: ReadonlyMap<string, number>,
  sheet: Sheet,
  problems: ProblemList,
): void {
  const known = namesRead(table);
  for (const name of positions.keys()) {
    if (known.includes(name)) continue;
    problems.add('unknown-column', () => ({
      place: { ...sheet.place, column: name },
      value: name,
      parameters: { column: name },
      suggestion: nearestName(
        name,
        known.filter((column) => !positions.has(column)),
      ),
    }));
  }
}

export function reportMissingColumn(
  column: string,
  present: readonly string[],
  sheet: Sheet,
  problems: ProblemList,
): void {
  problems.add('missing-column', () => ({
    place: { ...sheet.place, column },
    value: null,
    parameters: { column, file: sheet.place.sheet ?? sheet.place.file ?? '' },
    suggestion: nearestName(column, present),
  }));
}
