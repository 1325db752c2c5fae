/** Scenario 9 of the trade's list (METHODS f, vectors f1 and f3), through the command line. */

import { beforeAll, describe, expect, it } from 'vitest';
import f1 from '../vectors/f1_two_surveys_independent.json' with { type: 'json' };
import f3 from '../vectors/f3_paired.json' with { type: 'json' };
import { bookWith, type Cell, slateline, slatelineJson } from './cli-helper.ts';

/** The densities of the vectors are whole animals on 2400 m2, printed with one decimal. */
const searchedM2 = 2400;

interface Drawn {
  readonly earlier: readonly number[];
  readonly later: readonly number[];
  readonly selection: 'random' | 'fixed' | 'hand-picked';
  readonly widthM?: { readonly earlier: number; readonly later: number };
  readonly night?: { readonly earlier: string; readonly later: string };
  /** Of a station by its number, from 0. */
  readonly zoneOf?: (i: number) => string;
  readonly stratumOf?: (i: number) => string;
  readonly areaHa?: number | '';
  /** What stands in none_seen where nothing was counted; a blank belt has nothing there. */
  readonly noneSeen?: 'yes' | '';
}

function tablesOf({
  earlier,
  later,
  selection,
  widthM,
  night,
  zoneOf = () => '',
  stratumOf = () => 'Flat',
  areaHa = 100,
  noneSeen = 'yes',
}: Drawn): Record<string, readonly (readonly Cell[])[]> {
  const surveys = [
    { name: 'Then', year: 2024, values: earlier, width: widthM?.earlier ?? 10, night: night?.earlier ?? '' },
    { name: 'Now', year: 2026, values: later, width: widthM?.later ?? 10, night: night?.later ?? '' },
  ];
  const code = (survey: string, i: number) => (selection === 'random' ? `${survey}${i + 1}` : `P${i + 1}`);
  const all = surveys.flatMap((survey) =>
    survey.values.map((value, i) => ({ ...survey, value, code: code(survey.name, i), i })),
  );
  return {
    strata: [
      ['stratum', 'area_ha'],
      ...[...new Set(all.map((one) => stratumOf(one.i)))].map((name) => [name, areaHa]),
    ],
    species: [['species'], ['sandfish']],
    targets: [['survey', 'species'], ...surveys.map((one) => [one.name, 'sandfish'])],
    surveys: [['survey', 'starts'], ...surveys.map((one) => [one.name, `${one.year}-05-01`])],
    stations: [
      ['survey', 'station', 'stratum', 'zone', 'date', 'selection', 'night'],
      ...all.map((one) => [
        one.name,
        one.code,
        stratumOf(one.i),
        zoneOf(one.i),
        `${one.year}-05-04`,
        selection,
        one.night,
      ]),
    ],
    transects: [
      ['survey', 'station', 'transect', 'length_m', 'width_m', 'status', 'none_seen'],
      ...all.map((one) => [
        one.name,
        one.code,
        1,
        searchedM2 / one.width,
        one.width,
        'done',
        one.value === 0 ? noneSeen : '',
      ]),
    ],
    counts: [
      ['survey', 'station', 'transect', 'species', 'count'],
      ...all.flatMap((one) =>
        one.value === 0
          ? []
          : [[one.name, one.code, 1, 'sandfish', Math.round((one.value * searchedM2) / 10_000)]],
      ),
    ],
  };
}

