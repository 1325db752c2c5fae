/**
 * The speed of the main job beside the bare work it cannot do without, in one run: `npm run bench`.
 * Ratios, not seconds, are what a reader should compare; bench/README.md holds the last ones and the machine.
 */

import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { identityMaker } from '../src/cli/identity.ts';
import { createClumpedIntervals } from '../src/estimates/clumped/clumped-intervals.ts';
import { DensityEstimator } from '../src/estimates/density/density-estimator.ts';
import { defaultDensitySettings } from '../src/estimates/density/density-settings.ts';
import { readTables } from '../src/exchange/read-tables.ts';
import { seededRandom } from '../src/maths/random.ts';
import { createBook, openBook } from '../src/store/book-folder.ts';
import { observeSpecies, type SurveyInHand } from '../src/survey/observation.ts';
import type { Store } from '../src/survey/store.ts';
import { tableNames } from '../src/survey/table-rows.ts';
import { importRows } from '../src/tasks/import/import-rows.ts';
import { readBookWords, takeInHand } from '../src/tasks/take-in-hand.ts';
import { fullArchive, writeArchive } from './archive.ts';

const work = resolve(import.meta.dirname, 'work');
const lines: string[] = [];
const say = (text: string) => {
  lines.push(text);
  process.stdout.write(`${text}\n`);
};
const seconds = (ms: number) => `${(ms / 1000).toFixed(2)} s`;
const megabytes = () => `${Math.round(process.memoryUsage().rss / 1e6)} MB`;
let peakRss = 0;
setInterval(() => {
  peakRss = Math.max(peakRss, process.memoryUsage().rss);
}, 50).unref();

async function timed<Result>(what: () => Promise<Result> | Result): Promise<{ ms: number; result: Result }> {
  const start = performance.now();
  const result = await what();
  peakRss = Math.max(peakRss, process.memoryUsage().rss);
  return { ms: performance.now() - start, result };
}

rmSync(work, { recursive: true, force: true });
mkdirSync(work, { recursive: true });
const csv = join(work, 'csv');
const { animals } = writeArchive(csv, fullArchive);
say(`archive: ${animals} measured animals, 5 000 stations, 20 surveys, 30 species; seeded, invented`);

const bare = { ms: bareInserts() };
const imported = await timed(() => importArchive());
say(`bare prepared inserts of the same rows: ${seconds(bare.ms)}`);
say(
  `import (read, check, compare, write with history): ${seconds(imported.ms)}; ratio ${(imported.ms / bare.ms).toFixed(2)} (aim: at most 3)`,
);
say(imported.result);
say(`memory: ${megabytes()} now, ${Math.round(peakRss / 1e6)} MB at most so far`);

const scan = await timed(() => bareScan());
say(
  `one bare SQL scan (every column of stations and transects, every count, into rows): ${seconds(scan.ms)}`,
);
const store = await openBook(join(work, 'book'));
const opened = await timed(() => takeAll(store));
const surveys = opened.result;
const observed = await timed(() =>
  surveys.map((survey) => survey.targets.map((species) => observeSpecies(survey, species))),
);
const lognormal = await timed(() => estimateAll(surveys, 'lognormal', 999));
const rows = lognormal.result.length;
say(
  `read and join ${seconds(opened.ms)}, observe ${seconds(observed.ms)}, estimate ${rows} species x strata x surveys, log-normal (observing again) ${seconds(lognormal.ms)}`,
);
say(
  `all of it against the scan: ratio ${((opened.ms + lognormal.ms) / scan.ms).toFixed(2)} (aim: at most 3)`,
);

const draws = 1000;
const bareDraws = await timed(() => bareDrawing(surveys, draws));
const percentile = await timed(() => estimateAll(surveys, 'percentile', draws));
say(
  `${draws} bootstrap draws for each: ${seconds(percentile.ms)}; the bare draws (picks and sums) ${seconds(bareDraws.ms)}; ratio ${(percentile.ms / bareDraws.ms).toFixed(2)} (aim: at most 3)`,
);

const clumped = await timed(() => estimateAll(surveys, 'clumped', 999));
const withAnimals = clumped.result.filter((answer) => answer.animals > 0).length;
say(
  `clumped-count interval of every one: ${seconds(clumped.ms)}, ${(clumped.ms / withAnimals).toFixed(2)} ms each (${withAnimals} with animals, 50 stations each; aim: under 10 ms)`,
);
const few = await timed(() => fewStations());
say(
  `clumped-count interval of ${few.result.n} samples of 10 stations: first ${few.result.firstMs.toFixed(1)} ms (cold), then ${((few.ms - few.result.firstMs) / (few.result.n - 1)).toFixed(2)} ms each`,
);
say(`memory at most: ${Math.round(peakRss / 1e6)} MB`);
await store.close();
rmSync(work, { recursive: true, force: true });

