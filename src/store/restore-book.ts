/**
 * Brings a backup back. Never over the only copy: the book that is there is moved aside first, into a
 * dated folder that is itself a book, and a backup that is not as it was made touches nothing.
 */

import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { Failure } from '../survey/failure.ts';
import { type BackupManifest, readManifest } from './backup-manifest.ts';
import { backupsIn } from './backup-rotation.ts';
import { openDatabase } from './book-database.ts';
import { fileName } from './book-folder.ts';
import { type BookSummary, summaryDifferences, summaryOf } from './book-summary.ts';
import { dateStamp } from './date-stamp.ts';
import { asFileFailure } from './file-failures.ts';
import { readMigrations } from './migrations.ts';
import { copyPhoto, photoState, photosName } from './photo-files.ts';
import { syncFile, syncFolder } from './sync-file.ts';

export interface RestoreOrder {
  /** One backup, or the folder in which they lie: then the newest. */
  readonly backup: string;
  readonly folder: string;
  readonly at: Date;
}

export interface Restored {
  readonly backup: string;
  readonly madeAt: string;
  readonly book: BookSummary;
  readonly photos: number;
  /** Where the book that was there lies now; null where there was none. */
  readonly movedAside: string | null;
}

export async function restoreBook({ backup, folder, at }: RestoreOrder): Promise<Restored> {
  const path = backupAsked(backup);
  const manifest = readManifest(path)!;
  refuseNewerBackup(path, manifest);
  const differences = backupFaults(path, manifest);
  if (differences.length > 0) throw new Failure('backup-damaged', { path, detail: differences.join('; ') });
  refuseForeignFolder(folder);
  refuseWhileWritten(folder);
  try {
    const draft = copyBeside(path, manifest, folder);
    const movedAside = moveAside(folder, at);
    renameSync(join(draft, photosName), join(folder, photosName));
    renameSync(join(draft, fileName), join(folder, fileName));
    rmSync(draft, { recursive: true });
    syncFolder(folder);
    return {
      backup: path,
      madeAt: manifest.madeAt,
      book: manifest.book,
      photos: manifest.photos.length,
      movedAside,
    };
  } catch (error) {
    throw asFileFailure(error, folder);
  }
}

/** What in a backup is not as it was made; nothing when all is. Writes nothing. */
export function backupFaults(path: string, manifest: BackupManifest): readonly string[] {
  return [
    ...databaseFaults(join(path, fileName), manifest),
    ...manifest.photos.flatMap((photo) => {
      const state = photoState(path, photo);
      return state === 'same' ? [] : [`the photo ${photo.path} is ${state}`];
    }),
  ];
}

function databaseFaults(path: string, manifest: BackupManifest): readonly string[] {
  if (!existsSync(path)) return [`${fileName} is missing`];
  try {
    const copy = openDatabase(path, path, 5000, { readOnly: true });
    try {
      const check = copy.sqlite.prepare('PRAGMA integrity_check').get();
      if (check?.integrity_check !== 'ok') return [String(check?.integrity_check).split('\n')[0]!];
      return summaryDifferences(manifest.book, summaryOf(copy)).map((what) => `${what} changed`);
    } finally {
      copy.sqlite.close();
    }
  } catch (error) {
    return [(error as Error).message];
  }
}

function backupAsked(path: string): string {
  if (readManifest(path)?.complete) return path;
  const newest = backupsIn(path)[0] ?? backupsIn(join(path, 'backups'))[0];
  if (newest === undefined) throw new Failure('no-backup-here', { path });
  return newest.path;
}

/** Refused before anything is moved: this program could not open what it had restored. */
function refuseNewerBackup(path: string, { book }: BackupManifest): void {
  const known = readMigrations().at(-1)?.number ?? 0;
  if (book.schema <= known) return;
  throw new Failure('book-newer', { folder: path, version: book.schema, known });
}

/** Backups may lie in the folder of a book that is gone; anything else there belongs to somebody. */
function refuseForeignFolder(folder: string): void {
  if (!existsSync(folder) || existsSync(join(folder, fileName))) return;
  const strange = readdirSync(folder).filter((name) => !ours.test(name));
  if (strange.length > 0) throw new Failure('folder-not-empty', { folder });
}

const ours = /^(backups|photos|restoring|before-restore-.*|report\.html|book\.sqlite.*)$/;

/** A program that is writing would go on writing to the book that was moved aside. */
function refuseWhileWritten(folder: string): void {
  if (!existsSync(join(folder, fileName))) return;
  try {
    const present = openDatabase(folder, join(folder, fileName), 1000);
    try {
      present.sqlite.exec('BEGIN IMMEDIATE; ROLLBACK');
    } finally {
      present.sqlite.close();
    }
  } catch (error) {
    // A damaged book is why we are here: only a lock stands in the way.
    if (/locked/.test((error as Error).message)) throw new Failure('book-locked', { folder }, error);
  }
}

/** The copy is whole, read again and on disk before anything that was there is touched. */
function copyBeside(path: string, manifest: BackupManifest, folder: string): string {
  const draft = join(folder, 'restoring');
  rmSync(draft, { recursive: true, force: true });
  mkdirSync(join(draft, photosName), { recursive: true });
  copyFileSync(join(path, fileName), join(draft, fileName));
  syncFile(join(draft, fileName));
  for (const photo of manifest.photos) copyPhoto(photo.path, path, draft);
  const faults = backupFaults(draft, manifest);
  if (faults.length > 0) {
    throw new Failure('disk-fault', { folder, detail: `what was copied came back otherwise: ${faults[0]}` });
  }
  return draft;
}

function moveAside(folder: string, at: Date): string | null {
  const present = readdirSync(folder).filter((name) => /^(photos|book\.sqlite.*)$/.test(name));
  if (!present.includes(fileName)) {
    // Photos of a book that is gone still are somebody's photographs.
    if (present.length === 0 || readdirSync(join(folder, present[0]!)).length === 0) {
      for (const name of present) rmSync(join(folder, name), { recursive: true });
      return null;
    }
  }
  const name = join(folder, `before-restore-${dateStamp(at)}`);
  let aside = name;
  for (let n = 2; existsSync(aside); n++) aside = `${name}-${n}`;
  mkdirSync(aside);
  for (const name of present) renameSync(join(folder, name), join(aside, name));
  return aside;
}