describe('ten and twelve stations drawn anew', () => {
  let book = '';
  beforeAll(async () => {
    book = await bookWith(tablesOf({ earlier: f1.data.y1, later: f1.data.y2, selection: 'random' }));
  });

  // Authority: vector f1 (R 4.2.2), to the digits in which its densities are printed: 1 %.
  it('by the log ratio: 0.40 (0.15 to 1.06), -60 % (-85 to +6), probably lower and not proven', async () => {
    const { rows } = await slatelineJson('change', '--book', book, '--interval', 'log-ratio');
    const [low, high] = rows[0].ratioInterval;
    expect(Math.abs(rows[0].ratio / f1.expected.ratio - 1)).toBeLessThan(0.01);
    expect(Math.abs(low / f1.expected.ci95_ratio[0]! - 1)).toBeLessThan(0.01);
    expect(Math.abs(high / f1.expected.ci95_ratio[1]! - 1)).toBeLessThan(0.01);
    const ran = await slateline('change', '--book', book, '--interval', 'log-ratio');
    expect(ran.stdout).toContain('sandfish: probably lower, not proven at 95\u00a0%: −60\u00a0% (−85 to +6');
    expect(ran.exitCode).toBe(0);
  });

  // Authority: INTERVALS.md: for clumped animals and few stations the honest interval is the wider one.
  it('by the clumped-count model the interval is wider, and the usual one stands beside it', async () => {
    const { rows } = await slatelineJson('change', '--book', book);
    const [low, high] = rows[0].ratioInterval;
    expect(low).toBeLessThan(f1.expected.ci95_ratio[0]!);
    expect(high).toBeGreaterThan(f1.expected.ci95_ratio[1]!);
    expect(rows[0].told).toBe('probably lower');
    expect(Math.exp(rows[0].logRatio.interval[1])).toBeCloseTo(f1.expected.ci95_ratio[1]!, 1);
    // A usual comparison of such surveys cries wolf more often than one in twenty.
    expect(rows[0].falseAlarmByDesign).toBeGreaterThan(0.05);
    expect(rows[0].stationsMoreForHalving === null || rows[0].stationsMoreForHalving > 0).toBe(true);
  });

  it('a book with one survey, or one survey named twice, is told so', async () => {
    const { stderr, exitCode } = await slateline('change', '--book', book, '--to', 'Then');
    expect([exitCode, stderr]).toEqual([2, expect.stringContaining('a change needs two surveys')]);
    const twice = await slateline('change', '--book', book, '--from', 'Now', '--to', 'Now');
    expect([twice.exitCode, twice.stderr]).toEqual([2, expect.stringContaining('named twice')]);
    const backwards = await slateline('change', '--book', book, '--from', 'Now', '--to', 'Then');
    expect([backwards.exitCode, backwards.stderr]).toEqual([2, expect.stringContaining('read as a rise')]);
    const trend = await slateline('trend', '--book', book);
    expect([trend.exitCode, trend.stderr]).toEqual([2, expect.stringContaining('at least three surveys')]);
    const lonely = await slateline('change', '--book', book, '--impact', 'Flat');
    expect([lonely.exitCode, lonely.stderr]).toEqual([2, expect.stringContaining('belong together')]);
  });
});

