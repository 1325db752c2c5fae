/** Numbers of species at equal effort, through the command line. */

import { describe, expect, it } from 'vitest';
import j1 from '../vectors/j1_diversity.json' with { type: 'json' };
import { bookWith, type Cell, slateline, slatelineJson } from './cli-helper.ts';

const names = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((letter) => `species ${letter}`);

interface Place {
  readonly code: string;
  readonly stratum: string;
  readonly counts: readonly number[];
  readonly lengthM?: number;
  readonly scope?: string;
}

function tablesOf(places: readonly Place[]): Record<string, readonly (readonly Cell[])[]> {
  return {
    strata: [
      ['stratum', 'area_ha'],
      ...[...new Set(places.map((one) => one.stratum))].map((one) => [one, 10]),
    ],
    species: [['species'], ...names.map((one) => [one])],
    targets: [['survey', 'species'], ...names.map((one) => ['Now', one])],
    surveys: [
      ['survey', 'starts'],
      ['Now', '2026-05-01'],
    ],
    stations: [
      ['survey', 'station', 'stratum', 'date'],
      ...places.map((one) => ['Now', one.code, one.stratum, '2026-05-04']),
    ],
    transects: [
      ['survey', 'station', 'transect', 'length_m', 'width_m', 'status', 'none_seen', 'scope'],
      ...places.map(({ code, counts, lengthM = 40, scope = '' }) => {
        const none = counts.every((count) => count === 0) ? 'yes' : '';
        return ['Now', code, 1, lengthM, 2, 'done', none, scope];
      }),
    ],
    counts: [
      ['survey', 'station', 'transect', 'species', 'count'],
      ...places.flatMap(({ code, counts }) =>
        counts.flatMap((count, i) => (count > 0 ? [['Now', code, 1, names[i]!, count]] : [])),
      ),
    ],
  };
}

const six = j1.data.matrix.map((counts, i): Place => ({ code: `S${i + 1}`, stratum: 'Reef', counts }));

describe('six stations of vector j1', () => {
  // Authority: vector j1 (R 4.2.2, vegan): accumulation over 1 to 6 stations, Hill numbers, Chao1.
  it('keep the empty station as effort and give the numbers of the vector', async () => {
    const book = await bookWith(tablesOf(six));
    const { rows } = await slatelineJson('richness', '--book', book);
    const row = rows[0].rows[0];
    expect(rows[0]).toMatchObject({ commonStations: 6, commonAnimals: 86, asWideByChance: null });
    row.accumulation.forEach((one: { species: number }, i: number) => {
      expect(one.species).toBeCloseTo(j1.expected.accum_richness[i]!, 8);
    });
    [row.hill.order0, row.hill.order1, row.hill.order2].forEach((order, i) => {
      expect(order).toBeCloseTo(j1.expected.hill_q012[i]!, 8);
    });
    expect(row.unseen.atLeast).toBeCloseTo(j1.expected.chao1, 8);
    expect((await slateline('richness', '--book', book)).stdout).toContain(
      '7 of the 7 species looked for were found',
    );
  });
});

describe('two strata', () => {
  const two = (change: (place: Place) => Place) =>
    bookWith(
      tablesOf([
        ...six,
        ...six.slice(0, 3).map((one) => change({ ...one, code: `L${one.code}`, stratum: 'Lagoon' })),
      ]),
    );

  // Authority: vector j1, accumulation at 3 stations: 5.85.
  it('are compared at the stations of the smaller one, never with the raw numbers', async () => {
    const book = await two((one) => one);
    const { rows } = await slatelineJson('richness', '--book', book, '--by', 'stratum');
    expect(rows[0].commonStations).toBe(3);
    const reef = rows[0].rows.find((one: { name: string }) => one.name === 'Reef');
    expect(reef.atStations.species).toBeCloseTo(5.85, 8);
    const { stdout } = await slateline('richness', '--book', book, '--by', 'stratum');
    expect(stdout).toContain('no difference can be told');
    expect(stdout).toContain('Each at 3 stations');
  });

  it('with stations of another size are held, and go ahead by name and reason', async () => {
    const book = await two((one) => ({ ...one, lengthM: 100 }));
    const ask = ['richness', '--book', book, '--by', 'stratum'];
    const held = await slateline(...ask);
    expect(held.exitCode).toBe(1);
    expect(held.stdout).toContain('larger stations show more species');
    const { rows, exitCode } = await slatelineJson(...ask, '--accept', 'Officer A: only wanted roughly');
    expect(exitCode).toBe(0);
    expect(rows[0].cautions.join()).toContain('larger stations show more species');
    expect(rows[0].rows[0].atStations).not.toBeNull();
  });

  it('count only what was looked for in both, and name what was not', async () => {
    const book = await two((one) => ({
      ...one,
      counts: one.counts.map((count, i) => (i < 2 ? count : 0)),
      scope: 'species a; species b',
    }));
    const { rows } = await slatelineJson('richness', '--book', book, '--by', 'stratum');
    expect(rows[0].species).toEqual(['species a', 'species b']);
    expect(rows[0].cautions.join()).toContain('species c');
  });
});

// Authority: src/estimates/richness/compare-richness.ts, a threshold of ours: a fifth of the animals.
describe('two parts of very unequal catch', () => {
  const places = (poor: number): Place[] => [
    { code: 'S1', stratum: 'Reef', counts: [30, 20, 10, 5, 3, 1, 1] },
    { code: 'S2', stratum: 'Lagoon', counts: [poor, 0, 1, 0, 0, 0, 0] },
  ];
  it('are compared at the few animals of the poorer one, and that is said', async () => {
    const book = await bookWith(tablesOf(places(2)));
    const { rows } = await slatelineJson('richness', '--book', book, '--by', 'stratum');
    // By hand: 3 of 70 animals are 4.3 %.
    expect(rows[0].cautions.join(' ')).toContain(
      'The common effort is small: 3 animals (fewest stations: 1), as many as Lagoon has, and 4.29 % of the animals of Reef',
    );
  });
  it('of like catch are not warned about', async () => {
    const book = await bookWith(tablesOf(places(40)));
    const { rows } = await slatelineJson('richness', '--book', book, '--by', 'stratum');
    expect(rows[0].cautions.join(' ')).not.toContain('common effort is small');
  });
});
