/** The digest as it is kept in the book. */

import type { BookDatabase } from './book-database.ts';
import { digestOf, type RecordDigest } from './record-digest.ts';

export function readDigest(database: BookDatabase): RecordDigest {
  const query = database.kysely.selectFrom('data_digest').select('digest');
  return digestOf(String(database.prepare(query).get()?.digest));
}

export function writeDigest(database: BookDatabase, digest: string): void {
  database.prepare(database.kysely.updateTable('data_digest').set({ digest })).run(digest);
}
