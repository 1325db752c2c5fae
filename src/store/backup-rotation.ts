/** The backups that lie in one folder: found, and the oldest removed. Never a file that no manifest lists. */

import { existsSync, readdirSync, rmdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type BackupManifest, manifestName, readManifest } from './backup-manifest.ts';
import { fileName } from './book-folder.ts';
import { photosName } from './photo-files.ts';

export interface FoundBackup {
  readonly path: string;
  readonly manifest: BackupManifest;
}

/** The finished backups in a folder, newest first; of one book when its identity is given. */
export function backupsIn(folder: string, bookId?: string): readonly FoundBackup[] {
  return allIn(folder)
    .filter(({ manifest }) => manifest.complete && (bookId ?? manifest.book.bookId) === manifest.book.bookId)
    .toReversed();
}

/** Keeps the newest of a book, removes the others and what a backup left half-made, and says which. */
export function removeOldest(folder: string, bookId: string, keep: number): readonly string[] {
  const old = backupsIn(folder, bookId).slice(keep);
  const halfMade = allIn(folder).filter(
    ({ path, manifest }) => !manifest.complete && path.endsWith('.draft') && manifest.book.bookId === bookId,
  );
  for (const { path } of [...old, ...halfMade]) removeBackup(path);
  return old.map(({ path }) => path);
}

/** Removes the files that its manifest lists, and the folders that are empty then: what others put there stays. */
export function removeBackup(folder: string): void {
  const manifest = readManifest(folder);
  if (manifest === null) return;
  const photos = manifest.photos.map((photo) => join(folder, photosName, photo.path));
  for (const photo of photos) rmSync(photo, { force: true });
  const folders = new Set(photos.flatMap((photo) => parentsWithin(folder, photo)));
  for (const one of [...folders].sort((a, b) => b.length - a.length)) removeIfEmpty(one);
  for (const name of [fileName, `${fileName}-journal`, `${fileName}-wal`, `${fileName}-shm`]) {
    rmSync(join(folder, name), { force: true });
  }
  rmSync(join(folder, manifestName), { force: true });
  removeIfEmpty(folder);
}

/** In order of the date in their names. */
function allIn(folder: string): readonly FoundBackup[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && ourName.test(entry.name))
    .map((entry) => join(folder, entry.name))
    .sort()
    .flatMap((path) => {
      const manifest = readManifest(path);
      return manifest === null ? [] : [{ path, manifest }];
    });
}

const ourName = /^\d{4}-\d\d-\d\d-\d{6}-[0-9a-f]{12}(-\d+)?(\.draft)?$/;

function parentsWithin(folder: string, path: string): string[] {
  const parents: string[] = [];
  for (let one = dirname(path); one.length > folder.length; one = dirname(one)) parents.push(one);
  return parents;
}

function removeIfEmpty(folder: string): void {
  if (existsSync(folder) && readdirSync(folder).length === 0) rmdirSync(folder);
}
