/** What a book holds, in a few lines that two copies must share. */

import { createHash } from 'node:crypto';
import type { BookDatabase } from './book-database.ts';
import { dumpTables } from './dump-tables.ts';
import { schemaVersion } from './migrations.ts';
import { digestText } from './record-digest.ts';
import { readDigest } from './stored-digest.ts';

export interface BookSummary {
  readonly bookId: string;
  readonly name: string;
  readonly schema: number;
  readonly dataVersion: string;
  readonly acts: number;
  readonly revisions: number;
  /** SHA-256 of every column of every current row, in order of identity. */
  readonly recordsSha256: string;
  /** SHA-256 of every act and revision, in their order. */
  readonly historySha256: string;
}

/** Reads the whole book once. */
export function summaryOf(database: BookDatabase): BookSummary {
  const { sqlite } = database;
  const book = sqlite.prepare('SELECT book_id, name FROM book').get();
  const count = (table: string) => Number(sqlite.prepare(`SELECT count(*) AS n FROM ${table}`).get()?.n);
  const records = createHash('sha256');
  for (const line of dumpTables(database)) records.update(line);
  return {
    bookId: String(book?.book_id),
    name: String(book?.name),
    schema: schemaVersion(database),
    dataVersion: dataVersionOf(database),
    acts: count('acts'),
    revisions: count('revisions'),
    recordsSha256: records.digest('hex'),
    historySha256: historySha256(database),
  };
}

/** The data version as people see it: twelve digits of the digest. */
export function dataVersionOf(database: BookDatabase): string {
  return digestText(readDigest(database)).slice(0, 12);
}

/** The names of what differs; none when two copies hold the same. */
export function summaryDifferences(one: BookSummary, other: BookSummary): readonly string[] {
  const keys = Object.keys(one) as (keyof BookSummary)[];
  return keys.filter((key) => one[key] !== other[key]).map((key) => words[key]);
}

const words: Readonly<Record<keyof BookSummary, string>> = {
  bookId: 'the book itself',
  name: 'its name',
  schema: 'its form',
  dataVersion: 'the data version',
  acts: 'the number of acts',
  revisions: 'the number of revisions',
  recordsSha256: 'the records',
  historySha256: 'the history',
};

function historySha256({ sqlite }: BookDatabase): string {
  const digest = createHash('sha256');
  for (const query of ['SELECT * FROM acts ORDER BY number', 'SELECT * FROM revisions ORDER BY seq']) {
    const statement = sqlite.prepare(query);
    statement.setReturnArrays(true);
    for (const row of statement.iterate()) digest.update(`${JSON.stringify(row)}\n`);
  }
  return digest.digest('hex');
}
