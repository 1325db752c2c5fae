/**
 * The open database file of one book: node:sqlite, with Kysely on top of the same connection.
 *
 * Kysely builds the queries. Reads that return a handful of rows run through it; the hot paths
 * (a million animals in one import) run its compiled SQL as prepared statements, because awaiting
 * every row costs more than writing it.
 */

import { DatabaseSync, type StatementSync } from 'node:sqlite';
import { type Compilable, Kysely, type SqliteDatabase, SqliteDialect } from 'kysely';
import { watchPlace } from './book-place.ts';
import type { BookTables } from './book-tables.ts';
import { asFailure } from './sqlite-failures.ts';

export interface BookDatabase {
  /** The folder of the book, for messages; ':memory:' for a book that is never kept. */
  readonly folder: string;
  readonly sqlite: DatabaseSync;
  readonly kysely: Kysely<BookTables>;
  prepare(query: Compilable): StatementSync;
  /** Throws when the file is not any more where it was opened. */
  checkPlace(): void;
}

export const memoryFolder = ':memory:';

export function openDatabase(
  folder: string,
  path: string,
  busyTimeoutMs: number,
  { readOnly = false }: { readonly readOnly?: boolean } = {},
): BookDatabase {
  return withFailures(folder, () => {
    const sqlite = new DatabaseSync(path, {
      timeout: busyTimeoutMs,
      enableForeignKeyConstraints: true,
      readOnly,
    });
    const kysely = new Kysely<BookTables>({
      dialect: new SqliteDialect({ database: asKyselyDatabase(sqlite) }),
    });
    return {
      folder,
      sqlite,
      kysely,
      prepare: (query) => sqlite.prepare(query.compile().sql),
      checkPlace: path === memoryFolder ? () => {} : watchPlace(folder, path),
    };
  });
}

/** A write that has returned is on disk: WAL keeps readers and the writer apart, FULL waits for the disk. */
export function settle(database: BookDatabase): void {
  withFailures(database.folder, () => {
    // Pages of 16 KB (heeded only while the file is empty): an archive is written in a quarter of the pieces.
    database.sqlite.exec('PRAGMA page_size = 16384');
    database.sqlite.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON');
    // 64 MB of pages in memory: an import of a whole archive does not go back to the disk for its indexes.
    database.sqlite.exec('PRAGMA cache_size = -65536');
  });
}

/**
 * All of the work is written, or none of it. `explain` may look at the unfinished state
 * and say what was wrong with it, before it is undone.
 */
export function inTransaction<Value>(
  database: BookDatabase,
  work: () => Value,
  explain: (error: unknown) => unknown = (error) => error,
): Value {
  const { sqlite, folder } = database;
  return withFailures(folder, () => {
    // IMMEDIATE: two programs that both want to write find out before they have read anything.
    sqlite.exec('BEGIN IMMEDIATE');
    try {
      const value = work();
      // What is written to a file that nobody can find again must not be called kept.
      database.checkPlace();
      sqlite.exec('COMMIT');
      return value;
    } catch (error) {
      // A full disk may already have rolled back by itself.
      const explained = sqlite.isTransaction ? explain(error) : error;
      if (sqlite.isTransaction) sqlite.exec('ROLLBACK');
      throw explained;
    }
  });
}

/** All that is read is of one moment: in WAL a reader keeps the pages it began with while others write. */
export async function inSnapshot<Value>(
  { sqlite, folder }: BookDatabase,
  work: () => Promise<Value>,
): Promise<Value> {
  withFailures(folder, () => sqlite.exec('BEGIN'));
  try {
    return await work();
  } finally {
    // Nothing was written; a fault of the disk may have ended it already.
    if (sqlite.isTransaction) sqlite.exec('ROLLBACK');
  }
}

/** What SQLite says, as a failure a person can act on. */
export function withFailures<Value>(folder: string, work: () => Value): Value {
  try {
    return work();
  } catch (error) {
    throw asFailure(error, folder);
  }
}

/** The same for what is awaited. */
export async function guarded<Value>({ folder }: BookDatabase, work: () => Promise<Value>): Promise<Value> {
  try {
    return await work();
  } catch (error) {
    throw asFailure(error, folder);
  }
}

/** The small face that Kysely's own dialect asks for. */
function asKyselyDatabase(sqlite: DatabaseSync): SqliteDatabase {
  return {
    prepare(sql) {
      const statement = sqlite.prepare(sql);
      return {
        reader: statement.columns().length > 0,
        all: (parameters) => statement.all(...(parameters as SqlParameters)),
        run: (parameters) => statement.run(...(parameters as SqlParameters)),
        iterate: (parameters) =>
          statement.iterate(...(parameters as SqlParameters)) as IterableIterator<unknown>,
      };
    },
    close: () => sqlite.close(),
  };
}

type SqlParameters = (string | number | null)[];
