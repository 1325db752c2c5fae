/**
 * Fifty clients save sheets at once, beside bare durable commits of the same rows at the same concurrency:
 * `node bench/serve.ts`. The ratio of the two p99 is what to compare; bench/README.md holds the last ones.
 *
 * The bare commits share one connection and take turns in order: fifty connections that fight for the one writer
 * would only make the comparison easier.
 */

import { mkdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { identityMaker } from '../src/cli/identity.ts';
import { createBook, openBook } from '../src/store/book-folder.ts';
import type { Sheet } from '../src/tasks/sheets/sheet-schemas.ts';
import { type Frame, frameOf } from '../test/faults/pieces-of-work.ts';
import { sendSheet, servedSheet, startServer, stopServer } from '../test/faults/served-sheets.ts';
import { median } from './clock.ts';

const workFolder = resolve(import.meta.dirname, 'work/serve');
const clients = 50;
const sheetsEach = 20;
const rounds = 3;
const newId = identityMaker(Date.now);
const at = '2026-01-01T00:00:00Z';

await main();

async function main(): Promise<void> {
  rmSync(workFolder, { recursive: true, force: true });
  mkdirSync(workFolder, { recursive: true });
  const bookFolder = join(workFolder, 'book');
  const frame = frameOf(newId, 5);
  const book = await createBook(bookFolder, { name: 'bench', invented: true, at, bookId: newId() });
  await book.apply(frame.changes, { who: 'bench', at, device: 'bench', why: 'frame' }, newId);
  await book.close();
  const served = await startServer(bookFolder);
  const ratios: number[] = [];
  let sent = 0;
  for (let round = 1; round <= rounds; round++) {
    const sheets = makeSheets(frame, sent);
    sent += sheets.length;
    const bare = await atOnce(sheets, bareCommits(join(workFolder, `bare-${round}.sqlite`)));
    const saved = await atOnce(sheets, (sheet) => saveSheet(served.url, sheet));
    ratios.push(percentile(saved, 0.99) / percentile(bare, 0.99));
    say(
      `round ${round}: served ${told(saved)}; bare ${told(bare)}; ratio of p99 ${ratios.at(-1)!.toFixed(2)}`,
    );
  }
  await stopServer(served);
  await lookFor(sent, bookFolder);
  say(`\nratio of p99, median of ${rounds} rounds: ${median(ratios).toFixed(2)} (aim: under 10)`);
  rmSync(workFolder, { recursive: true, force: true });
}

/** A station of 6 belts, 5 species and 120 lengths. */
function makeSheets(frame: Frame, from: number): readonly Sheet[] {
  const size = { belts: 6, lengthsEach: 4 };
  return Array.from({ length: clients * sheetsEach }, (_, i) =>
    servedSheet(from + i, { frame, size, newId }),
  );
}

/** Milliseconds of each: every client sends its next when its last is answered. */
async function atOnce(sheets: readonly Sheet[], send: (sheet: Sheet) => Promise<void>): Promise<number[]> {
  const times: number[] = [];
  const client = async (number: number) => {
    for (let i = number; i < sheets.length; i += clients) {
      const begun = performance.now();
      await send(sheets[i]!);
      times.push(performance.now() - begun);
    }
  };
  await Promise.all(Array.from({ length: clients }, (_, number) => client(number)));
  return times;
}

async function saveSheet(url: string, sheet: Sheet): Promise<void> {
  const status = await sendSheet(url, { requestId: newId(), base: null, who: 'Recorder A', sheet });
  if (status !== 200) throw new Error(`a save was answered with ${status}`);
}

/** One durable commit for each sheet, into tables without keys, in order of arrival. */
function bareCommits(file: string): (sheet: Sheet) => Promise<void> {
  const database = new DatabaseSync(file);
  database.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL');
  database.exec('CREATE TABLE records (kind TEXT, id TEXT, row TEXT)');
  const insert = database.prepare('INSERT INTO records VALUES (?, ?, ?)');
  let turn: Promise<void> = Promise.resolve();
  const commit = ({ station, transects, tallies }: Sheet) => {
    database.exec('BEGIN');
    for (const one of [station, ...transects, ...tallies]) insert.run('record', one.id, JSON.stringify(one));
    database.exec('COMMIT');
  };
  return (sheet) => {
    turn = turn.then(() => new Promise((next) => setImmediate(next))).then(() => commit(sheet));
    return turn;
  };
}

async function lookFor(sent: number, bookFolder: string): Promise<void> {
  const store = await openBook(bookFolder);
  const found = (await store.all('station')).length;
  const tallies = (await store.all('tally')).length;
  await store.close();
  say(`sheets sent ${sent}, found ${found}, counts found ${tallies}`);
  if (found !== sent || tallies !== sent * 30) throw new Error('a sheet is missing');
}

function percentile(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.ceil(share * sorted.length) - 1]!;
}

function told(times: readonly number[]): string {
  return `p50 ${percentile(times, 0.5).toFixed(1)} ms, p99 ${percentile(times, 0.99).toFixed(1)} ms`;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