describe('eight places worked twice', () => {
  // Authority: vector f3 (R 4.2.2, t.test paired): p 0.081, not 0.504.
  it('marked fixed they are compared place by place', async () => {
    const book = await bookWith(tablesOf({ earlier: f3.data.y1, later: f3.data.y2, selection: 'fixed' }));
    const { rows } = await slatelineJson('change', '--book', book);
    expect(rows[0].pairs).toBe(8);
    expect(rows[0].difference.pValue).toBeCloseTo(f3.expected.p, 2);
    const apart = await slatelineJson('change', '--book', book, '--revisited', 'no');
    expect(apart.rows[0].difference.pValue).toBeCloseTo(f3.expected.p_if_wrongly_independent, 2);
    // Told or not, places worked twice narrow the honest interval as well.
    const width = (row: { ratioInterval: [number, number] }) => row.ratioInterval[1] / row.ratioInterval[0];
    expect(width(rows[0])).toBeLessThan(width(apart.rows[0]) / 2);
  });

  it('picked by hand they tell a change at these stations, and say so', async () => {
    const book = await bookWith(
      tablesOf({ earlier: f3.data.y1, later: f3.data.y2, selection: 'hand-picked' }),
    );
    const { rows } = await slatelineJson('change', '--book', book);
    expect(rows[0]).toMatchObject({ atTheseStations: true, pairs: 8 });
    const { stdout } = await slateline('change', '--book', book);
    expect(stdout).toContain('at these 8 stations');
    expect(stdout).toContain('speak for no other place');
  });

  // By hand: (12 + 20 + 40 + 8) / 4 = 20 then (6 + 10 + 20 + 4) / 4 = 10, whatever the hectares, known or not.
  it('picked by hand each counts alike, so that strata without hectares have an answer too', async () => {
    const tables = (areaHa: number | '') =>
      tablesOf({
        earlier: [12.5, 20.83333, 41.66667, 8.33333],
        later: [4.16667, 12.5, 20.83333, 4.16667],
        selection: 'hand-picked',
        stratumOf: (i) => (i === 0 ? 'Flat' : 'Pass'),
        areaHa,
      });
    const { rows } = await slatelineJson('change', '--book', await bookWith(tables('')));
    expect(rows[0].densityPerHa.from).toBeCloseTo((3 + 5 + 10 + 2) / 4 / 0.24, 6);
    expect(rows[0].densityPerHa.to).toBeCloseTo((1 + 3 + 5 + 1) / 4 / 0.24, 6);
    const known = await slatelineJson('change', '--book', await bookWith(tables(900)));
    expect(known.rows[0].ratio).toBeCloseTo(rows[0].ratio, 12);
  });

  it('picked by hand they have no trend, and the reason is that', async () => {
    const tables = tablesOf({ earlier: f3.data.y1, later: f3.data.y2, selection: 'hand-picked' });
    const between = (rows: readonly (readonly Cell[])[]) =>
      rows
        .filter(([survey]) => survey === 'Then')
        .map((row) => row.map((cell) => (cell === 'Then' ? 'Between' : `${cell}`.replace('2024-', '2025-'))));
    const book = await bookWith(
      Object.fromEntries(Object.entries(tables).map(([name, rows]) => [name, [...rows, ...between(rows)]])),
    );
    const { rows } = await slatelineJson('trend', '--book', book);
    expect(rows[0]).toMatchObject({ trend: null, reasonCode: 'trend-hand-picked' });
  });
});

describe('blank belts that somebody let pass', () => {
  it('are named beside the change, because they may have been zeros', async () => {
    const book = await bookWith(
      tablesOf({
        earlier: [50, 0, 20, 30, 5],
        later: [50, 12, 0, 25, 40],
        selection: 'random',
        noneSeen: '',
      }),
    );
    const held = await slatelineJson('change', '--book', book);
    expect(held.rows[0].reasonCode).toBe('unresolved-stations');
    const { stdout } = await slateline('change', '--book', book, '--accept', 'Officer A: sheets lost');
    expect(stdout).toContain('nobody told whether they were searched: Then2, Now3');
  });
});

describe('a survey without animals in a row of four', () => {
  it('is not on the line, whichever way the stock went, and no direction is claimed', async () => {
    const tables = tablesOf({
      earlier: [50, 10, 20, 30, 5],
      later: [50, 12, 9, 25, 40],
      selection: 'random',
    });
    const more = (name: string, year: string, isEmpty: boolean) => (rows: readonly (readonly Cell[])[]) =>
      rows
        .filter(([survey]) => survey === 'Then')
        .map((row) => row.map((cell) => (cell === 'Then' ? name : `${cell}`.replace('2024-', year))))
        .map((row) => (isEmpty && row[5] === 'done' ? [...row.slice(0, 6), 'yes'] : row));
    const [before, between] = [more('Before', '2022-', true), more('Between', '2025-', false)];
    const book = await bookWith(
      Object.fromEntries(
        Object.entries(tables).map(([name, rows]) => [
          name,
          [...rows, ...(name === 'counts' ? [] : before(rows)), ...between(rows)],
        ]),
      ),
    );
    const { stdout } = await slateline('trend', '--book', book);
    expect(stdout).toContain(
      'None was recorded in Before: a zero has no logarithm, so the line is that of the other',
    );
    expect(stdout).not.toContain('falls less');
  });
});

describe('none seen in one of two surveys', () => {
  // Invariance: with no animal the spread of the later survey is that of the prior, which no station can mend.
  it('has a bound, and no number of stations that would tell a halving', async () => {
    const book = await bookWith(
      tablesOf({ earlier: [50, 10, 20, 30, 5, 12], later: [0, 0, 0, 0, 0, 0], selection: 'random' }),
    );
    const { rows } = await slatelineJson('change', '--book', book);
    expect(rows[0]).toMatchObject({ ratio: 0, smallestFallTo: null, stationsEachForHalving: null });
    expect(rows[0].ratioInterval[1]).toBeGreaterThan(0);
  });
});