/** The rows of the files in plain tables, values at hand: what no import can do without. */
function bareInserts(): number {
  const tables = readdirSync(csv).map((name) => {
    const [header, ...body] = readFileSync(join(csv, name), 'utf8').trimEnd().split('\n');
    return {
      name: name.slice(0, -4),
      columns: header!.split(','),
      rows: body.map((line) => line.split(',')),
    };
  });
  const database = new DatabaseSync(join(work, 'bare.sqlite'));
  database.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL');
  const start = performance.now();
  database.exec('BEGIN');
  for (const { name, columns, rows } of tables) {
    database.exec(`CREATE TABLE ${name} (${columns.join(', ')})`);
    const insert = database.prepare(`INSERT INTO ${name} VALUES (${columns.map(() => '?').join(', ')})`);
    for (const row of rows) insert.run(...row);
  }
  database.exec('COMMIT');
  const ms = performance.now() - start;
  database.close();
  return ms;
}

async function importArchive(): Promise<string> {
  const files = readdirSync(csv).map((name) => ({ name, bytes: readFileSync(join(csv, name)) }));
  const made = await createBook(join(work, 'book'), {
    name: 'bench',
    invented: true,
    at: '2026-01-01T00:00:00Z',
    bookId: identityMaker(Date.now)(),
  });
  const read = await timed(() => readTables(files));
  const totals = tableNames.map((table) => ({ table, ...read.result.value.totals[table] }));
  const signature = { who: 'bench', at: '2026-01-01T00:00:00Z', device: 'bench', why: 'bench' };
  const request = {
    rows: read.result.value.rows,
    readTotals: totals,
    readProblems: read.result.problems,
    mapping: null,
    dryRun: false,
  };
  const written = await timed(() =>
    importRows(request, { store: made, signature, newId: identityMaker(Date.now) }),
  );
  await made.close();
  if (!written.result.written) throw new Error('the bench import was stopped');
  return `  of which reading ${seconds(read.ms)}, comparing and writing ${seconds(written.ms)}`;
}

function bareScan(): number {
  const database = new DatabaseSync(join(work, 'book', 'book.sqlite'));
  let seen = 0;
  for (const sql of [
    'SELECT * FROM stations',
    'SELECT * FROM transects',
    'SELECT id, transect_id, species_id, count FROM tallies',
  ]) {
    for (const _ of database.prepare(sql).iterate()) seen++;
  }
  database.close();
  return seen;
}

async function takeAll(book: Store): Promise<SurveyInHand[]> {
  const words = await readBookWords(book);
  const taken: SurveyInHand[] = [];
  for (const survey of words.surveys)
    taken.push((await takeInHand(book, words, survey, { lengths: false })).inHand);
  return taken;
}

function estimateAll(
  list: readonly SurveyInHand[],
  interval: 'lognormal' | 'percentile' | 'clumped',
  n: number,
) {
  const estimator = new DensityEstimator({ ...defaultDensitySettings, by: 'stratum', interval, draws: n });
  return list.flatMap((survey) => survey.targets.flatMap((species) => estimator.answers(survey, species)));
}

/** The picks and sums of as many resampled means, and nothing else. */
function bareDrawing(list: readonly SurveyInHand[], n: number): number {
  let total = 0;
  for (const survey of list) {
    for (const species of survey.targets) {
      const strata = new Map<string, number[]>();
      for (const one of observeSpecies(survey, species)) {
        const values = strata.get(one.station.stratum.id) ?? [];
        values.push(one.animals);
        strata.set(one.station.stratum.id, values);
      }
      for (const values of strata.values()) {
        if (values.every((value) => value === 0)) continue;
        const random = seededRandom(1);
        for (let draw = 0; draw < n; draw++)
          for (let i = 0; i < values.length; i++) total += values[random.below(values.length)]!;
      }
    }
  }
  return total;
}

function fewStations(): { readonly n: number; readonly firstMs: number } {
  const intervals = createClumpedIntervals();
  const random = seededRandom(7);
  const n = 200;
  let firstMs = 0;
  for (let i = 0; i < n; i++) {
    const counts = Array.from({ length: 10 }, () => ({
      animals: random.below(3) === 0 ? random.below(60) : random.below(4),
      areaM2: 480,
    }));
    if (counts.every((count) => count.animals === 0)) continue;
    const start = performance.now();
    intervals.posterior(counts).interval(0.95);
    if (i === 0) firstMs = performance.now() - start;
  }
  return { n, firstMs };
}
