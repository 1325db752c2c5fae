/**
 * The check of a million animals beside the reading of them: `node bench/check.ts`. The promise is a ratio of at
 * most two: reading with lengths, and every check, take no more than twice the reading with lengths alone.
 */

import { join } from 'node:path';
import { openBook } from '../src/store/book-folder.ts';
import { checkSurveys, problemsOf } from '../src/tasks/check-survey.ts';
import { allChecks } from '../src/tasks/checks/all-checks.ts';
import { noGround } from '../src/tasks/checks/ground.ts';
import { readBookWords, takeInHand } from '../src/tasks/take-in-hand.ts';
import { ownFolder } from '../test/own-folder.ts';
import { fullArchive, writeArchive } from './archive.ts';
import { clocked, inTurns } from './clock.ts';
import { importArchive } from './import-archive.ts';

const work = ownFolder('bench');
const say = (text: string) => process.stdout.write(`${text}\n`);
const { animals } = writeArchive(join(work, 'csv'), fullArchive);
await importArchive(join(work, 'csv'), join(work, 'book'));
const store = await openBook(join(work, 'book'));
const words = await readBookWords(store);

const readAll = async (visit: (opened: Awaited<ReturnType<typeof takeInHand>>) => void) => {
  for (const survey of words.surveys) visit(await takeInHand(store, words, survey, { lengths: true }));
};
const { read, whole } = await inTurns(3, {
  read: clocked(() => readAll(() => {})),
  whole: clocked(() => checkSurveys(store, { survey: null, today: '2026-01-01' })),
});
say(`${animals} measured animals, ${allChecks.length} checks; medians of 3 rounds in turn.`);
say(`reading with lengths ${read.medianMs.toFixed(0)} ms, check ${whole.medianMs.toFixed(0)} ms`);
say(`ratio ${(whole.medianMs / read.medianMs).toFixed(2)} (promised: at most 2)`);

const msOf = new Map<string, number>();
let questions = 0;
await readAll((opened) => {
  const species = new Map(words.species.map((one) => [one.id, one]));
  for (const check of allChecks) {
    const start = performance.now();
    check.run({ ...opened, species, today: '2026-01-01', ground: noGround });
    msOf.set(check.code, (msOf.get(check.code) ?? 0) + performance.now() - start);
  }
  questions += problemsOf(opened, words, '2026-01-01').filter((one) => one.severity === 'explain').length;
});
say(`${questions} questions on 30 000 clean belts. The dearest checks:`);
const dearest = [...msOf].sort((a, b) => b[1] - a[1]).slice(0, 6);
for (const [code, ms] of dearest) say(`  ${code} ${ms.toFixed(0)} ms`);
await store.close();
