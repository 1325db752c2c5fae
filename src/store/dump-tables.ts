/** The current tables as text: every column of every row in order of identity, to compare two books by the byte. */

import { recordKinds } from '../survey/words.ts';
import type { BookDatabase } from './book-database.ts';
import type { AnyKysely } from './current-tables.ts';
import { kindTables } from './kind-tables.ts';

/** Straight from the columns, past every mapping, so that it would show what a mapping hides. */
export function* dumpTables(database: BookDatabase): Generator<string> {
  const kysely = database.kysely as unknown as AnyKysely;
  for (const kind of recordKinds) {
    const { table } = kindTables[kind];
    if (!hasTable(database, table)) continue;
    const query = database.prepare(kysely.selectFrom(table).selectAll().orderBy('id'));
    for (const row of query.iterate()) yield `${table} ${JSON.stringify(row)}\n`;
  }
  const digest = database.prepare(kysely.selectFrom('data_digest').selectAll()).get();
  yield `data_digest ${digest?.digest}\n`;
}

/** A backup made by an earlier program has the tables of its day, and is compared as it is. */
function hasTable({ sqlite }: BookDatabase, table: string): boolean {
  return (
    sqlite.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = ?").get(table) !== undefined
  );
}
