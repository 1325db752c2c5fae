/** The same tables out again: CSV texts or one workbook. Reading them gives back the same rows. */

import type { Placed, TableName, TableRows } from '../survey/table-rows.ts';
import { tableNames } from '../survey/table-rows.ts';
import type { FieldValues } from './collect-rows.ts';
import { withGuard, writeCsv } from './csv-text.ts';
import { writeCover, writeList } from './list-cell.ts';
import type { CellContent, ColumnDefinition, CoverPart } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';
import { writeWorkbookBytes } from './workbook.ts';

export interface NamedText {
  readonly name: string;
  readonly text: string;
}

/**
 * One CSV text per table, empty tables too: UTF-8, LF, one header row, every column in the order of the contract.
 * A text that a spreadsheet would run as a formula is guarded by an apostrophe, which reading takes off again.
 */
export function writeTables(rows: TableRows): NamedText[] {
  return tableNames.map((table) => {
    const { columns } = tableDefinitions[table];
    const header = columns.map((column) => column.column);
    return {
      name: `${table}.csv`,
      text: writeCsv(withHeader(header, csvRows(fieldRows(table, rows), columns))),
    };
  });
}

/** One workbook with a sheet per table. Numbers are number cells, days and times are text in ISO form. */
export async function writeWorkbook(rows: TableRows): Promise<Uint8Array> {
  return writeWorkbookBytes(
    tableNames.map((table) => {
      const { columns } = tableDefinitions[table];
      const cells = Array.from(fieldRows(table, rows), (row) =>
        columns.map((column) => workbookCell(row, column)),
      );
      return { name: table, header: columns.map((column) => column.column), rows: cells };
    }),
  );
}

function* withHeader(
  header: readonly string[],
  rows: Iterable<readonly string[]>,
): Iterable<readonly string[]> {
  yield header;
  yield* rows;
}

function* csvRows(
  rows: Iterable<FieldValues>,
  columns: readonly ColumnDefinition[],
): Iterable<readonly string[]> {
  for (const row of rows) {
    yield columns.map((column) => {
      const value = row[column.field] ?? null;
      return typeof value === 'number' ? String(value) : withGuard(cellText(value, column));
    });
  }
}

function workbookCell(row: FieldValues, column: ColumnDefinition): string | number | null {
  const value = row[column.field] ?? null;
  if (typeof value === 'number') return value;
  const text = cellText(value, column);
  return text === '' ? null : text;
}

/** "No" is written where empty would mean "nobody wrote it down", and left empty where empty means no. */
function cellText(value: CellContent, column: ColumnDefinition): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : column.whenEmpty === false ? '' : 'no';
  if (typeof value !== 'object') return String(value);
  if (column.kind.is === 'cover') return writeCover(value as readonly CoverPart[]);
  return writeList(value as readonly string[]);
}

/** The rows of one table as fields; tallies are parted into counts and lengths again. */
function fieldRows(table: TableName, rows: TableRows): Iterable<FieldValues> {
  if (table === 'counts') return countRows(rows);
  if (table === 'lengths') return lengthRows(rows);
  const placed = rows[table] as readonly Placed<unknown>[];
  return placed.map(({ row }) => row as FieldValues);
}

function* countRows(rows: TableRows): Iterable<FieldValues> {
  for (const { row } of rows.tallies) {
    const { lengths: _lengths, ...counted } = row;
    if (row.count !== null) yield counted;
  }
}

function* lengthRows(rows: TableRows): Iterable<FieldValues> {
  for (const { row } of rows.tallies) {
    const { lengths, count: _count, ...tally } = row;
    for (const length of lengths) yield { ...tally, ...length };
  }
}
