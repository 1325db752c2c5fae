/** The import of the archive, and the bare inserts that no import can do without. */

import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { identityMaker } from '../src/cli/identity.ts';
import { readTables } from '../src/exchange/read-tables.ts';
import { createBook } from '../src/store/book-folder.ts';
import { tableNames } from '../src/survey/table-rows.ts';
import { importRows } from '../src/tasks/import/import-rows.ts';
import { timed } from './clock.ts';

const at = '2026-01-01T00:00:00Z';

export interface ImportPhases {
  readonly readMs: number;
  readonly writeMs: number;
}

/** From the bytes of the files to a closed book with its history. */
export async function importArchive(csvFolder: string, bookFolder: string): Promise<ImportPhases> {
  rmSync(bookFolder, { recursive: true, force: true });
  const files = readdirSync(csvFolder).map((name) => ({ name, bytes: readFileSync(join(csvFolder, name)) }));
  const newId = identityMaker(Date.now);
  const store = await createBook(bookFolder, { name: 'bench', invented: true, at, bookId: newId() });
  const read = await timed(() => readTables(files));
  const { rows, totals } = read.result.value;
  const request = {
    rows,
    readTotals: tableNames.map((table) => ({ table, ...totals[table] })),
    readProblems: read.result.problems,
    mapping: null,
    dryRun: false,
  };
  const signature = { who: 'bench', at, device: 'bench', why: 'bench' };
  const write = await timed(() => importRows(request, { store, signature, newId }));
  await store.close();
  if (!write.result.written) throw new Error('the bench import was stopped');
  return { readMs: read.ms, writeMs: write.ms };
}

/**
 * Milliseconds for the same rows into plain tables without a key: one prepared insert for each row,
 * one transaction. The values are at hand before the clock starts.
 */
export function bareInsertsMs(csvFolder: string, file: string): number {
  for (const ending of ['', '-wal', '-shm']) rmSync(file + ending, { force: true });
  const tables = readdirSync(csvFolder).map((name) => bareTable(csvFolder, name));
  const database = new DatabaseSync(file);
  database.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL');
  const start = performance.now();
  database.exec('BEGIN');
  for (const { name, columns, rows } of tables) {
    database.exec(`CREATE TABLE ${name} (${columns.join(', ')})`);
    const insert = database.prepare(`INSERT INTO ${name} VALUES (${columns.map(() => '?').join(', ')})`);
    for (const row of rows) insert.run(...row);
  }
  database.exec('COMMIT');
  database.close();
  return performance.now() - start;
}

function bareTable(folder: string, file: string) {
  const [header, ...body] = readFileSync(join(folder, file), 'utf8').trimEnd().split('\n');
  const rows = body.map((line) => line.split(','));
  return { name: file.slice(0, -'.csv'.length), columns: header!.split(','), rows };
}
