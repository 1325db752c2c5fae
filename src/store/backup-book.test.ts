import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { checksumOf, identityFrom, pictureOf, record, sign, smallSurvey } from '../../test/store-records.ts';
import { backupBook } from './backup-book.ts';
import { readManifest, writeManifest } from './backup-manifest.ts';
import { createBook, openBook } from './book-folder.ts';
import { restoreBook } from './restore-book.ts';
import { verifyBook } from './verify-book.ts';

const ids = identityFrom(41);
let home: string;
let folder: string;
let to: string;
/** A Friday evening, then one evening later each time. */
let evening = 0;
const nextEvening = () => new Date(2026, 8, 4 + evening++, 18, 0, 0);
const backUp = (keep = 10) => backupBook({ folder, to, keep, at: nextEvening() });
const restore = (backup: string, into = folder) => restoreBook({ backup, folder: into, at: nextEvening() });
/** The file of the photo that the small survey names. */
const ofSurvey = `${checksumOf(pictureOf(1))}.jpg`;
const photo = (name: string) => join(folder, 'photos', name);

beforeEach(async () => {
  home = mkdtempSync(join(tmpdir(), 'backup-'));
  folder = join(home, 'north');
  to = join(home, 'stick');
  evening = 0;
  const at = '2026-09-04T08:00:00.000Z';
  const store = await createBook(folder, { name: 'North reefs', invented: true, at, bookId: ids() });
  await store.apply(smallSurvey().changes, sign('import'), ids);
  await store.close();
  mkdirSync(photo('day 1'));
  writeFileSync(photo('day 1/é.jpg'), 'one picture');
  writeFileSync(photo('slate.jpg'), 'another');
  writeFileSync(photo(ofSurvey), pictureOf(1));
});
afterEach(() => rmSync(home, { recursive: true }));

async function change(): Promise<void> {
  const store = await openBook(folder);
  const after = record('stratum', { id: ids(), name: `stratum ${ids()}` });
  await store.apply([{ kind: 'stratum', recordId: after.id, after }], sign('change'), ids);
  await store.close();
}

async function dumpOf(of: string): Promise<string> {
  const store = await openBook(of);
  const dump = await store.dump();
  await store.close();
  return dump;
}

describe('a backup', () => {
  test('is a dated folder with the book, the photos and what they must be', async () => {
    const made = await backUp();
    expect(made.path).toBe(join(to, `2026-09-04-180000-${made.book.dataVersion}`));
    expect(readdirSync(made.path).toSorted()).toEqual(['backup.json', 'book.sqlite', 'photos']);
    expect(readFileSync(join(made.path, 'photos/day 1/é.jpg'), 'utf8')).toBe('one picture');
    const { findings } = await verifyBook({ folder: made.path, backups: to });
    expect(findings).toMatchObject([{ check: 'backup', sound: true }]);
  });

  test('taken while another program writes holds what had been written, and nothing of the rest', async () => {
    const before = await dumpOf(folder);
    const writer = new DatabaseSync(join(folder, 'book.sqlite'));
    writer.exec('BEGIN IMMEDIATE; UPDATE tallies SET "count" = 999');
    const made = await backUp();
    writer.exec('COMMIT');
    writer.close();
    const fresh = join(home, 'fresh');
    await restore(made.path, fresh);
    expect(await dumpOf(fresh)).toBe(before);
  });

  test('cannot be worked on by mistake', async () => {
    const { path } = await backUp();
    await expect(openBook(path)).rejects.toMatchObject({ code: 'book-is-backup' });
  });

  test.each([
    ['a byte of the book', (path: string) => turnByteOf(join(path, 'book.sqlite'), 'reef flat')],
    ['a photo', (path: string) => writeFileSync(join(path, 'photos/slate.jpg'), 'Another')],
    ['a missing photo', (path: string) => rmSync(join(path, 'photos/slate.jpg'))],
    ['a missing book', (path: string) => rmSync(join(path, 'book.sqlite'))],
    ['a count', (path: string) => alter(path, 'UPDATE tallies SET "count" = 7')],
  ])('in which %s has changed is found out, and never restored', async (_, damage) => {
    const { path } = await backUp();
    damage(path);
    expect((await verifyBook({ folder: path, backups: to })).findings[0]!.sound).toBe(false);
    const before = await dumpOf(folder);
    await expect(restore(path)).rejects.toMatchObject({ code: 'backup-damaged' });
    expect(await dumpOf(folder)).toBe(before);
    expect(readdirSync(folder).toSorted()).toEqual(['book.sqlite', 'photos']);
  });
});

