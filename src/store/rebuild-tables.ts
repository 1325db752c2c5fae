/** Makes current tables from the last revision of each record: in the book itself, or in another one in memory. */

import { sql } from 'kysely';
import { Failure } from '../survey/failure.ts';
import { recordKinds } from '../survey/words.ts';
import { type BookDatabase, inTransaction } from './book-database.ts';
import { currentTable } from './current-tables.ts';
import type { AnyRow } from './kind-tables.ts';
import { digestText, emptyDigest, toggleRecord } from './record-digest.ts';
import { isMissingReference } from './sqlite-failures.ts';
import { writeDigest } from './stored-digest.ts';

export interface Rebuilding {
  /** The book whose revisions are read. */
  readonly from: BookDatabase;
  /** The book whose current tables are thrown away and made again; it may be the same. */
  readonly into: BookDatabase;
  /** The last revision that counts, by its number; all of them unless said. */
  readonly upToSeq?: number;
}

/** Throws the Failure `book-damaged` when the history does not make whole records; nothing was changed then. */
export function rebuildTables(rebuilding: Rebuilding): void {
  const { from, into } = rebuilding;
  inTransaction(
    into,
    () => remake(rebuilding),
    (error) => (isTornHistory(error) ? tornHistory(from.folder, error) : error),
  );
}

function remake({ from, into, upToSeq = Number.MAX_SAFE_INTEGER }: Rebuilding): void {
  // Children before parents, so that no reference is left open on the way.
  for (const kind of recordKinds.toReversed()) currentTable(into, kind).clear();
  const digest = emptyDigest();
  for (const kind of recordKinds) {
    const table = currentTable(into, kind);
    for (const { after_row } of from.prepare(lastRevisions(from)).iterate(kind, upToSeq)) {
      const row = table.rowOf(table.recordOf(JSON.parse(String(after_row)) as AnyRow));
      if (!table.insert(row)) throw tornHistory(from.folder);
      toggleRecord(digest, kind, JSON.stringify(row));
    }
  }
  writeDigest(into, digestText(digest));
}

/** A revision that is missing leaves a reference open; one that is no JSON was overwritten. */
function isTornHistory(error: unknown): boolean {
  return isMissingReference(error) || error instanceof SyntaxError;
}

function tornHistory(folder: string, cause?: unknown): Failure {
  return new Failure('book-damaged', { folder, detail: 'its history does not make whole records' }, cause);
}

/** The last word on every record of a kind that has not been withdrawn. */
function lastRevisions({ kysely }: BookDatabase) {
  return kysely
    .selectFrom((from) =>
      from
        .selectFrom('revisions')
        .select(['record_id', 'after_row'])
        .select(sql<number>`row_number() over (partition by record_id order by seq desc)`.as('age'))
        .where('kind', '=', '')
        .where('seq', '<=', 0)
        .as('history'),
    )
    .select('after_row')
    .where('age', '=', sql<number>`1`)
    .where('after_row', 'is not', null)
    .orderBy('record_id');
}
