/** What goes wrong at sea, made real: each fault is one sentence with the way out, and nothing acknowledged is lost. */

import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { beforeEach, describe, expect, it, test } from 'vitest';
import { identityMaker } from '../../src/cli/identity.ts';
import { run } from '../../src/cli/run.ts';
import { createBook, openBook } from '../../src/store/book-folder.ts';
import { Failure } from '../../src/survey/failure.ts';
import { killAtRandom } from '../faults/kill-at-random.ts';
import { identityFrom, record, sign } from '../store-records.ts';
import { bookWith, slateline, slatelineJson, temporaryFolder, writeFolder } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

const canMount = mountingWorks();
if (!canMount) {
  // biome-ignore lint/suspicious/noConsole: a test that is skipped must say so
  console.warn(
    'SKIPPED: full disk, read-only disk and pulled stick, which need the right to mount (root on Linux)',
  );
}

let book = '';
const file = () => join(book, 'book.sqlite');
const dataVersion = async (folder = book) =>
  (await slatelineJson('density', '--book', folder, '--species', 'sandfish')).dataVersion;

beforeEach(async () => {
  book = await bookWith(miniatureTables());
});

describe('a damaged book', () => {
  it('is said in one sentence with the way out, is left as it is, and comes back from the last backup', async () => {
    const before = await dataVersion();
    expect((await slateline('backup', '--book', book)).exitCode).toBe(0);
    const bytes = readFileSync(file());
    bytes.fill(0xff, 16_384);
    writeFileSync(file(), bytes);
    for (const verb of ['density', 'verify', 'backup']) {
      const ran = await slateline(verb, '--book', book);
      expect(ran.exitCode).toBe(1);
      expect(ran.stderr).toContain('is damaged');
      expect(ran.stderr).toContain(`slateline restore BACKUP --book ${book}`);
    }
    expect(readFileSync(file()).equals(bytes)).toBe(true);
    expect((await slateline('restore', book, '--book', book)).exitCode).toBe(0);
    expect(await dataVersion()).toBe(before);
    const aside = readdirSync(book).find((name) => name.startsWith('before-restore-'))!;
    expect(readFileSync(join(book, aside, 'book.sqlite')).equals(bytes)).toBe(true);
  });

  it('whose pages are sound but whose records were changed by another program is found by verify', async () => {
    withDatabase((database) => database.exec('UPDATE tallies SET "count" = "count" + 1'));
    const { exitCode, rows } = await slatelineJson('verify', '--book', book);
    expect(exitCode).toBe(1);
    expect(rows.filter((row) => !row.sound).map((row) => row.check)).toEqual(['records']);
  });
});

describe('a book of a newer program', () => {
  it('is not touched, and the sentence says which version is needed', async () => {
    withDatabase((database) => database.exec("INSERT INTO migrations VALUES (9001, 'from the future')"));
    const bytes = readFileSync(file());
    const ran = await slateline('density', '--book', book);
    expect(ran.exitCode).toBe(1);
    expect(ran.stderr).toContain('use the later version');
    expect(readFileSync(file()).equals(bytes)).toBe(true);
  });
});

