/**
 * The speed of the main job beside the bare work it cannot do without, in one run: `npm run bench`.
 *
 * Ratios, not seconds, are what a reader should compare; bench/README.md holds the last ones and the
 * machine. How often the intervals hold the truth is another question: `node bench/coverage.ts`.
 */

import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { openBook } from '../src/store/book-folder.ts';
import type { SurveyInHand } from '../src/survey/observation.ts';
import type { Store } from '../src/survey/store.ts';
import { checkSurveys } from '../src/tasks/check-survey.ts';
import { fullArchive, writeArchive } from './archive.ts';
import { clocked, inTurns, median, peakMemoryMb, type Rounds, timed } from './clock.ts';
import {
  bareDrawing,
  bareScan,
  estimateAll,
  fewStationsMs,
  observeAll,
  takeAll,
} from './estimate-archive.ts';
import { bareInsertsMs, type ImportPhases, importArchive } from './import-archive.ts';

const workFolder = resolve(import.meta.dirname, 'work');
const csvFolder = join(workFolder, 'csv');
const bookFolder = join(workFolder, 'book');
const program = resolve(import.meta.dirname, '../bin/slateline.js');
const rounds = 3;
const draws = 1000;

await main();

async function main(): Promise<void> {
  rmSync(workFolder, { recursive: true, force: true });
  mkdirSync(workFolder, { recursive: true });
  const { animals } = writeArchive(csvFolder, fullArchive);
  say(`Archive: ${animals} measured animals, 5 000 stations, 20 surveys, 30 species; seeded, invented.`);
  say(`Medians of ${rounds} rounds in turn; in brackets the first round, not yet compiled.\n`);
  await measureImport();
  const store = await openBook(bookFolder);
  await measureEstimates(store);
  await store.close();
  measureStarts();
  say('\nCoverage of the intervals: node bench/coverage.ts --draws 200 --seed 1');
  rmSync(workFolder, { recursive: true, force: true });
}

async function measureImport(): Promise<void> {
  const phases: ImportPhases[] = [];
  let peakMb = 0;
  const { whole, bare } = await inTurns(rounds, {
    whole: clocked(async () => {
      phases.push(await importArchive(csvFolder, bookFolder));
      // Of the first import only: the bare rows beside it are kept in memory too.
      peakMb ||= peakMemoryMb();
    }),
    bare: () => bareInsertsMs(csvFolder, join(workFolder, 'bare.sqlite')),
  });
  sayRatio('import with checks and history, against bare inserts', whole, bare);
  sayTime('reading the files', median(phases.map((phase) => phase.readMs)));
  sayTime('comparing and writing', median(phases.map((phase) => phase.writeMs)));
  say(`  memory at most: ${peakMb} MB`);
}

async function measureEstimates(store: Store): Promise<void> {
  const bookFile = join(bookFolder, 'book.sqlite');
  let surveys: readonly SurveyInHand[] = [];
  const { scan, fullScan, whole } = await inTurns(rounds, {
    scan: clocked(() => bareScan(bookFile, 'id, transect_id, species_id, count')),
    fullScan: clocked(() => bareScan(bookFile, '*')),
    whole: clocked(async () => estimateAll(await takeAll(store), 'lognormal', draws)),
  });
  const phases = await inTurns(rounds, {
    take: clocked(async () => {
      surveys = await takeAll(store);
    }),
    observe: clocked(() => observeAll(surveys)),
    estimate: clocked(() => estimateAll(surveys, 'lognormal', draws)),
  });
  sayRatio('estimates by stratum, log-normal, against a scan of the columns they need', whole, scan);
  sayRatio('the same against a scan of the whole tables', whole, fullScan);
  sayTime('reading and joining', phases.take.medianMs);
  sayTime('observing alone', phases.observe.medianMs);
  sayTime('estimating, observing again', phases.estimate.medianMs);
  const drawing = await inTurns(1, {
    bare: clocked(() => bareDrawing(surveys, draws)),
    whole: clocked(() => estimateAll(surveys, 'percentile', draws)),
  });
  sayRatio(`${draws} bootstrap draws of each, against the bare draws`, drawing.whole, drawing.bare);
  await measureClumped(surveys);
  sayTime(
    'check of the whole archive',
    (await timed(() => checkSurveys(store, { survey: null, today: '2026-01-01' }))).ms,
  );
}

async function measureClumped(surveys: readonly SurveyInHand[]): Promise<void> {
  const { ms, result } = await timed(() => estimateAll(surveys, 'clumped', draws));
  const withAnimals = result.filter((answer) => answer.animals > 0).length;
  const [firstMs, ...laterMs] = fewStationsMs();
  say(`clumped-count interval, 50 stations: ${(ms / withAnimals).toFixed(2)} ms each of ${withAnimals}`);
  say(
    `clumped-count interval, 10 stations: ${median(laterMs).toFixed(2)} ms each, the first ${firstMs!.toFixed(1)} ms`,
  );
}

/** The whole program from a cold start, as a person at a prompt waits for it. */
function measureStarts(): void {
  const demoFolder = join(workFolder, 'demo');
  const emptyFolder = join(workFolder, 'empty');
  start('demo', '--book', demoFolder);
  start('new', '--book', emptyFolder, '--name', 'empty');
  sayTime('cold start: density of the demo book', startMs('density', '--book', demoFolder));
  sayTime('cold start: check of an empty book', startMs('check', '--book', emptyFolder));
  sayTime('cold start: the version and nothing else', startMs('--version'));
}

function startMs(...words: string[]): number {
  return median(
    Array.from({ length: 5 }, () => {
      const begun = performance.now();
      start(...words);
      return performance.now() - begun;
    }),
  );
}

function start(...words: string[]): void {
  const { error } = spawnSync(process.execPath, [program, ...words], { stdio: 'ignore' });
  if (error !== undefined) throw error;
}

function sayRatio(what: string, whole: Rounds, bare: Rounds): void {
  const ratio = (whole.medianMs / bare.medianMs).toFixed(2);
  const first = (whole.firstMs / bare.firstMs).toFixed(2);
  say(`${what}: ratio ${ratio} (${first}); ${seconds(whole.medianMs)} against ${seconds(bare.medianMs)}`);
}

function sayTime(what: string, ms: number): void {
  say(`  ${what}: ${seconds(ms)}`);
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(2)} s`;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
