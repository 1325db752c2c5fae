/**
 * Change with 9 999 arrangements, and trend, of every species of the archive (5 000 stations, 30 species), beside the
 * bare cost of the draws: `node bench/change.ts`.
 */

import { join } from 'node:path';
import { seededRandom } from '../src/maths/random.ts';
import { openBook } from '../src/store/book-folder.ts';
import { observeSpecies } from '../src/survey/observation.ts';
import { compareSurveys } from '../src/tasks/compare-surveys.ts';
import { followTrend } from '../src/tasks/follow-trend.ts';
import { ownFolder } from '../test/own-folder.ts';
import { fullArchive, writeArchive } from './archive.ts';
import { clocked, inTurns, peakMemoryMb, timed } from './clock.ts';
import { takeAll } from './estimate-archive.ts';
import { importArchive } from './import-archive.ts';

const permutations = 9999;
const work = ownFolder('bench');
writeArchive(join(work, 'csv'), fullArchive);
await importArchive(join(work, 'csv'), join(work, 'book'));
const imported = peakMemoryMb();
const store = await openBook(join(work, 'book'));
const surveys = await takeAll(store);
const [before, after] = surveys.slice(-2);

/** As many picks and sums as the arrangements need: one of two lists drawn from both, within strata. */
function bareArrangements(): number {
  let total = 0;
  const random = seededRandom(1);
  for (const species of after!.targets) {
    const pool = [before!, after!].flatMap((survey) => observeSpecies(survey, species));
    const animals = Float64Array.from(pool, (one) => one.animals);
    for (let pick = permutations * Math.floor(animals.length / 2); pick > 0; pick--) {
      total += animals[random.below(animals.length)]!;
    }
  }
  return total;
}

const settings = {
  by: 'survey',
  pairing: 'no',
  interval: 'clumped',
  confidence: 0.95,
  seed: 1,
  draws: 20_000,
  permutations,
} as const;
const change = () =>
  compareSurveys(store, { from: null, to: null, species: null, settings, control: null, acceptance: null });
const trend = () => followTrend(store, { species: null, surveys: [], confidence: 0.95, acceptance: null });

const told = await inTurns(3, {
  'bare draws of the arrangements': clocked(bareArrangements),
  'reading every survey': async () => (await timed(() => takeAll(store))).ms,
  'change, all species': clocked(change),
  'trend over 20 surveys, all species': clocked(trend),
});
for (const [name, { medianMs }] of Object.entries(told)) {
  process.stdout.write(`${name.padEnd(36)} ${medianMs.toFixed(0).padStart(7)} ms\n`);
}
const ratio = told['change, all species'].medianMs / told['bare draws of the arrangements'].medianMs;
process.stdout.write(
  `change / bare draws ${ratio.toFixed(2)}; peak memory ${peakMemoryMb()} MB (after the import ${imported})\n`,
);
await store.close();