describe('a second program that is writing', () => {
  it('makes an import wait and then say so; nothing is written, and afterwards it works', async () => {
    const before = await dataVersion();
    const second = spawn(process.execPath, [script('hold-the-book.ts'), book], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const ended = new Promise((resolve) => second.on('close', resolve));
    await new Promise((held) => second.stdout.once('data', held));
    const more = writeFolder({
      strata: [
        ['stratum', 'area_ha'],
        ['a new one', 5],
      ],
    });
    const ran = await slateline('import', more, '--book', book);
    expect(ran.exitCode).toBe(1);
    expect(ran.stderr).toContain('another program is writing');
    // Reading and backing up need not wait for a writer.
    expect(await dataVersion()).toBe(before);
    expect((await slateline('backup', '--book', book)).exitCode).toBe(0);
    const restored = await slateline('restore', book, '--book', book);
    expect(restored.stderr).toContain('another program is writing');
    second.stdin.end();
    await ended;
    expect((await slateline('import', more, '--book', book)).exitCode).toBe(0);
  });
});

describe('a clock that jumped back', () => {
  const at = (moment: string, ...args: string[]) => {
    let stderr = '';
    const newId = identityMaker(() => Date.parse(moment));
    const io = {
      stdout: () => {},
      stderr: (text: string) => {
        stderr += text;
      },
      ...{ env: {}, cwd: tmpdir(), device: 'old laptop', user: 'Officer A', isTerminal: false },
      ...{ now: () => new Date(moment), newId, continueAfter: newId.continueAfter },
    };
    return run(args, io).then((exitCode) => ({ exitCode, stderr }));
  };
  const stratum = (name: string) =>
    writeFolder({
      strata: [
        ['stratum', 'area_ha'],
        [name, 5],
      ],
    });

  it('is noted, the changes keep their order, and identities never fall behind those in the book', async () => {
    const first = await at('2026-11-01T08:00:00Z', 'import', stratum('first'), '--book', book);
    expect(first.stderr).not.toContain('clock');
    const second = await at('2000-01-01T00:00:00Z', 'import', stratum('second'), '--book', book);
    expect(second.exitCode).toBe(0);
    expect(second.stderr).toContain('set the clock right');
    const { rows } = await slatelineJson('history', '--book', book, '--limit', '2');
    expect(rows.map((row) => [row.record.stratum, row.clockBehind])).toEqual([
      ['first', false],
      ['second', true],
    ]);
    expect(rows[1].recordId > rows[0].recordId).toBe(true);
    // Not believed, it counts as made just after the first: a view of the year 2000 holds nothing of it.
    const past = await slateline('density', '--book', book, '--as-of', '2000-06-01');
    expect(past.stderr).toContain('the book held nothing yet');
    const late = join(temporaryFolder(), 'late');
    await slateline('export', '--book', book, '--to', late, '--as-of', '2026-11-02');
    expect(readFileSync(join(late, 'strata.csv'), 'utf8')).toContain('second');
    const verified = await slatelineJson('verify', '--book', book);
    expect(verified.exitCode).toBe(0);
    expect(verified.rows.find((row) => row.check === 'clocks').detail).toMatch(/^1 of \d+ acts/);
  });
});

describe('a folder that is moved or pulled out while the book is open', () => {
  it('refuses to call a change written that nobody would find again', async () => {
    const store = await openBook(book);
    const before = await store.dataVersion();
    renameSync(book, `${book}-elsewhere`);
    expect(await codeOf(store.apply(...oneStratum()))).toBe('folder-gone');
    await store.close();
    const ran = await slateline('density', '--book', book);
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('if it lies on a stick');
    renameSync(`${book}-elsewhere`, book);
    expect(await dataVersion()).toBe(before);
  });

  test.skipIf(!canMount)('a stick pulled out in the middle of the work is said as such', async () => {
    await onDisk('4m', async (stick) => {
      const store = await openBook(await freshBook(stick));
      expect(spawnSync('umount', ['-l', stick]).status).toBe(0);
      expect(await codeOf(store.apply(...oneStratum()))).toBe('folder-gone');
      await store.close();
    });
  });
});

describe.skipIf(!canMount)('a full disk', () => {
  it('loses nothing that was acknowledged, and the work goes on when there is room', async () => {
    await onDisk('4m', async (disk) => {
      const folder = await freshBook(disk);
      const store = await openBook(folder);
      const kept: string[] = [];
      const code = await fillWith(store, kept);
      expect(code).toBe('disk-full');
      expect(kept.length).toBeGreaterThan(3);
      const names = async (of: typeof store) => (await of.all('mapping')).map((one) => one.name).toSorted();
      expect(await names(store)).toEqual(kept.toSorted());
      await store.close();
      // Opened again while the disk is still full, and then with room.
      const again = await openBook(folder).catch((error: unknown) => error);
      if (again instanceof Error) expect(again).toMatchObject({ code: 'disk-full' });
      else {
        expect(await names(again as typeof store)).toEqual(kept.toSorted());
        await (again as typeof store).close();
      }
      expect(spawnSync('mount', ['-o', 'remount,size=16m', disk]).status).toBe(0);
      const roomy = await openBook(folder);
      expect(await names(roomy)).toEqual(kept.toSorted());
      await roomy.apply(...oneStratum());
      await roomy.close();
      expect((await slatelineJson('verify', '--book', folder)).exitCode).toBe(0);
    });
  });

  it('where the backups lie leaves no half backup, and the earlier ones stay', async () => {
    // Room for one backup of this book (about 1 MB), not for the next one with its photo.
    await onDisk('3m', async (disk) => {
      mkdirSync(join(book, 'photos'), { recursive: true });
      expect((await slateline('backup', '--book', book, '--to', disk, '--keep', '1')).exitCode).toBe(0);
      const earlier = readdirSync(disk);
      writeFileSync(join(book, 'photos', 'large.jpg'), Buffer.alloc(6_000_000, 7));
      const ran = await slateline('backup', '--book', book, '--to', disk, '--keep', '1');
      expect(ran.exitCode).toBe(1);
      expect(ran.stderr).toMatch(/no backup was made .*full/);
      expect(readdirSync(disk)).toEqual(earlier);
      expect((await slateline('verify', '--book', join(disk, earlier[0]!))).exitCode).toBe(0);
    });
  });
});

describe.skipIf(!canMount)('a disk that may only be read', () => {
  it('is said with the way out, and a backup on it is verified and restored all the same', async () => {
    await onDisk('8m', async (disk) => {
      const folder = await freshBook(disk);
      const stick = join(disk, 'backups');
      expect((await slateline('backup', '--book', folder, '--to', stick)).exitCode).toBe(0);
      expect(spawnSync('mount', ['-o', 'remount,ro', disk]).status).toBe(0);
      const ran = await slateline('density', '--book', folder);
      expect(ran.exitCode).toBe(1);
      expect(ran.stderr).toContain('may only be read here');
      const backup = join(stick, readdirSync(stick)[0]!);
      expect((await slateline('verify', '--book', backup)).exitCode).toBe(0);
      const home = join(temporaryFolder(), 'home');
      expect((await slateline('restore', stick, '--book', home)).exitCode).toBe(0);
      const nowhere = await slateline('backup', '--book', book, '--to', join(disk, 'more'));
      expect(nowhere.stderr).toContain('no backup was made');
    });
  });
});

describe('a folder of somebody else', () => {
  // Root may write everywhere, so the reading is done by a person without rights.
  const nobody = ['--reuid', '65534', '--clear-groups', process.execPath];
  const isRoot = process.getuid?.() === 0;
  const canLeaveRoot = isRoot && spawnSync('setpriv', [...nobody, '--version']).status === 0;

  it.skipIf(!canLeaveRoot)('is said with the way out, and nothing in it changes', () => {
    chmodSync(join(book, '..'), 0o755);
    const before = readFileSync(file());
    const bin = fileURLToPath(new URL('../../bin/slateline.js', import.meta.url));
    const ran = spawnSync('setpriv', [...nobody, bin, 'density', '--book', book], { encoding: 'utf8' });
    expect(ran.stderr).toContain('may only be read here');
    expect(ran.status).toBe(1);
    expect(readFileSync(file()).equals(before)).toBe(true);
    expect(readdirSync(book).toSorted()).toEqual(['book.sqlite', 'photos']);
  });

  it.skipIf(isRoot)('is said with the way out also to its owner who has locked it', async () => {
    chmodSync(book, 0o555);
    const ran = await slateline('density', '--book', book);
    chmodSync(book, 0o755);
    expect(ran.stderr).toContain('may only be read here');
  });
});

// An invariance: whatever the moment, a piece of work is there whole or not at all, and whole once it has returned.
// The long run of 200 and 200 is `node test/faults/run.ts`.
describe('a laptop that dies at a random moment', () => {
  it.each([
    ['imports', 20, 11],
    ['saves', 20, 12],
  ] as const)(
    'of its %s leaves all or nothing of each',
    async (kind, kills, seed) => {
      const home = temporaryFolder();
      const tally = await killAtRandom({ folder: join(home, 'book'), kind, kills, seed });
      rmSync(home, { recursive: true });
      expect(tally.wrong).toEqual([]);
      expect(tally.kills).toBe(kills);
      // It was killed in the middle of something at least once, or the test would show nothing.
      expect(tally.cutShortAndNothing + tally.cutShortButWhole).toBeGreaterThan(0);
    },
    300_000,
  );
});

function script(name: string): string {
  return fileURLToPath(new URL(`../faults/${name}`, import.meta.url));
}

function withDatabase(change: (database: DatabaseSync) => void): void {
  const database = new DatabaseSync(file());
  change(database);
  database.close();
}

const ids = identityFrom(31);

function oneStratum() {
  const after = record('stratum', { id: ids(), name: `late ${ids()}` });
  return [[{ kind: 'stratum', recordId: after.id, after }], sign('late'), ids] as const;
}

async function freshBook(disk: string): Promise<string> {
  const folder = join(disk, 'book');
  const at = '2026-09-01T08:00:00.000Z';
  await (await createBook(folder, { name: 'on a stick', invented: true, at, bookId: ids() })).close();
  const store = await openBook(folder);
  await store.apply(...oneStratum());
  await store.close();
  return folder;
}

async function codeOf(work: Promise<unknown>): Promise<string> {
  try {
    await work;
    return 'no failure';
  } catch (error) {
    if (error instanceof Failure) return error.code;
    throw error;
  }
}

/** Writes until the disk is full; `kept` are the names whose writing has returned. */
async function fillWith(store: Awaited<ReturnType<typeof openBook>>, kept: string[]): Promise<string> {
  for (let n = 0; n < 1000; n++) {
    const after = record('mapping', { id: ids(), name: `mapping ${n}`, content: 'x'.repeat(60_000) });
    const written = store.apply([{ kind: 'mapping', recordId: after.id, after }], sign('fill'), ids);
    const code = await codeOf(written);
    if (code !== 'no failure') return code;
    kept.push(after.name);
  }
  return 'never full';
}

function mountingWorks(): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return false;
  const disk = temporaryFolder();
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', disk]).status === 0;
  if (mounted) spawnSync('umount', [disk]);
  return mounted;
}

/** A small disk of its own. */
async function onDisk(size: string, work: (disk: string) => Promise<void>): Promise<void> {
  const disk = temporaryFolder();
  expect(spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', disk]).status).toBe(0);
  try {
    await work(disk);
  } finally {
    spawnSync('umount', ['-l', disk]);
    if (existsSync(disk)) rmSync(disk, { recursive: true, force: true });
  }
}
