/**
 * The numbered SQL files that make a book's tables, each applied in one transaction.
 * A file is never edited after release: a change is a new file.
 */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { Failure } from '../survey/failure.ts';
import { type BookDatabase, inTransaction } from './book-database.ts';

export interface Migration {
  readonly number: number;
  readonly name: string;
  readonly sql: string;
  readonly sha256: string;
}

/** Brings a book to the newest schema. A book made by a later program is refused before anything is written. */
export function migrate(database: BookDatabase): void {
  const migrations = readMigrations();
  refuseNewer(database, migrations);
  for (const migration of migrations) {
    if (migration.number <= schemaVersion(database)) continue;
    inTransaction(database, () => applyMigration(database, migration));
  }
}

/** The number of the last migration; 0 where there is none. */
export function schemaVersion(database: BookDatabase): number {
  const { sqlite } = database;
  const found = sqlite.prepare("SELECT name FROM sqlite_master WHERE name = 'migrations'").get();
  if (found === undefined) return 0;
  const row = sqlite.prepare('SELECT max(number) AS version FROM migrations').get();
  return Number(row?.version ?? 0);
}

export function refuseNewer(database: BookDatabase, migrations = readMigrations()): void {
  const known = migrations.at(-1)?.number ?? 0;
  const version = schemaVersion(database);
  if (version > known) throw new Failure('book-newer', { folder: database.folder, version, known });
}

export function readMigrations(): readonly Migration[] {
  const folder = new URL('./migrations/', import.meta.url);
  return readdirSync(folder)
    .filter((file) => file.endsWith('.sql'))
    .toSorted()
    .map((file) => {
      // Line ends as released, even where a checkout has turned them round.
      const sql = readFileSync(new URL(file, folder), 'utf8').replaceAll('\r\n', '\n');
      const sha256 = createHash('sha256').update(sql).digest('hex');
      return { number: Number(file.slice(0, 4)), name: file.slice(5, -4), sql, sha256 };
    });
}

function applyMigration(database: BookDatabase, migration: Migration): void {
  const { sqlite } = database;
  sqlite.exec(
    'CREATE TABLE IF NOT EXISTS migrations (number INTEGER NOT NULL PRIMARY KEY, name TEXT NOT NULL)',
  );
  // Another program may have been here while we waited for the lock.
  if (migration.number <= schemaVersion(database)) return;
  sqlite.exec(migration.sql);
  sqlite.prepare('INSERT INTO migrations (number, name) VALUES (?, ?)').run(migration.number, migration.name);
}
