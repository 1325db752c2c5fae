/** The file `backup.json` beside a copied book: what was copied, so that it can be proved later, and removed safely. */

import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import type { BookSummary } from './book-summary.ts';
import type { PhotoFile } from './photo-files.ts';

export const manifestName = 'backup.json';

export interface BackupManifest {
  readonly slatelineBackup: 1;
  /** False while it is being made: such a folder is no backup, and may be removed by the next one. */
  readonly complete: boolean;
  /** ISO instant in UTC. */
  readonly madeAt: string;
  readonly book: BookSummary;
  readonly photos: readonly PhotoFile[];
}

/** Null where there is none, or one that is not ours. */
export function readManifest(folder: string): BackupManifest | null {
  try {
    const read: unknown = JSON.parse(readFileSync(join(folder, manifestName), 'utf8'));
    return isManifest(read) ? read : null;
  } catch {
    return null;
  }
}

/** Written whole under another name first: half a manifest would disown the files it lists. */
export function writeManifest(folder: string, manifest: BackupManifest): void {
  const path = join(folder, manifestName);
  const file = openSync(`${path}.draft`, 'w');
  try {
    writeSync(file, `${JSON.stringify(manifest, null, 2)}\n`);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(`${path}.draft`, path);
}

function isManifest(value: unknown): value is BackupManifest {
  if (typeof value !== 'object' || value === null) return false;
  const { slatelineBackup, complete, madeAt, book, photos } = value as Partial<BackupManifest>;
  return (
    slatelineBackup === 1 &&
    typeof complete === 'boolean' &&
    typeof madeAt === 'string' &&
    typeof book?.bookId === 'string' &&
    Array.isArray(photos)
  );
}
