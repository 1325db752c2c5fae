/** Looks at everything that can be looked at in a book, and changes nothing but what opening it changes. */

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { counted } from '../survey/counted.ts';
import { Failure } from '../survey/failure.ts';
import type { Photo, RecordKind } from '../survey/words.ts';
import { placeActs } from './act-clocks.ts';
import { readActClocks } from './as-of-view.ts';
import { readManifest } from './backup-manifest.ts';
import { backupsIn } from './backup-rotation.ts';
import { type BookDatabase, openDatabase, withFailures } from './book-database.ts';
import { fileName, openBook } from './book-folder.ts';
import { type AnyRow, kindTables } from './kind-tables.ts';
import { photoFileName, photoPaths, photoState } from './photo-files.ts';
import { backupFaults } from './restore-book.ts';
import type { SqliteStore } from './sqlite-store.ts';

export interface Finding {
  readonly check:
    | 'pages'
    | 'references'
    | 'history'
    | 'records'
    | 'data version'
    | 'photos'
    | 'clocks'
    | 'backup';
  readonly sound: boolean;
  /** What was looked at, or what is wrong with it. */
  readonly detail: string;
}

export interface Verified {
  readonly dataVersion: string;
  readonly findings: readonly Finding[];
}

export interface VerifyOrder {
  readonly folder: string;
  /** The folder in which the backups lie: the photos are compared with the newest. */
  readonly backups: string;
}

export async function verifyBook({ folder, backups }: VerifyOrder): Promise<Verified> {
  if (readManifest(folder) !== null) return verifyBackup(folder);
  // Opened as always first, so that a book that cannot be opened is said in the usual sentence.
  const store = await openBook(folder);
  const database = openDatabase(folder, join(folder, fileName), 5000);
  try {
    const pages = withFailures(folder, () => pagesFinding(database));
    // A torn page makes every later look a guess.
    if (!pages.sound) throw new Failure('book-damaged', { folder, detail: pages.detail });
    const rebuilt = await rebuiltFrom(store);
    const findings = [
      pages,
      withFailures(folder, () => referencesFinding(database)),
      withFailures(folder, () => historyFinding(database)),
      recordsFinding(await store.dump(), rebuilt?.dump ?? null),
      digestFinding(await store.dataVersion(), rebuilt?.dataVersion ?? null),
      photosFinding({ folder, backups }, await store.all('photo'), (await store.info()).bookId),
      withFailures(folder, () => clocksFinding(database)),
    ];
    return { dataVersion: await store.dataVersion(), findings };
  } finally {
    database.sqlite.close();
    await store.close();
  }
}

function verifyBackup(folder: string): Verified {
  const manifest = readManifest(folder)!;
  const faults = backupFaults(folder, manifest);
  const what = `${counted(manifest.book.revisions, 'revision')} and ${counted(manifest.photos.length, 'photo')} as they were copied`;
  const finding = { check: 'backup', sound: faults.length === 0, detail: faults.join('; ') || what } as const;
  return { dataVersion: manifest.book.dataVersion, findings: [finding] };
}

/** Made again from the history, in memory; null where the history is empty or too torn for it. */
async function rebuiltFrom(store: SqliteStore): Promise<{ dump: string; dataVersion: string } | null> {
  try {
    const past = await store.asOf('9999-12-31T00:00:00Z');
    const rebuilt = { dump: await past.dump(), dataVersion: await past.dataVersion() };
    await past.close();
    return rebuilt;
  } catch (error) {
    if (error instanceof Failure && (error.code === 'nothing-yet' || error.code === 'book-damaged'))
      return null;
    throw error;
  }
}

function pagesFinding({ sqlite }: BookDatabase): Finding {
  const said = sqlite
    .prepare('PRAGMA integrity_check')
    .all()
    .map((row) => String(row.integrity_check));
  const sound = said.length === 1 && said[0] === 'ok';
  const pages = Number(sqlite.prepare('PRAGMA page_count').get()?.page_count);
  return {
    check: 'pages',
    sound,
    detail: sound ? `${pages} pages of the file` : said.slice(0, 3).join('; '),
  };
}

function referencesFinding({ sqlite }: BookDatabase): Finding {
  const broken = sqlite.prepare('PRAGMA foreign_key_check').all();
  const sound = broken.length === 0;
  const detail = sound
    ? 'every record finds the ones it names'
    : `${counted(broken.length, 'record names', 'records name')} one that is not there`;
  return { check: 'references', sound, detail };
}

