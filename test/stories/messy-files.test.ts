/**
 * Two open data sets as their people left them, imported through mapping files and the command line.
 * D1: macro-invertebrates of seagrass belts, two divers to a belt (CC BY 4.0). D2: animals of rock walls, one row
 * per animal (MIT). Sources, licences and the list of what is messy: SOURCE.md beside the data.
 * The data stay outside the project: where they are absent the tests are skipped, loudly.
 */

import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Papa from 'papaparse';
import { beforeAll, describe, expect, it } from 'vitest';
import { openBook } from '../../src/store/book-folder.ts';
import type { Station, Tally, Transect } from '../../src/survey/words.ts';
import { type JsonOutput, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

const folderOf = (name: string) => resolve(import.meta.dirname, '../../../shared/data', name);
const mappingOf = (name: string) => resolve(import.meta.dirname, '../mappings', name);
const d1 = folderOf('D1_hakai_seagrass_swath');
const d2 = folderOf('D2_wall_transects_messy');
const present = {
  d1: existsSync(join(d1, 'raw_observers_coded.csv')),
  d2: existsSync(join(d2, 'raw_observers_coded_CR.csv')),
};
for (const [name, there] of Object.entries(present)) {
  if (there) continue;
  process.stderr.write(
    `\n*** SKIPPED: the open data ${name.toUpperCase()} are not in ../shared/data; the messy files were not imported ***\n\n`,
  );
}

interface InBook {
  readonly imported: JsonOutput;
  readonly again: JsonOutput;
  readonly stations: readonly Station[];
  readonly transects: readonly Transect[];
  readonly tallies: readonly Tally[];
  readonly speciesNames: ReadonlyMap<string, string>;
}

async function importTwice(files: readonly string[], mapping: string): Promise<InBook> {
  const book = join(temporaryFolder(), 'book');
  await slateline('new', '--book', book);
  const args = ['import', ...files, '--map', mappingOf(mapping), '--book', book];
  const imported = await slatelineJson(...args);
  const again = await slatelineJson(...args);
  const store = await openBook(book);
  const [stations, transects, tallies, species] = [
    await store.all('station'),
    await store.all('transect'),
    await store.all('tally'),
    await store.all('species'),
  ];
  await store.close();
  const speciesNames = new Map(species.map(({ id, name }) => [id, name]));
  return { imported, again, stations, transects, tallies, speciesNames };
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);
const measured = (tallies: readonly Tally[]) =>
  sum(tallies.flatMap(({ lengths }) => lengths.map(({ n }) => n)));
const leftOut = ({ problems }: JsonOutput) =>
  problems.filter(({ code }) => code === 'left-out-by-rule').map(({ message }) => message as string);
const table = (output: JsonOutput, name: string) => output.rows.find((row) => row.table === name);
const asked = ({ problems }: JsonOutput, rule: string) =>
  problems.filter(({ code, message }) => code === 'asked-by-rule' && message.includes(`(${rule})`));

function expectEveryRowAccountedFor({ imported, again }: InBook): void {
  expect(imported.problems.filter(({ severity }) => severity === 'stop')).toEqual([]);
  for (const row of imported.rows) expect(row.read).toBe(row.added + row.refused);
  for (const row of again.rows) expect(row.read).toBe(row.unchanged + row.refused);
}

function csv(folder: string, name: string): Readonly<Record<string, string>>[] {
  const text = readFileSync(join(folder, name), 'utf8');
  return Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
}

describe.skipIf(!present.d1)('seagrass belts, two passes each (D1)', () => {
  const files = ['raw_observers_coded.csv', 'species_synonyms.csv', 'tidy_transects.csv'];
  let book: InBook;
  beforeAll(async () => {
    book = await importTwice(
      files.map((name) => join(d1, name)),
      'd1-belts.json',
    );
  });

  // Authority: SOURCE.md beside the data (read): 535 visits, 1 052 passes, 24 239 animals, 22 987 with a size.
  it('holds every animal, every pass and every size that its source counts', () => {
    expect(book.stations).toHaveLength(535);
    expect(book.transects).toHaveLength(1052);
    expect(sum(book.tallies.map(({ count }) => count))).toBe(24_239);
    expect(measured(book.tallies)).toBe(22_987);
  });

  // Authority: SOURCE.md: 129 rows "no_obs", one quantity NA with a species, sizes NA, 0 (73), 999 (3), 9999 (3).
  it('accounts for each of its 4500 rows', () => {
    expectEveryRowAccountedFor(book);
    const counts = table(book.imported, 'counts');
    const together = book.imported.problems.find(({ code }) => code === 'added-together');
    expect(counts.refused).toBe(129 + 1);
    expect(
      counts.added + counts.refused + Number(/^[\d\s]+/.exec(together.message)![0].replace(/\s/g, '')),
    ).toBe(4500);
    expect(table(book.imported, 'lengths')).toMatchObject({ read: 4500, refused: 129 + 1 + 73 + 3 + 3 });
    expect(leftOut(book.imported).join('\n')).toMatch(
      /129 rows .*no_obs[\s\S]*1 row .*an animal without a number/,
    );
  });

  // Authority: the tidy table of the same people, pass by pass (station, day and diver name a pass).
  it('keeps the two passes of a belt apart, and knows what each looked for where the tidy table says so', () => {
    const stationOf = new Map(book.stations.map((station) => [station.id, station]));
    const byDay = (transect: Transect) => {
      const station = stationOf.get(transect.stationId)!;
      return `${station.code} ${station.date}`;
    };
    const animalsOf = new Map<string, number>();
    for (const { transectId, count } of book.tallies) {
      animalsOf.set(transectId, (animalsOf.get(transectId) ?? 0) + count);
    }
    const ours = book.transects.map((one) => `${byDay(one)}: ${animalsOf.get(one.id) ?? 0}`).sort();
    const tidy = new Map(
      csv(d1, 'tidy_transects.csv').map((row) => [`${row['station']} ${row['date']} ${row['transect']}`, 0]),
    );
    for (const row of csv(d1, 'tidy_counts.csv')) {
      const pass = `${row['station']} ${row['date']} ${row['transect']}`;
      tidy.set(pass, tidy.get(pass)! + Number(row['count']));
    }
    expect(ours).toEqual([...tidy].map(([pass, n]) => `${pass.replace(/ pass\d$/, '')}: ${n}`).sort());
    const twoSwims = book.transects.filter(({ swim }) => swim === 2);
    expect(twoSwims).toHaveLength(517);
    expect(book.transects.filter(({ scope }) => scope.length > 0)).toHaveLength(352);
    const noneSeen = book.transects.filter((one) => one.noneSeen);
    expect(noneSeen.map(({ id }) => animalsOf.get(id) ?? 0).every((n) => n === 0)).toBe(true);
    expect(noneSeen).toHaveLength(127);
  });

  it('asks about notes that take back a number, and says what it did not read', () => {
    expect(asked(book.imported, 'the note holds a range of sizes').length).toBeGreaterThanOrEqual(5);
    expect(asked(book.imported, 'the number was estimated').length).toBeGreaterThanOrEqual(3);
    expect(asked(book.imported, 'the note says there is no size').length).toBeGreaterThanOrEqual(4);
    expect(book.imported.problems.filter(({ code }) => code === 'unnamed-column')).toHaveLength(1);
  });

  // Authority: SOURCE.md: 62 taxa after synonyms. Ours are one fewer: “sea cucumber, california”, which the list of
  // synonyms lacks, is read by the mapping as the seacucumber/california that it is.
  it('reads 108 spellings as the names that the list of synonyms gives', () => {
    const names = new Set(book.speciesNames.values());
    expect(names.has('Evastarious')).toBe(false);
    expect(names.has('seastar/evasterias')).toBe(true);
    expect(names).not.toContain('no_obs');
    expect(names).not.toContain('sea cucumber, california');
    expect(names.size).toBe(62 - 1);
  });
});

describe.skipIf(!present.d2)('rock walls, one row per animal (D2)', () => {
  const files = ['raw_observers_coded_CR.csv', 'species_codes.csv'];
  let book: InBook;
  beforeAll(async () => {
    book = await importTwice(
      files.map((name) => join(d2, name)),
      'd2-walls.json',
    );
  });

  // Authority: SOURCE.md (read): 306 transect-visits, 3 392 animals, 3 356 with a length, 36 of 0.01 cm,
  // 189 Parastichopus californicus, 593 Strongylocentrotus franciscanus.
  it('holds every animal and every length that its source counts', () => {
    expectEveryRowAccountedFor(book);
    expect(book.stations).toHaveLength(306);
    expect(sum(book.tallies.map(({ count }) => count))).toBe(3392);
    expect(measured(book.tallies)).toBe(3356);
    expect(table(book.imported, 'lengths').refused).toBe(36);
    const animalsOf = (name: string) =>
      sum(
        book.tallies.filter((one) => book.speciesNames.get(one.speciesId) === name).map((one) => one.count),
      );
    expect(animalsOf('Parastichopus californicus')).toBe(189);
    expect(animalsOf('Strongylocentrotus franciscanus')).toBe(593);
    expect(animalsOf('hermit crab')).toBe(3 + 31); // HER and Her
  });

  // Authority: SOURCE.md: 113 and 77 rows with a range of days, 25 without a day.
  it('takes the first day of a range, and the common day where none was written', () => {
    const byRule = book.imported.problems.filter(({ code }) => code === 'read-by-rule');
    expect(byRule.map(({ message }) => message)).toEqual([
      expect.stringMatching(/^190 cells of real\.date.*dateRange: first/),
    ]);
    expect(book.stations.filter(({ date }) => date === '2011-09-16').length).toBeGreaterThan(0);
    expect(book.stations.every(({ date }) => /^20\d\d-\d\d-\d\d$/.test(date))).toBe(true);
  });

  it('asks about partial effort and doubts that hide in comments', () => {
    const partial = asked(book.imported, 'only a part was searched, or not everything was recorded');
    expect(partial.map(({ value }) => value)).toContain(
      'too many nucella to count, so I only did bottom half of transect',
    );
    expect(partial.map(({ value }) => value)).toContain('17 total; juvenile coppers');
    expect(partial.every(({ station }) => station !== null)).toBe(true);
    expect(asked(book.imported, 'the number was changed when it was typed')).toHaveLength(2);
    expect(asked(book.imported, 'another measure than the length')).toHaveLength(2);
  });
});
