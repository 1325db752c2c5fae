/**
 * The store on SQLite: the interface of `survey/store.ts`, put together from the files of this room.
 *
 * Here live all SQL, the tables and the way between rows and records. Means, densities and rules
 * never live here: this room translates, it does not calculate.
 */

import type { SheetStore } from '../survey/acts.ts';
import type { BookInfo } from '../survey/store.ts';
import type { RecordKind, RecordOf } from '../survey/words.ts';
import { asOfView } from './as-of-view.ts';
import { type BookDatabase, guarded, inSnapshot, withFailures } from './book-database.ts';
import { type LastWritten, lastWritten } from './book-place.ts';
import { dataVersionOf } from './book-summary.ts';
import { type Standing, standingOf, surveysChangedSince } from './changed-surveys.ts';
import type { AnyKysely } from './current-tables.ts';
import { dumpTables } from './dump-tables.ts';
import { type AnyRow, kindTables } from './kind-tables.ts';
import { readRevisions } from './read-revisions.ts';
import { readStation } from './read-station.ts';
import { readSurvey } from './read-survey.ts';
import { rebuildTables } from './rebuild-tables.ts';
import { readSpeciesSeen } from './species-seen.ts';
import { isActWritten, writeActs } from './write-acts.ts';
import { writeChanges } from './write-changes.ts';

export interface SqliteStore extends SheetStore {
  /** The current tables as text, to compare two books by the byte. */
  dump(): Promise<string>;
  lastWritten(): Promise<LastWritten>;
  asOf(instant: string): Promise<SqliteStore>;
  /**
   * Everything that `work` reads is of one moment, whatever others write meanwhile. One after the other on
   * one store; nothing is written within.
   */
  atOneMoment<Value>(work: () => Promise<Value>): Promise<Value>;
  standing(): Promise<Standing>;
  /** Null when it cannot be told: see `changed-surveys.ts`. */
  surveysChangedSince(since: Standing): Promise<ReadonlySet<string> | null>;
}

/** `makeMemory` makes an empty book in memory with the same name, for a view of the past. */
export function sqliteStore(
  database: BookDatabase,
  makeMemory: (info: BookInfo) => BookDatabase,
): SqliteStore {
  const { folder } = database;
  return {
    info: () => readInfo(database),
    all: (kind) => readAll(database, kind),
    surveyRecords: (surveyId, options = { lengths: true }) =>
      guarded(database, () => readSurvey(database, surveyId, options)),
    speciesSeen: () => guarded(database, () => readSpeciesSeen(database)),
    apply: async (changes, signature, newId) => writeChanges(database, changes, signature, newId),
    applyTogether: async (acts, dataVersion) => writeActs(database, acts, dataVersion),
    actWritten: async (id) => withFailures(folder, () => isActWritten(database, id)),
    stationRecords: async (stationId) => withFailures(folder, () => readStation(database, stationId)),
    revisions: (recordId, kinds) => readRevisions(database, { recordId, kinds }),
    asOf: async (instant) => {
      const memory = makeMemory(await readInfo(database));
      return asOfView({ book: database, memory, view: sqliteStore(memory, makeMemory) }, instant);
    },
    lastWritten: async () => withFailures(folder, () => lastWritten(database)),
    dataVersion: async () => withFailures(folder, () => dataVersionOf(database)),
    atOneMoment: (work) => inSnapshot(database, work),
    standing: async () => withFailures(folder, () => standingOf(database)),
    surveysChangedSince: async (since) => withFailures(folder, () => surveysChangedSince(database, since)),
    rebuild: async () => rebuildTables({ from: database, into: database }),
    dump: async () => withFailures(folder, () => [...dumpTables(database)].join('')),
    close: () => closeDatabase(database),
  };
}

function readInfo(database: BookDatabase): Promise<BookInfo> {
  return guarded(database, async () => {
    const row = await database.kysely.selectFrom('book').selectAll().executeTakeFirstOrThrow();
    return { bookId: row.book_id, name: row.name, invented: row.invented === 1, createdAt: row.created_at };
  });
}

function readAll<K extends RecordKind>(database: BookDatabase, kind: K): Promise<readonly RecordOf<K>[]> {
  return guarded(database, async () => {
    const kysely = database.kysely as unknown as AnyKysely;
    const { table, recordOf } = kindTables[kind];
    const rows: AnyRow[] = await kysely.selectFrom(table).selectAll().orderBy('id').execute();
    return rows.map(recordOf) as RecordOf<K>[];
  });
}

async function closeDatabase({ kysely, sqlite }: BookDatabase): Promise<void> {
  await kysely.destroy();
  // Kysely closes the file only if it has ever run a query itself.
  if (sqlite.isOpen) sqlite.close();
}
