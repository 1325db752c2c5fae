/** The prepared statements on the current table of one kind of record. */

import type { StatementSync } from 'node:sqlite';
import type { Kysely } from 'kysely';
import type { RecordKind } from '../survey/words.ts';
import type { BookDatabase } from './book-database.ts';
import { type AnyRow, type KindTable, kindTables } from './kind-tables.ts';

export interface CurrentTable extends KindTable {
  readonly kind: RecordKind;
  /** The row as it stands, or null. */
  find(id: string): AnyRow | null;
  /** False when the identity or the natural key is taken: then nothing was written. */
  insert(row: AnyRow): boolean;
  /** Throws when the natural key is taken. */
  update(row: AnyRow): void;
  remove(id: string): void;
  clear(): void;
}

export function currentTable(database: BookDatabase, kind: RecordKind): CurrentTable {
  const { table, naturalKey, rowOf, recordOf } = kindTables[kind];
  const kysely = database.kysely as unknown as AnyKysely;
  const find = database.prepare(kysely.selectFrom(table).selectAll().where('id', '=', ''));
  const remove = database.prepare(kysely.deleteFrom(table).where('id', '=', ''));
  const clear = database.prepare(kysely.deleteFrom(table));
  // Prepared when the first row shows the columns; all rows of a kind have the same, in the same order.
  let insert: StatementSync | undefined;
  let update: StatementSync | undefined;
  let newestId = newestIdentity(database, table);
  return {
    kind,
    table,
    naturalKey,
    rowOf,
    recordOf,
    find: (id) => {
      // Identities grow with time, so one beyond the newest is new: an import needs no look-up for each record.
      if (id > newestId) return null;
      const row = find.get(id);
      return row === undefined ? null : rowOf(recordOf(row as AnyRow));
    },
    insert: (row) => {
      insert ??= database.prepare(
        kysely
          .insertInto(table)
          .values(row)
          .onConflict((conflict) => conflict.doNothing()),
      );
      const id = row.id as string;
      if (id > newestId) newestId = id;
      return insert.run(...Object.values(row)).changes === 1;
    },
    update: (row) => {
      const { id, ...others } = row;
      update ??= database.prepare(kysely.updateTable(table).set(others).where('id', '=', ''));
      update.run(...Object.values(others), id as string);
    },
    remove: (id) => {
      remove.run(id);
    },
    clear: () => {
      clear.run();
    },
  };
}

function newestIdentity(database: BookDatabase, table: string): string {
  const kysely = database.kysely as unknown as AnyKysely;
  const query = kysely.selectFrom(table).select((select) => select.fn.max('id').as('newest'));
  return String(database.prepare(query).get()?.newest ?? '');
}

/** The tables without their types, for statements that are made once for each kind. */
export type AnyKysely = Kysely<Record<string, AnyRow>>;
