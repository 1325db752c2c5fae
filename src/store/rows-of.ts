/**
 * The rows of a query that gives thousands. They are read as plain arrays and put together here:
 * the row objects of node:sqlite take twice as long to make and to read.
 */

import type { SQLInputValue } from 'node:sqlite';
import type { Compilable } from 'kysely';
import type { BookDatabase } from './book-database.ts';

export function rowsOf<Row>(database: BookDatabase, query: Compilable<Row>): Row[] {
  const { sql, parameters } = query.compile();
  const statement = database.sqlite.prepare(sql);
  const columns = statement.columns().map((column) => column.name);
  statement.setReturnArrays(true);
  const rows = statement.all(...(parameters as SQLInputValue[])) as unknown as SQLInputValue[][];
  return rows.map((values) => {
    const row: Record<string, SQLInputValue> = {};
    for (let i = 0; i < columns.length; i++) row[columns[i]!] = values[i]!;
    return row as Row;
  });
}
