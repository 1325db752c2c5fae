import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type StoreUnderTest, storeContract } from '../../test/store-contract.ts';
import { identityFrom, kindsMissing, record, sign, smallSurvey } from '../../test/store-records.ts';
import { createBook, openBook, openMemoryBook } from './book-folder.ts';
import type { SqliteStore } from './sqlite-store.ts';

const ids = identityFrom(3);
const newBook = () => ({
  name: 'North reefs',
  invented: true,
  at: '2025-03-01T08:00:00.000Z',
  bookId: ids(),
});

storeContract('the store on SQLite in a folder', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-'));
  const under = (store: SqliteStore): StoreUnderTest => ({
    store,
    dump: () => store.dump(),
    reopen: async () => {
      await store.close();
      return under(await openBook(folder));
    },
    discard: async () => {
      await store.close();
      rmSync(folder, { recursive: true });
    },
  });
  return under(await createBook(folder, newBook()));
});

storeContract('the store on SQLite in memory', async () => {
  const store = await openMemoryBook(newBook());
  return { store, dump: () => store.dump(), reopen: null, discard: () => store.close() };
});

test('the contract is tried with every kind of record', () => {
  expect(kindsMissing()).toEqual([]);
});

describe('a book on disk', () => {
  let folder: string;
  let store: SqliteStore;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'book-'));
    store = await createBook(folder, newBook());
    await store.apply(smallSurvey().changes, sign('import'), ids);
  });
  afterEach(async () => {
    await store.close();
    rmSync(folder, { recursive: true });
  });

  /** The book as any database program sees it. */
  function withDatabase<Value>(look: (database: DatabaseSync) => Value): Value {
    const database = new DatabaseSync(join(folder, 'book.sqlite'));
    try {
      return look(database);
    } finally {
      database.close();
    }
  }

  // By hand: of the four tallies one has two entries of lengths and one has one.
  test('the view lengths shows one row for each measured length', () => {
    const rows = withDatabase((database) =>
      database.prepare('SELECT length_mm, n, measure, photo FROM lengths ORDER BY tally_id, place').all(),
    );
    expect(rows.map((row) => ({ ...row }))).toEqual([
      { length_mm: 182.5, n: 2, measure: null, photo: null },
      { length_mm: 90, n: 1, measure: 'body relaxed', photo: 'photos/é "1".jpg' },
      { length_mm: 182.5, n: 2, measure: null, photo: null },
    ]);
  });

  test('no program can change or delete the history', () => {
    withDatabase((database) => {
      for (const table of ['acts', 'revisions']) {
        expect(() => database.exec(`DELETE FROM ${table}`)).toThrow(`${table} are never deleted`);
      }
      expect(() => database.exec("UPDATE revisions SET after_row = ''")).toThrow(
        'revisions are never changed',
      );
      expect(() => database.exec("UPDATE acts SET who = ''")).toThrow('acts are never changed');
    });
  });

  test('what was changed behind our back is put right by a rebuild', async () => {
    const dump = await store.dump();
    withDatabase((database) => database.exec('UPDATE tallies SET "count" = 99'));
    expect(await store.dump()).not.toBe(dump);
    await store.rebuild();
    expect(await store.dump()).toBe(dump);
  });

  test('while another program writes, a write says that the book is locked and writes nothing', async () => {
    const patient = await openBook(folder, { busyTimeoutMs: 20 });
    const before = await store.dump();
    await new Promise<void>((done) => {
      withDatabase((database) => {
        database.exec('BEGIN IMMEDIATE');
        // apply works at once, before it gives a promise: the lock is held while it tries.
        const refused = patient.apply(smallSurvey(2).changes, sign('import'), ids);
        database.exec('ROLLBACK');
        done(expect(refused).rejects.toMatchObject({ code: 'book-locked', parameters: { folder } }));
      });
    });
    expect(await store.dump()).toBe(before);
    await patient.close();
  });

  // An invariance: all of the second act or none of it, whenever the program is killed.
  test.each([1, 400, 1999])(
    'killed before change %i of 2000, the book holds the first act whole and nothing of the second',
    async (deadline) => {
      const before = await store.dump();
      await store.close();
      expect(dieDuringApply(folder, deadline).signal).toBe('SIGKILL');
      store = await openBook(folder);
      expect(await store.dump()).toBe(before);
      await expectSound();
    },
  );

  test('killed as soon as the write has returned, the book holds all of it', async () => {
    await store.close();
    expect(dieDuringApply(folder, 2000).signal).toBe('SIGKILL');
    store = await openBook(folder);
    expect(await store.all('stratum')).toHaveLength(2001);
    await expectSound();
  });

  async function expectSound(): Promise<void> {
    const check = withDatabase((database) => database.prepare('PRAGMA integrity_check').get());
    expect(check?.integrity_check).toBe('ok');
    const dump = await store.dump();
    await store.rebuild();
    expect(await store.dump()).toBe(dump);
    const after = record('stratum', { name: 'the work goes on' });
    await store.apply([{ kind: 'stratum', recordId: after.id, after }], sign('next day'), ids);
    expect(await store.all('stratum')).toContainEqual(after);
  }
});

function dieDuringApply(folder: string, deadline: number) {
  const script = fileURLToPath(new URL('../../test/die-during-apply.ts', import.meta.url));
  return spawnSync(process.execPath, [script, folder, String(deadline)], { stdio: 'inherit' });
}

// The revisions of a large act go to the database in batches: by hand, 64 at a time, so on both sides of one and two.
test.each([63, 64, 65, 129])(
  'an act of %i records leaves one revision for each, in order',
  async (records) => {
    const store = await openMemoryBook(newBook());
    const strata = Array.from({ length: records }, (_, i) => record('stratum', { id: ids(), name: `S${i}` }));
    const changes = strata.map((after) => ({ kind: 'stratum', recordId: after.id, after }) as const);
    await store.apply(changes, sign('import'), ids);
    const written: unknown[] = [];
    for await (const { before, after } of store.revisions()) written.push({ before, after });
    expect(written).toEqual(strata.map((after) => ({ before: null, after })));
    const dump = await store.dump();
    await store.rebuild();
    expect(await store.dump()).toBe(dump);
    await store.close();
  },
);
