/** A book with one station, one belt and one animal in a survey: whatever counts them says "1 station". */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { bookWith, slateline, temporaryFolder } from './cli-helper.ts';

const surveys = [
  ['Then', '2024'],
  ['Now', '2026'],
] as const;

let book: string;

beforeAll(async () => {
  book = await bookWith({
    strata: [
      ['stratum', 'area_ha'],
      ['Flat', 100],
    ],
    species: [['species'], ['sandfish'], ['lollyfish']],
    targets: [
      ['survey', 'species'],
      ...surveys.flatMap(([name]) => [
        [name, 'sandfish'],
        [name, 'lollyfish'],
      ]),
    ],
    surveys: [['survey', 'starts'], ...surveys.map(([name, year]) => [name, `${year}-05-01`])],
    stations: [
      ['survey', 'station', 'stratum', 'zone', 'date', 'selection', 'latitude', 'longitude'],
      ...surveys.map(([name, year]) => [
        ...[name, 'S1', 'Flat', 'open', `${year}-05-04`],
        ...['random', -17.15, 177.15],
      ]),
    ],
    transects: [
      ['survey', 'station', 'transect', 'length_m', 'width_m', 'status'],
      ...surveys.map(([name]) => [name, 'S1', '1', 40, 2, 'done']),
    ],
    counts: [
      ['survey', 'station', 'transect', 'species', 'count'],
      ...surveys.flatMap(([name]) => [
        [name, 'S1', '1', 'sandfish', 1],
        [name, 'S1', '1', 'lollyfish', 0],
      ]),
    ],
    lengths: [
      ['survey', 'station', 'transect', 'species', 'length_mm'],
      ['Now', 'S1', '1', 'sandfish', 210],
    ],
  });
});

/** "1 stations", "1 animaux"; "1 has" and "1 was" are verbs, and "1 dans" is French for "in". */
const oneAsMany =
  /(?<![\d.,\u202f−–-])1[ \u00a0](stations|animals|belts|surveys|days|strata|acts|rows|hectares|campagnes|animaux|bandes|jours|strates|espèces)/;

it.each([
  ['density'],
  ['sizes'],
  ['change'],
  ['status'],
  ['observers'],
  ['richness'],
  ['sensitivity'],
  ['explain', '--species', 'sandfish'],
  ['check'],
  ['verify'],
])('%s counts one as one', async (...args) => {
  const { stdout, stderr } = await slateline(...args, '--book', book);
  expect(stdout + stderr).toMatch(/\b1 |one station|1\n/);
  expect((stdout + stderr).match(oneAsMany)).toBeNull();
});

it.each(['en', 'fr'])('the report counts one as one (%s)', async (language) => {
  const to = join(temporaryFolder(), 'report.html');
  await slateline('report', '--language', language, '--to', to, '--book', book);
  const page = readFileSync(to, 'utf8').replace(/<style[\s\S]*?<\/style>|<[^>]*>/g, '');
  expect(page).toMatch(/1[ \u00a0]station/);
  expect(page.match(oneAsMany)).toBeNull();
});