/** Numbers without a gap, every revision in an act, and each beginning where the one before it ended. */
function historyFinding({ sqlite }: BookDatabase): Finding {
  const counts = sqlite
    .prepare(
      `SELECT count(*) AS n, coalesce(max(seq), 0) AS last, coalesce(sum(a.number IS NULL), 0) AS actless
       FROM revisions r LEFT JOIN acts a ON a.number = r.act_number`,
    )
    .get();
  const torn = brokenChains(sqlite.prepare(chainQuery).all() as unknown as ChainRow[]);
  const missing = Number(counts?.last) - Number(counts?.n);
  const wrong = [
    ...(missing === 0 ? [] : [`${missing} revisions are missing`]),
    ...(Number(counts?.actless) === 0 ? [] : [`${counts?.actless} revisions belong to no act`]),
    ...(torn === 0 ? [] : [`${torn} revisions do not begin where the one before them ended`]),
  ];
  const detail =
    wrong.length === 0 ? `${counts?.n} revisions, each following the one before it` : wrong.join('; ');
  return { check: 'history', sound: wrong.length === 0, detail };
}

interface ChainRow {
  readonly kind: RecordKind;
  readonly before_row: string | null;
  readonly ended: string | null;
}

const chainQuery = `SELECT kind, before_row, ended FROM (
  SELECT kind, before_row, lag(after_row) OVER (PARTITION BY record_id ORDER BY seq) AS ended FROM revisions
) WHERE before_row IS NOT ended`;

/** A row written before a change of the tables is read as one of today before it is called broken. */
function brokenChains(rows: readonly ChainRow[]): number {
  const today = (kind: RecordKind, text: string | null) => {
    if (text === null) return null;
    const { rowOf, recordOf } = kindTables[kind];
    return JSON.stringify(rowOf(recordOf(JSON.parse(text) as AnyRow)));
  };
  return rows.filter((row) => today(row.kind, row.before_row) !== today(row.kind, row.ended)).length;
}

function recordsFinding(dump: string, rebuilt: string | null): Finding {
  const lines = dump.split('\n').length - 2;
  // Made again from the history, the records must be the same to the byte.
  const sound = rebuilt === null ? lines === 0 : rebuilt === dump;
  const detail = sound
    ? `${lines} records, the same when made again from the history`
    : 'the records are not what the history says';
  return { check: 'records', sound, detail };
}

function digestFinding(kept: string, counted: string | null): Finding {
  const sound = counted === null || kept === counted;
  const detail = sound ? kept : `the book says ${kept}, its records say ${counted}`;
  return { check: 'data version', sound, detail };
}

/** Each photo of the book must lie there with the bytes it came with; every file of the last backup must be as it was. */
function photosFinding({ folder, backups }: VerifyOrder, records: readonly Photo[], bookId: string): Finding {
  const own = records.map(({ sha256, content }) => {
    const path = photoFileName({ sha256, type: content.type });
    return { path, what: `${path} (${content.name})`, sha256 };
  });
  const newest = existsSync(backups) ? backupsIn(backups, bookId)[0] : undefined;
  const known = new Set(own.map(({ path }) => path));
  const copied = (newest?.manifest.photos ?? []).map((photo) => ({ ...photo, what: photo.path }));
  const wrong = [...own, ...copied.filter(({ path }) => !known.has(path))].flatMap((photo) => {
    const state = photoState(folder, photo);
    return state === 'same' ? [] : [`${photo.what} is ${state}`];
  });
  if (wrong.length > 0) {
    const more = wrong.length > 5 ? `; ${wrong.length} in all` : '';
    return { check: 'photos', sound: false, detail: `${wrong.slice(0, 5).join('; ')}${more}` };
  }
  const here = `${counted(photoPaths(folder).length, 'file')}, ${counted(own.length, 'photo')} of the book with the bytes ${own.length === 1 ? 'it' : 'they'} came with`;
  const compared =
    newest === undefined ? 'no backup to compare with' : `${copied.length} as in the last backup`;
  return { check: 'photos', sound: true, detail: `${here}; ${compared}` };
}

/** Never a damage: the order of the acts is kept without any clock. */
function clocksFinding(database: BookDatabase): Finding {
  const acts = placeActs(readActClocks(database));
  const odd = acts.filter((act) => !act.clockBelieved);
  const detail =
    odd.length === 0
      ? `${counted(acts.length, 'act, its clock', 'acts, their clocks')} in order`
      : `${odd.length} of ${acts.length} acts ${odd.length === 1 ? 'was' : 'were'} signed by a clock that disagrees with their order; the order is kept`;
  return { check: 'clocks', sound: true, detail };
}
