/** Where the book's history has got to, and whether the file is still where it was opened. */

import { statSync } from 'node:fs';
import { Failure } from '../survey/failure.ts';
import type { BookDatabase } from './book-database.ts';

export interface LastWritten {
  /** The newest identity in the history, of an act or a record; null in an empty book. */
  readonly identity: string | null;
  /** When the last act was signed: ISO instant by the clock of its device. */
  readonly at: string | null;
}

export function lastWritten({ sqlite }: BookDatabase): LastWritten {
  // Both are looked up in an index. Time-ordered identities (version 7) only: others say nothing about time.
  const newest = sqlite
    .prepare('SELECT max((SELECT max(id) FROM acts), (SELECT max(record_id) FROM revisions)) AS newest')
    .get()?.newest;
  const at = sqlite.prepare('SELECT "at" FROM acts ORDER BY number DESC LIMIT 1').get()?.at;
  const identity = typeof newest === 'string' && newest[14] === '7' ? newest : null;
  return { identity, at: typeof at === 'string' ? at : null };
}

/** Gives a look at the file that throws when another file, or none, is in its place: a stick pulled out, a folder moved. */
export function watchPlace(folder: string, path: string): () => void {
  const opened = statSync(path, { bigint: true });
  return () => {
    const now = statSync(path, { bigint: true, throwIfNoEntry: false });
    if (now?.ino === opened.ino && now.dev === opened.dev) return;
    throw new Failure('folder-gone', { folder });
  };
}
