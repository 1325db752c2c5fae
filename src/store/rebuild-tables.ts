/** Throws the current tables away and makes them again from the last revision of each record. */

import { sql } from 'kysely';
import { recordKinds } from '../survey/words.ts';
import { type BookDatabase, inTransaction } from './book-database.ts';
import { currentTable } from './current-tables.ts';
import type { AnyRow } from './kind-tables.ts';
import { digestText, emptyDigest, toggleRecord } from './record-digest.ts';
import { writeDigest } from './stored-digest.ts';

export function rebuildTables(database: BookDatabase): void {
  inTransaction(database, () => {
    // Children before parents, so that no reference is left open on the way.
    for (const kind of recordKinds.toReversed()) currentTable(database, kind).clear();
    const digest = emptyDigest();
    for (const kind of recordKinds) {
      const table = currentTable(database, kind);
      for (const { after_row } of database.prepare(lastRevisions(database)).iterate(kind)) {
        const row = table.rowOf(table.recordOf(JSON.parse(String(after_row)) as AnyRow));
        if (!table.insert(row)) throw new Error(`rebuild met two ${kind} records with one name: ${row.id}`);
        toggleRecord(digest, kind, JSON.stringify(row));
      }
    }
    writeDigest(database, digestText(digest));
  });
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
        .as('history'),
    )
    .select('after_row')
    .where('age', '=', sql<number>`1`)
    .where('after_row', 'is not', null)
    .orderBy('record_id');
}