describe('zones with few stations', () => {
  // By hand: 50 animals per hectare in both surveys at the first station: a ratio of 1 and nothing to measure a spread by.
  it('one station has no interval and no word about a change', async () => {
    const book = await bookWith(
      tablesOf({
        earlier: [50, 10, 20, 30, 5],
        later: [50, 12, 9, 25, 40],
        selection: 'random',
        zoneOf: (i) => (i === 0 ? 'closed' : 'open'),
      }),
    );
    const { rows } = await slatelineJson('change', '--book', book, '--by', 'zone');
    const closed = rows.find((row: { scope: { name: string } }) => row.scope.name === 'closed');
    expect(closed).toMatchObject({ ratio: 1, ratioInterval: null, told: null, belief: null });
    expect(closed.reasonCode).toBe('change-lone-station');
    const { stdout, exitCode } = await slateline('change', '--book', book, '--by', 'zone');
    expect(stdout).toContain('sandfish, closed: One station only in Flat');
    expect(stdout).not.toContain('--merge');
    expect(exitCode).toBe(0);
  });

  // Invariance: with two stations the interval is the one of the design, which stands beside it anyway.
  it('two stations have the interval of the log ratio, with the reason', async () => {
    const book = await bookWith(
      tablesOf({
        earlier: [50, 40, 20, 30, 5],
        later: [50, 12, 9, 25, 40],
        selection: 'random',
        zoneOf: (i) => (i < 2 ? 'closed' : 'open'),
      }),
    );
    const { rows } = await slatelineJson('change', '--book', book, '--by', 'zone');
    const [closed, open] = rows;
    expect(closed.ratioInterval).toEqual(closed.logRatio.interval.map(Math.exp));
    expect(closed.cautions.join()).toContain('Fewer than 3 stations');
    expect(open.ratioInterval).not.toEqual(open.logRatio.interval.map(Math.exp));
    expect(open.cautions).toEqual([]);
  });

  // The log ratio cries wolf in up to 19 of 100 pairs that promise 5 (docs/methods/change.md): it proves nothing here.
  it('two stations that agree prove no change, however far their interval lies from 1', async () => {
    const book = await bookWith(
      tablesOf({
        earlier: [10, 11, 20, 30, 5],
        later: [100, 110, 9, 25, 40],
        selection: 'random',
        zoneOf: (i) => (i < 2 ? 'closed' : 'open'),
      }),
    );
    const { rows } = await slatelineJson('change', '--book', book, '--by', 'zone');
    expect(rows[0].ratioInterval[0]).toBeGreaterThan(1);
    expect(rows[0].told).toBe('probably higher');
  });
});

describe('two ways of working', () => {
  // Scenario 9: belts of 2 m and 1 m are limited with the reason; night against day is held.
  it('belts of two widths are compared with the limit said', async () => {
    const widthM = { earlier: 2, later: 1 };
    const book = await bookWith(
      tablesOf({ earlier: f1.data.y1, later: f1.data.y2, selection: 'random', widthM }),
    );
    const ran = await slateline('change', '--book', book);
    expect(ran.exitCode).toBe(0);
    expect(ran.stdout).toContain('can be compared, with limits');
    expect(ran.stdout).toContain('2 m wide and later 1 m');
  });

  it('night is not set against day, unless somebody answers for it by name', async () => {
    const night = { earlier: 'yes', later: 'no' };
    const book = await bookWith(
      tablesOf({ earlier: f1.data.y1, later: f1.data.y2, selection: 'random', night }),
    );
    const held = await slatelineJson('change', '--book', book);
    expect(held.exitCode).toBe(1);
    expect(held.rows[0]).toMatchObject({ ratio: null, reasonCode: 'change-other-method' });
    const accepted = await slateline(
      'change',
      '--book',
      book,
      '--accept',
      'Officer A: same crew, moonless nights',
    );
    expect(accepted.exitCode).toBe(0);
    expect(accepted.stdout).toContain('Accepted by Officer A');
    expect(accepted.stdout).toContain('night search');
  });
});
