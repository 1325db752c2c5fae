import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { identityFrom, sign, smallSurvey } from '../../test/store-records.ts';
import { createBook, openBook } from './book-folder.ts';
import { asFileFailure } from './file-failures.ts';
import { asFailure } from './sqlite-failures.ts';

const ids = identityFrom(4);
const newBook = { name: 'North reefs', invented: false, at: '2025-03-01T08:00:00.000Z', bookId: ids() };

let folder: string;
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'book-')), 'north');
});
afterEach(() => rmSync(join(folder, '..'), { recursive: true }));

const file = () => join(folder, 'book.sqlite');
const alter = (sql: string) => {
  const database = new DatabaseSync(file());
  database.exec(sql);
  database.close();
};

describe('making a book', () => {
  test('makes one database file and a place for photos, and nothing else', async () => {
    await (await createBook(folder, newBook)).close();
    expect(readdirSync(folder).toSorted()).toEqual(['book.sqlite', 'photos']);
  });

  test('the book knows its name, whether it is invented, and when it was made', async () => {
    const store = await createBook(folder, newBook);
    const { name, invented, at: createdAt, bookId } = newBook;
    expect(await store.info()).toEqual({ name, invented, createdAt, bookId });
    await store.close();
  });

  // SQLite's file format: bytes 16 and 17 of the header are the page size (sqlite.org/fileformat.html, from memory).
  test('is written in pages of 16 KB, which an archive needs for its speed', async () => {
    await (await createBook(folder, newBook)).close();
    expect(readFileSync(file()).readUInt16BE(16)).toBe(16_384);
  });

  test('where a book is already, nothing is touched', async () => {
    await (await createBook(folder, newBook)).close();
    const before = readFileSync(file());
    await expect(createBook(folder, newBook)).rejects.toMatchObject({
      code: 'book-exists',
      parameters: { folder },
    });
    expect(readFileSync(file()).equals(before)).toBe(true);
  });

  test('a book left half-made by a dead battery is made again', async () => {
    await (await createBook(folder, newBook)).close();
    rmSync(file());
    writeFileSync(join(folder, 'book.sqlite.draft'), 'half a book');
    await (await createBook(folder, newBook)).close();
    expect(readdirSync(folder).toSorted()).toEqual(['book.sqlite', 'photos']);
  });

  test('a file where the folder should be is said, not thrown raw', async () => {
    writeFileSync(folder, '');
    await expect(createBook(folder, newBook)).rejects.toMatchObject({
      code: 'disk-fault',
      parameters: { folder },
    });
  });
});

describe('opening a book', () => {
  test('a folder without a book is said by name, and no book is made there', async () => {
    await expect(openBook(folder)).rejects.toMatchObject({ code: 'no-book-here', parameters: { folder } });
    expect(existsSync(folder)).toBe(false);
  });

  test('a book of a newer program is refused and not touched', async () => {
    await (await createBook(folder, newBook)).close();
    alter("INSERT INTO migrations VALUES (9001, 'from the future')");
    const before = readFileSync(file());
    await expect(openBook(folder)).rejects.toMatchObject({
      code: 'book-newer',
      parameters: { folder, version: 9001, known: 6 },
    });
    expect(readFileSync(file()).equals(before)).toBe(true);
    expect(readdirSync(folder).toSorted()).toEqual(['book.sqlite', 'photos']);
  });

  test.each([
    ['a file of other content', 'this is no database, '.repeat(500)],
    ['an empty file', ''],
  ])('%s is called damaged and left as it is', async (_, content) => {
    await (await createBook(folder, newBook)).close();
    writeFileSync(file(), content);
    await expect(openBook(folder)).rejects.toMatchObject({ code: 'book-damaged', parameters: { folder } });
    expect(readFileSync(file(), 'utf8')).toBe(content);
  });

  test('a table torn out of the book is called damaged, not answered with nothing', async () => {
    await (await createBook(folder, newBook)).close();
    const bytes = readFileSync(file());
    bytes.fill(0xff, 4096);
    writeFileSync(file(), bytes);
    const reading = openBook(folder).then((store) => store.all('tally').finally(() => store.close()));
    await expect(reading).rejects.toMatchObject({ code: 'book-damaged' });
  });
});

test('on a full disk a write says so and leaves the book as it was', async () => {
  const store = await createBook(folder, newBook);
  const survey = smallSurvey();
  await store.apply(survey.changes, sign('import'), ids);
  const before = await store.dump();
  await store.close();
  const tight = await openBook(folder, { maxPages: 90 });
  const long = { kind: 'mapping', recordId: ids() } as const;
  const after = { id: long.recordId, name: 'long', content: 'x'.repeat(1_000_000) };
  await expect(tight.apply([{ ...long, after }], sign('too much'), ids)).rejects.toMatchObject({
    code: 'disk-full',
  });
  expect(await tight.dump()).toBe(before);
  await tight.close();
});

// SQLite's own list of result codes (sqlite.org/rescode.html, from memory); the extended code keeps its primary low byte.
test.each([
  [8, 'read-only'],
  [8 | (1 << 8), 'read-only'],
  [6, 'book-locked'],
  [10 | (3 << 8), 'disk-fault'],
  [11, 'book-damaged'],
])('result %i of the database is the failure %s', (errcode, code) => {
  const error = Object.assign(new Error('as the database said'), { errcode });
  expect(asFailure(error, folder)).toMatchObject({ code });
});

test.each([
  ['EROFS', 'read-only'],
  ['ENOSPC', 'disk-full'],
])('%s of the file system is the failure %s', (systemCode, code) => {
  expect(asFileFailure(Object.assign(new Error(), { code: systemCode }), folder)).toMatchObject({ code });
});

test('a mistake of ours is not dressed up as a failure', () => {
  const mistake = new Error('ours');
  expect(asFailure(mistake, folder)).toBe(mistake);
});
