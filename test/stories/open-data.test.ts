/**
 * Open data, imported through a mapping file and estimated through the command line.
 * Source: coral-reef herbivore quadrats of a long-term ecological research programme (CC BY 4.0; see SOURCE.md beside
 * the data); reference densities, standard errors and t intervals computed with base R, station = mean of 4 quadrats.
 * The data stay outside the project: where they are absent the test is skipped, loudly.
 */

import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

const data = resolve(import.meta.dirname, '../../../shared/data/D3_moorea_quadrats_stratified');
const mapping = resolve(import.meta.dirname, '../mappings/d3-quadrats.json');
const present = existsSync(join(data, 'tidy_counts.csv'));
if (!present) {
  process.stderr.write(
    '\n*** SKIPPED: the open data D3 are not in ../shared/data; nothing was compared with them ***\n\n',
  );
}

interface Reference {
  readonly species: string;
  readonly survey: string;
  readonly stratum: string;
  readonly stations: number;
  readonly animals: number;
  readonly perHa: number;
  readonly standardError: number;
  readonly interval: readonly [number, number];
}

function references(): readonly Reference[] {
  const lines = readFileSync(join(data, 'check_density_2010_2019_by_habitat.csv'), 'utf8')
    .trim()
    .split('\n')
    .slice(1);
  return lines.map((line) => {
    const [species, survey, stratum, stations, , animals, perHa, se, low, high] = line
      .replaceAll('"', '')
      .split(',');
    return {
      species: species!,
      survey: survey!,
      stratum: stratum!,
      stations: Number(stations),
      animals: Number(animals),
      perHa: Number(perHa),
      standardError: Number(se),
      interval: [Number(low), Number(high)],
    };
  });
}

describe.skipIf(!present)('open quadrat counts of 14 survey years', () => {
  it('gives every reference density, and its standard error and t interval where animals were seen', async () => {
    const book = join(temporaryFolder(), 'book');
    await slateline('new', '--book', book);
    const files = ['tidy_transects.csv', 'tidy_counts.csv'].map((name) => join(data, name));
    const imported = await slatelineJson('import', ...files, '--map', mapping, '--book', book);
    expect(imported.problems.filter((one) => one.severity === 'stop')).toEqual([]);
    for (const row of imported.rows)
      expect(row.read).toBe(row.added + row.changed + row.unchanged + row.refused);
    const again = await slatelineJson('import', ...files, '--map', mapping, '--book', book);
    for (const row of again.rows) expect(row.unchanged + row.refused).toBe(row.read);
    const rows = [];
    for (const survey of ['2010', '2019']) {
      const args = ['--book', book, '--survey', survey, '--by', 'stratum', '--interval', 't'];
      rows.push(...(await slatelineJson('density', ...args)).rows);
    }
    const expected = references();
    expect(expected).toHaveLength(24);
    for (const one of expected) {
      const row = rows.find(
        (r) => r.species === one.species && r.survey === one.survey && r.scope.name === one.stratum,
      );
      expect(row.stations).toBe(one.stations);
      expect(row.animals).toBe(one.animals);
      // The file holds three decimals.
      expect(Math.abs(row.densityPerHa - one.perHa)).toBeLessThan(0.0006);
      if (one.animals === 0) continue;
      expect(Math.abs(row.standardErrorPerHa - one.standardError)).toBeLessThan(0.0006);
      expect(Math.abs(row.intervalPerHa[0] - one.interval[0])).toBeLessThan(0.006);
      expect(Math.abs(row.intervalPerHa[1] - one.interval[1])).toBeLessThan(0.006);
    }
  });
});
