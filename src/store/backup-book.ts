/**
 * A backup: a dated folder with a copy of the database, the photos and `backup.json`.
 *
 * It is made while the book stays open, under another name first, and gets its own name only when
 * the copy has been opened and compared. Only then are the oldest removed.
 */

import { existsSync, mkdirSync, renameSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { backup } from 'node:sqlite';
import { Failure } from '../survey/failure.ts';
import { manifestName, readManifest, writeManifest } from './backup-manifest.ts';
import { removeBackup, removeOldest } from './backup-rotation.ts';
import { type BookDatabase, openDatabase, withFailures } from './book-database.ts';
import { fileName } from './book-folder.ts';
import { type BookSummary, dataVersionOf, summaryDifferences, summaryOf } from './book-summary.ts';
import { dateStamp } from './date-stamp.ts';
import { asFileFailure } from './file-failures.ts';
import { copyPhoto, type PhotoFile, photoPaths } from './photo-files.ts';
import { syncFolder } from './sync-file.ts';

export interface BackupOrder {
  /** The folder of the book. */
  readonly folder: string;
  /** The folder in which backups lie, one folder each. */
  readonly to: string;
  /** How many of this book stay there, the new one included. */
  readonly keep: number;
  readonly at: Date;
}

export interface BackupMade {
  readonly path: string;
  readonly book: BookSummary;
  readonly photos: number;
  readonly bytes: number;
  readonly removed: readonly string[];
  /** True where the backup lies on the disk of the book: one accident takes both. */
  readonly sameDisk: boolean;
}

export async function backupBook(order: BackupOrder): Promise<BackupMade> {
  const { folder, to, keep, at } = order;
  const database = openDatabase(folder, join(folder, fileName), 5000);
  try {
    const dataVersion = withFailures(folder, () => dataVersionOf(database));
    // The data version in the name tells equal copies.
    const path = freePath(join(to, `${dateStamp(at)}-${dataVersion}`));
    const made = await makeBackup(database, order, path);
    const removed = removeOldest(to, made.book.bookId, keep);
    return { ...made, path, removed, sameDisk: statSync(to).dev === statSync(folder).dev };
  } finally {
    database.sqlite.close();
  }
}

function freePath(path: string): string {
  for (let n = 2, free = path; ; n++) {
    if (!existsSync(free)) return free;
    free = `${path}-${n}`;
  }
}

async function makeBackup(database: BookDatabase, { folder, at }: BackupOrder, path: string) {
  const draft = `${path}.draft`;
  try {
    mkdirSync(draft, { recursive: true });
    const manifest = { slatelineBackup: 1, madeAt: at.toISOString() } as const;
    const begun = { ...manifest, complete: false, book: emptySummary(database) };
    writeManifest(draft, { ...begun, photos: [] });
    const book = await copyDatabase(database, draft);
    // Listed after the database: a photo is on disk before the book names it, so none that it names is missed.
    const planned = photoPaths(folder).map((photo) => ({ path: photo, bytes: 0, sha256: '' }));
    writeManifest(draft, { ...begun, photos: planned });
    const photos = planned.map((photo) => copyPhoto(photo.path, folder, draft));
    writeManifest(draft, { ...manifest, complete: true, book, photos });
    renameSync(draft, path);
    syncFolder(dirname(path));
    return { book, photos: photos.length, bytes: bytesOf(path, photos) };
  } catch (error) {
    if (readManifest(draft) !== null) removeBackup(draft);
    throw asBackupFailure(error, folder, path);
  }
}

/** The copy is of one moment, though others may write meanwhile: it is taken inside a reading transaction. */
async function copyDatabase(database: BookDatabase, draft: string): Promise<BookSummary> {
  const { sqlite, folder } = database;
  const target = join(draft, fileName);
  withFailures(folder, () => sqlite.exec('BEGIN'));
  try {
    const book = withFailures(folder, () => summaryOf(database));
    await backup(sqlite, target, { rate: 1000 });
    const different = summaryDifferences(book, readCopy(target));
    if (different.length > 0) throw new Error(`the copy differs in ${different.join(', ')}`);
    return book;
  } finally {
    if (sqlite.isTransaction) sqlite.exec('ROLLBACK');
  }
}

/** Opens the copy, has SQLite look at every page of it, and reads all of it. */
function readCopy(path: string): BookSummary {
  const copy = openDatabase(path, path, 5000);
  try {
    // One file without a log beside it, so that it can be read from a disk that cannot be written.
    copy.sqlite.exec('PRAGMA journal_mode = DELETE');
    const check = copy.sqlite.prepare('PRAGMA integrity_check').get();
    if (check?.integrity_check !== 'ok') throw new Error(String(check?.integrity_check));
    return summaryOf(copy);
  } finally {
    copy.sqlite.close();
  }
}

function emptySummary(database: BookDatabase): BookSummary {
  const bookId = withFailures(database.folder, () =>
    String(database.sqlite.prepare('SELECT book_id FROM book').get()?.book_id),
  );
  const nothing = { name: '', schema: 0, dataVersion: '', acts: 0, revisions: 0 };
  return { ...nothing, bookId, recordsSha256: '', historySha256: '' };
}

function bytesOf(path: string, photos: readonly PhotoFile[]): number {
  const files = statSync(join(path, fileName)).size + statSync(join(path, manifestName)).size;
  return photos.reduce((total, photo) => total + photo.bytes, files);
}

/** A fault of the book keeps its own sentence; what stood in the way at the target is the backup's. */
function asBackupFailure(error: unknown, folder: string, path: string): unknown {
  if (error instanceof Failure && error.parameters.folder === folder) return error;
  const known = asFileFailure(error, path);
  const detail = known instanceof Failure ? inShort[known.code] : undefined;
  return new Failure('backup-failed', { path, detail: detail ?? (error as Error).message }, error);
}

const inShort: Readonly<Partial<Record<string, string>>> = {
  'disk-full': 'the disk there is full',
  'read-only': 'nothing may be written there',
};
