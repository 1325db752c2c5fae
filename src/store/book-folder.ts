/** Makes and opens survey books: a folder with `book.sqlite` and `photos/`. */

import { accessSync, constants, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { Failure } from '../survey/failure.ts';
import type { BookInfo } from '../survey/store.ts';
import { manifestName } from './backup-manifest.ts';
import { type BookDatabase, memoryFolder, openDatabase, settle, withFailures } from './book-database.ts';
import { asFileFailure } from './file-failures.ts';
import { migrate, refuseNewer, schemaVersion } from './migrations.ts';
import { type SqliteStore, sqliteStore } from './sqlite-store.ts';

export interface NewBook {
  readonly name: string;
  /** True for the invented demo book. */
  readonly invented: boolean;
  /** When it is made: ISO instant in UTC. */
  readonly at: string;
  readonly bookId: string;
}

export interface OpenOptions {
  /** How long a write waits for another program that is writing; 5 s unless said. */
  readonly busyTimeoutMs?: number;
  /** The file may not grow beyond so many pages of 16 384 bytes; no limit unless said. */
  readonly maxPages?: number;
}

/** Makes an empty book and opens it. A folder that holds a book already is left alone. */
export async function createBook(
  folder: string,
  book: NewBook,
  options: OpenOptions = {},
): Promise<SqliteStore> {
  const path = join(folder, fileName);
  if (existsSync(path)) throw new Failure('book-exists', { folder });
  // Finished under another name first: a laptop that dies here leaves no half-made book.
  const draft = join(folder, draftName);
  makeFolders(folder, draft);
  const database = openDatabase(folder, draft, usualBusyTimeoutMs);
  try {
    settle(database);
    fill(database, book);
  } finally {
    database.sqlite.close();
  }
  renameSync(draft, path);
  return openBook(folder, options);
}

/** Opens a book and brings it to the schema of this program. */
export async function openBook(folder: string, options: OpenOptions = {}): Promise<SqliteStore> {
  const path = join(folder, fileName);
  if (existsSync(join(folder, manifestName))) throw new Failure('book-is-backup', { folder });
  if (!existsSync(path)) throw new Failure('no-book-here', { folder });
  refuseReadOnly(folder, path);
  const database = openDatabase(folder, path, options.busyTimeoutMs ?? usualBusyTimeoutMs);
  try {
    withFailures(folder, () => refuseStranger(database));
    settle(database);
    withFailures(folder, () => migrate(database));
    if (options.maxPages !== undefined) database.sqlite.exec(`PRAGMA max_page_count = ${options.maxPages}`);
  } catch (error) {
    database.sqlite.close();
    throw error;
  }
  return sqliteStore(database, memoryLike);
}

/** A book in memory that is gone when it is closed: for tests and for trying things out. */
export async function openMemoryBook(book: NewBook): Promise<SqliteStore> {
  return sqliteStore(memoryDatabase(book), memoryLike);
}

/** The name of the database in the folder of a book. */
export const fileName = 'book.sqlite';
const draftName = 'book.sqlite.draft';
const usualBusyTimeoutMs = 5000;

function memoryDatabase(book: NewBook): BookDatabase {
  const database = openDatabase(memoryFolder, memoryFolder, usualBusyTimeoutMs);
  settle(database);
  fill(database, book);
  return database;
}

/** An empty book in memory that carries the name and identity of another. */
function memoryLike({ name, invented, createdAt: at, bookId }: BookInfo): BookDatabase {
  return memoryDatabase({ name, invented, at, bookId });
}

function makeFolders(folder: string, draft: string): void {
  try {
    mkdirSync(join(folder, 'photos'), { recursive: true });
    for (const ending of ['', '-wal', '-shm']) rmSync(draft + ending, { force: true });
  } catch (error) {
    throw asFileFailure(error, folder);
  }
}

function fill(database: BookDatabase, { name, invented, at, bookId }: NewBook): void {
  migrate(database);
  const row = { book_id: bookId, name, invented: Number(invented), created_at: at };
  database.prepare(database.kysely.insertInto('book').values(row)).run(...Object.values(row));
}

/** SQLite would only say that it cannot open the file beside the book in which it writes. */
function refuseReadOnly(folder: string, path: string): void {
  try {
    for (const one of [folder, path]) accessSync(one, constants.W_OK);
  } catch (error) {
    throw asFileFailure(error, folder);
  }
}

/** Only looks: a newer book, or a file that is no book, is left as it was found. */
function refuseStranger(database: BookDatabase): void {
  refuseNewer(database);
  if (schemaVersion(database) > 0) return;
  throw new Failure('book-damaged', {
    folder: database.folder,
    detail: 'there is no survey book in the file',
  });
}
