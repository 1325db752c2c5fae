/** Real data of another programme, read through a mapping. The files are not part of the project. */

import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readMapping } from './mapping.ts';
import { type ReadTables, readTables } from './read-tables.ts';

const folder = new URL('../../../shared/data/D3_moorea_quadrats_stratified/', import.meta.url);
const present = existsSync(folder);
if (!present)
  // biome-ignore lint/suspicious/noConsole: a test that is skipped must say so
  console.warn('SKIPPED: the quadrat data are not beside the project, their mapping is NOT tested');

// Authority: SOURCE.md beside the data, read: 6 sites x 4 habitats x 5 lines = 120 stations, 4 quadrats each, 14 survey
// years, 6 725 rows because five quadrat visits carry two dates, 18 261 rows of counts, 14 taxa, 27 291 animals.
test.skipIf(!present)('14 years of quadrats by habitat come in whole, every row accounted for', async () => {
  const { value, leftOut, totals, stops } = await readQuadrats();
  expect(stops).toEqual([]);

  expect(value.rows.surveys).toHaveLength(14);
  expect(value.rows.strata).toHaveLength(4);
  for (const { row: survey } of value.rows.surveys) {
    expect(value.rows.stations.filter(({ row }) => row.survey === survey.name)).toHaveLength(120);
    expect(value.rows.transects.filter(({ row }) => row.survey === survey.name)).toHaveLength(480);
  }
  expect(value.rows.tallies.reduce((sum, { row }) => sum + row.count!, 0)).toBe(27_291);
  expect(value.rows.targets).toHaveLength(14 * 14);

  expect(totals.transects).toEqual({ read: 6725, refused: 5 });
  expect(totals.counts).toEqual({ read: 18_261, refused: 0 });
  expect(value.rows.tallies).toHaveLength(18_261);
  expect(leftOut).toEqual([
    { rule: 'same quadrat listed under two dates', file: 'tidy_transects.csv', table: null, rows: 5 },
  ]);
});

// Authority: a second way of counting, over the raw lines of the two files.
test.skipIf(!present)('quadrats without a row of counts are marked none seen', async () => {
  const { value } = await readQuadrats();
  const lines = (name: string) => readFileSync(new URL(name, folder), 'utf8').trim().split('\n').slice(1);
  const transects = lines('tidy_transects.csv').map((line) => line.split(','));
  const counts = lines('tidy_counts.csv').map((line) => line.split(','));
  const counted = new Set(counts.map((cells) => `${cells[9]}|${cells[2]}|${cells[3]}`));
  const visits = new Set(transects.map((cells) => `${cells[7]}|${cells[2]}|${cells[3]}`));
  const blank = [...visits].filter((visit) => !counted.has(visit)).length;
  expect(value.rows.transects.filter(({ row }) => row.noneSeen)).toHaveLength(blank);
});

async function readQuadrats(): Promise<
  Pick<ReadTables, 'leftOut' | 'totals'> & { readonly value: ReadTables; readonly stops: readonly unknown[] }
> {
  const map = readMapping(
    readFileSync(new URL('../../test/mappings/d3-quadrats.json', import.meta.url), 'utf8'),
    'd3-quadrats.json',
  );
  expect(map.problems).toEqual([]);
  const files = ['tidy_counts.csv', 'tidy_transects.csv'].map((name) => ({
    name,
    bytes: new Uint8Array(readFileSync(new URL(name, folder))),
  }));
  const { value, problems } = await readTables(files, map.value);
  const stops = problems.filter((problem) => problem.severity === 'stop');
  return { value, leftOut: value.leftOut, totals: value.totals, stops };
}