describe('the rotation', () => {
  test('keeps the newest and removes the oldest, only after the new one is made', async () => {
    const made = [];
    for (let i = 0; i < 4; i++) {
      await change();
      made.push(await backUp(2));
    }
    expect(readdirSync(to).toSorted()).toEqual(made.slice(2).map(({ path }) => path.split('/').at(-1)));
    expect(made.map(({ removed }) => removed.length)).toEqual([0, 0, 1, 1]);
  });

  test('never removes a file that it did not make, nor a backup of another book', async () => {
    const first = await backUp(1);
    writeFileSync(join(first.path, 'note by the officer.txt'), 'keep');
    mkdirSync(join(to, '2026-01-01-180000-0123456789ab'));
    writeFileSync(join(to, '2026-01-01-180000-0123456789ab', 'holiday.jpg'), 'keep');
    const foreign = join(to, '2026-01-02-180000-0123456789ab');
    mkdirSync(foreign);
    const manifest = readManifest(first.path)!;
    writeManifest(foreign, { ...manifest, book: { ...manifest.book, bookId: ids() } });
    await change();
    const second = await backUp(1);
    expect(second.removed).toEqual([first.path]);
    expect(readdirSync(first.path)).toEqual(['note by the officer.txt']);
    expect(existsSync(join(foreign, 'backup.json'))).toBe(true);
    expect(readdirSync(join(to, '2026-01-01-180000-0123456789ab'))).toEqual(['holiday.jpg']);
  });

  test('clears away what a backup that died half-way has left', async () => {
    const { path } = await backUp();
    const half = join(to, '2026-09-04-190000-0123456789ab.draft');
    mkdirSync(half);
    writeManifest(half, { ...readManifest(path)!, complete: false });
    writeFileSync(join(half, 'book.sqlite'), 'half a book');
    await backUp();
    expect(existsSync(half)).toBe(false);
  });

  test('of two backups in one second makes two', async () => {
    const at = nextEvening();
    const both = [
      await backupBook({ folder, to, keep: 10, at }),
      await backupBook({ folder, to, keep: 10, at }),
    ];
    expect(new Set(both.map(({ path }) => path)).size).toBe(2);
    expect(readdirSync(to)).toHaveLength(2);
  });
});

describe('restoring', () => {
  test('brings back the book and its photos and moves the present ones aside, as a book of its own', async () => {
    const before = await dumpOf(folder);
    const { path } = await backUp();
    await change();
    writeFileSync(photo('slate.jpg'), 'painted over');
    const present = await dumpOf(folder);
    const restored = await restore(to);
    expect(restored.backup).toBe(path);
    expect(await dumpOf(folder)).toBe(before);
    expect(readFileSync(photo('slate.jpg'), 'utf8')).toBe('another');
    expect(await dumpOf(restored.movedAside!)).toBe(present);
    expect(readFileSync(join(restored.movedAside!, 'photos/slate.jpg'), 'utf8')).toBe('painted over');
    const { findings } = await verifyBook({ folder, backups: to });
    expect(findings.filter(({ sound }) => !sound)).toEqual([]);
  });

  test('into a folder of other things is refused and touches nothing', async () => {
    const { path } = await backUp();
    const other = join(home, 'letters');
    mkdirSync(other);
    writeFileSync(join(other, 'letter.txt'), '');
    await expect(restore(path, other)).rejects.toMatchObject({ code: 'folder-not-empty' });
    expect(readdirSync(other)).toEqual(['letter.txt']);
  });

  test('that died between the two moves is done again, and the book moved aside stays', async () => {
    const before = await dumpOf(folder);
    const { path } = await backUp();
    const aside = join(folder, 'before-restore-2026-09-04-200000');
    mkdirSync(aside);
    for (const name of ['book.sqlite', 'photos']) renameSync(join(folder, name), join(aside, name));
    mkdirSync(join(folder, 'restoring'));
    writeFileSync(join(folder, 'restoring', 'book.sqlite'), 'half a copy');
    const restored = await restore(path);
    expect(restored.movedAside).toBeNull();
    expect(await dumpOf(folder)).toBe(before);
    expect(await dumpOf(aside)).toBe(before);
  });

  test('from a folder without backups is said', async () => {
    await expect(restore(home, join(home, 'new'))).rejects.toMatchObject({ code: 'no-backup-here' });
  });

  test('a backup of a later program is refused before anything is moved', async () => {
    const { path } = await backUp();
    const manifest = readManifest(path)!;
    writeManifest(path, { ...manifest, book: { ...manifest.book, schema: 9001 } });
    await expect(restore(path)).rejects.toMatchObject({ code: 'book-newer' });
    expect(readdirSync(folder).toSorted()).toEqual(['book.sqlite', 'photos']);
  });
});

