/** Says which record refers to one that is not there; SQLite itself only says that some record does. */

import { Failure } from '../survey/failure.ts';
import type { BookDatabase } from './book-database.ts';
import type { AnyKysely } from './current-tables.ts';
import { kindOfTable } from './kind-tables.ts';
import { isMissingReference } from './sqlite-failures.ts';

/** Slow on a large book (every reference is looked at again), and only ever called when a write has failed. */
export function explainMissingReference(database: BookDatabase, error: unknown): unknown {
  if (!isMissingReference(error)) return error;
  const found = database.sqlite.prepare('PRAGMA foreign_key_check').get();
  if (found === undefined) return error;
  const table = String(found.table);
  const kysely = database.kysely as unknown as AnyKysely;
  const query = kysely.selectFrom(table).select('id').where('rowid', '=', 0);
  const recordId = String(database.prepare(query).get(Number(found.rowid))?.id ?? '');
  const kind = kindOfTable(table) ?? table;
  const missing = kindOfTable(String(found.parent)) ?? String(found.parent);
  return new Failure('refers-to-nothing', { kind, recordId, missing }, error);
}
