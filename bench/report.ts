/**
 * The report page of the archive (20 surveys, 30 species, a million animals), beside one reading of every survey with
 * its lengths: `node bench/report.ts`.
 */

import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { renderReport } from '../src/report/page.ts';
import { openBook } from '../src/store/book-folder.ts';
import { defaultReportRequest, reportInput } from '../src/tasks/report.ts';
import { ownFolder } from '../test/own-folder.ts';
import { fullArchive, writeArchive } from './archive.ts';
import { peakMemoryMb, timed } from './clock.ts';
import { importArchive } from './import-archive.ts';

const work = ownFolder('bench');
writeArchive(join(work, 'csv'), fullArchive);
await importArchive(join(work, 'csv'), join(work, 'book'));
const imported = peakMemoryMb();
const store = await openBook(join(work, 'book'));
let openings = 0;
const counting: typeof store = {
  ...store,
  surveyRecords: (...asked) => {
    openings += 1;
    return store.surveyRecords(...asked);
  },
};
const reading = await timed(async () => {
  for (const { id } of await store.all('survey')) await store.surveyRecords(id);
});
const made = { programVersion: 'bench', generatedOn: '2026-11-25' };
const input = await timed(() => reportInput(counting, { ...defaultReportRequest, ...made }));
const { document } = parseHTML('<!doctype html><html></html>');
const page = await timed(() => renderReport(input.result, { language: 'en', fonts: [], document }));

const seconds = (ms: number) => `${(ms / 1000).toFixed(1)} s`;
const lines = [
  `reading every survey with its lengths: ${seconds(reading.ms)}`,
  `working out the report: ${seconds(input.ms)}, ratio ${(input.ms / reading.ms).toFixed(1)}, ${openings} openings of a survey`,
  `rendering ${page.result.length} letters: ${seconds(page.ms)}`,
  `memory at most ${peakMemoryMb()} MB (after the import ${imported})`,
];
process.stdout.write(`${lines.join('\n')}\n`);
await store.close();