describe('a photo that the book names', () => {
  const photosFound = async (backups = to) =>
    (await verifyBook({ folder, backups })).findings.find(({ check }) => check === 'photos');

  test('is looked at without any backup: missing or with other bytes it is said by name', async () => {
    expect(await photosFound()).toMatchObject({ sound: true });
    writeFileSync(photo(ofSurvey), 'another picture');
    const changed = { sound: false, detail: `${ofSurvey} (IMG "1".jpg) is changed` };
    expect(await photosFound()).toMatchObject(changed);
    rmSync(photo(ofSurvey));
    expect(await photosFound()).toMatchObject({ detail: `${ofSurvey} (IMG "1".jpg) is missing` });
  });

  test('comes back with its record from a backup, match and history too', async () => {
    const made = await backUp();
    const dump = await dumpOf(folder);
    const fresh = join(home, 'fresh');
    await restore(made.path, fresh);
    expect(await dumpOf(fresh)).toBe(dump);
    expect(dump).toContain(checksumOf(pictureOf(1)));
    expect(readFileSync(join(fresh, 'photos', ofSurvey), 'utf8')).toBe(pictureOf(1));
    const { findings } = await verifyBook({ folder: fresh, backups: to });
    expect(findings.filter(({ sound }) => !sound)).toEqual([]);
  });
});

describe('verifying a book', () => {
  const unsound = async () =>
    (await verifyBook({ folder, backups: to })).findings
      .filter(({ sound }) => !sound)
      .map(({ check }) => check);

  test('finds nothing wrong with a book that was only worked on, nor with an empty one', async () => {
    await change();
    expect(await unsound()).toEqual([]);
    const empty = join(home, 'empty');
    const at = '2026-09-04T08:00:00.000Z';
    await (await createBook(empty, { name: 'empty', invented: true, at, bookId: ids() })).close();
    const { findings } = await verifyBook({ folder: empty, backups: to });
    expect(findings.filter(({ sound }) => !sound)).toEqual([]);
  });

  test.each([
    ['a photo that changed since the backup', () => writeFileSync(photo('slate.jpg'), 'x'), ['photos']],
    [
      'a record changed by another program',
      () => alter(folder, 'UPDATE strata SET area_ha = 1'),
      ['records'],
    ],
    [
      'a revision cut out',
      () => alter(folder, 'DROP TRIGGER revisions_are_kept; DELETE FROM revisions WHERE seq = 2'),
      ['history', 'records'],
    ],
    [
      'a revision rewritten',
      () =>
        alter(
          folder,
          `DROP TRIGGER revisions_stay_as_written;
           UPDATE revisions SET after_row = replace(after_row, 'North reef', 'South reef') WHERE kind = 'stratum'`,
        ),
      ['records', 'data version'],
    ],
    [
      'a reference cut',
      () => alter(folder, 'PRAGMA foreign_keys = OFF; DELETE FROM transects'),
      ['references', 'records'],
    ],
  ])('finds %s', async (_, damage, expected) => {
    await backUp();
    damage();
    expect(await unsound()).toEqual(expected);
  });
});

function turnByteOf(path: string, text: string): void {
  const bytes = readFileSync(path);
  bytes[bytes.indexOf(text)]! ^= 1;
  writeFileSync(path, bytes);
}

function alter(of: string, sql: string): void {
  const database = new DatabaseSync(join(of, 'book.sqlite'));
  database.exec(sql);
  database.close();
}
