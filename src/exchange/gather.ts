/** Gathers what all sheets gave: rows by table, how many were read, and what was left out by which rule. */

import type { Place } from '../survey/message.ts';
import { type Placed, type TableName, type TableRows, tableNames } from '../survey/table-rows.ts';
import { type FieldValues, type RowCollector, rowCollector } from './collect-rows.ts';
import { tallyCollector } from './collect-tallies.ts';
import type { ProblemList } from './problem-list.ts';

export interface ReadTotals {
  /** Rows met, blank ones not counted. Of a table filled by distinct values or by adding: the rows that came out of it. */
  readonly read: number;
  /** Rows left out by a named rule of the mapping. */
  readonly refused: number;
}

/** Rows of one file that one named rule of the mapping left out. */
export interface LeftOut {
  readonly rule: string;
  readonly file: string;
  /** The table the rule belongs to; null when it holds for every table filled from the file. */
  readonly table: TableName | null;
  readonly rows: number;
}

export interface Gathered {
  readonly collectors: Readonly<Record<TableName, RowCollector>>;
  readonly totals: Record<TableName, { read: number; refused: number }>;
  readonly leftOut: LeftOut[];
  /** Adds a row that no file holds but the mapping says, such as the targets. */
  readonly rows: TableRows;
}

export function gather(problems: ProblemList): Gathered {
  const tallies = tallyCollector(problems);
  const rows = Object.fromEntries(tableNames.map((table) => [table, []])) as unknown as Record<
    TableName,
    Placed<FieldValues>[]
  >;
  const collectors = Object.fromEntries(
    tableNames.map((table) => [table, rowCollector(table, rows[table], problems)]),
  ) as Record<TableName, RowCollector>;
  const totals = Object.fromEntries(tableNames.map((table) => [table, { read: 0, refused: 0 }]));
  const { counts: _counts, lengths: _lengths, ...others } = rows;
  return {
    collectors: { ...collectors, counts: tallies.counts, lengths: tallies.lengths },
    totals: totals as Gathered['totals'],
    leftOut: [],
    // The definitions name the fields of the row types; a test compares the two.
    rows: { ...others, tallies: tallies.tallies } as unknown as TableRows,
  };
}

export function reportLeftOut(leftOut: LeftOut, place: Place, problems: ProblemList): void {
  problems.add('left-out-by-rule', () => ({
    place,
    value: null,
    parameters: { rule: leftOut.rule, rows: leftOut.rows, file: leftOut.file },
    suggestion: null,
  }));
}
