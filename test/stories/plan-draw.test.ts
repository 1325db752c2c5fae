/** From a map to a list of stations with belts laid: drawing, laying, replacing, and the plan as a page. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bookWith, type Cell, demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

let demo = '';

beforeAll(async () => {
  demo = await demoBook();
});

const plan = (verb: string, ...args: readonly string[]) => slateline('plan', verb, ...args, '--book', demo);
const planJson = (verb: string, ...args: readonly string[]) =>
  slatelineJson('plan', verb, ...args, '--book', demo);
const drawn = ['--for', 'Lorrin 2027', '--total', '24', '--redraws', '0'];

// biome-ignore lint/suspicious/noExplicitAny: tests read the contract as any program would
const placesOf = (rows: any[]) => rows.map(({ code, position }) => [code, position]);

// Authority: JOB, scenario 12: draw, replace, and the sentence of the report.
describe('a draw', () => {
  it('is repeated by its seed and changed by another one', async () => {
    const first = await planJson('draw', 'a', ...drawn, '--seed', '7', '--dry-run');
    const again = await planJson('draw', 'a', ...drawn, '--seed', '7', '--dry-run');
    const other = await planJson('draw', 'a', ...drawn, '--seed', '8', '--dry-run');
    expect(first.rows).toHaveLength(24 + 13);
    expect(placesOf(again.rows)).toEqual(placesOf(first.rows));
    expect(placesOf(other.rows)).not.toEqual(placesOf(first.rows));
  });

  it('is kept in the book as one change, with seed, who and the decision', async () => {
    await plan('draw', 'kept', ...drawn, '--seed', '7', '--decision', 'open the flat?', '--by', 'Officer A');
    const { rows } = await planJson('show', 'kept');
    expect(rows[0]).toMatchObject({ seed: 7, drawnBy: 'Officer A', decision: 'open the flat?' });
    const { rows: changes } = await slatelineJson('history', '--book', demo, '--limit', '1');
    expect(changes[0]).toMatchObject({ table: 'plans', who: 'Officer A', why: 'plan kept: drawn' });
  });

  it('is not drawn again under its name, unless somebody says who and why', async () => {
    const refused = await plan('draw', 'kept', ...drawn, '--seed', '9');
    expect(refused.exitCode).toBe(1);
    expect(refused.stderr).toContain('there is a plan kept already, drawn on 2026-10-01 by Officer A');
    const accepted = await plan('draw', 'kept', ...drawn, '--seed', '7', '--accept', 'Officer B: map mended');
    expect(accepted.exitCode).toBe(0);
    const { stdout } = await slateline('history', '--book', demo, '--limit', '1');
    expect(stdout).toContain('plan kept: drawn again: map mended');
    expect(accepted.stderr).not.toContain('belts');
  });

  it('says that laid belts go with the draw that is replaced', async () => {
    const series = ['--belts', '6', '--length', '40', '--gap', '10', '--width', '2'];
    await plan('draw', 'laid', ...drawn, '--seed', '7');
    await plan('lay', 'laid', '--date', '2026-12-21', ...series);
    const again = await plan('draw', 'laid', ...drawn, '--seed', '8', '--accept', 'Officer B: map mended');
    // By hand: 24 stations and 13 spares, six belts each.
    expect(again.stderr).toContain('the 222 belts laid at 37 stations of the old draw went with it');
  });

  it('says before the trip what one or two stations in a stratum cannot tell', async () => {
    const few = ['--for', 'Lorrin 2027', '--stations', 'north flat: 1', '--stations', 'south flat: 2'];
    const { stderr, stdout } = await plan('draw', 'thin', ...few, '--dry-run');
    expect(stderr).toContain('north flat has one planned station: the report will have no standard error');
    expect(stderr).toContain('south flat would have 2 stations; below 3 the spread there is hardly known');
    expect(stdout).toContain('3 stations in 2 strata');
  });

  it('says how well it is spread beside simple random draws', async () => {
    const { stdout } = await plan('draw', 'b', ...drawn, '--seed', '7', '--dry-run');
    expect(stdout).toMatch(/north flat: 0\.\d+, simple random 0\.\d+ on average; \d+\s% of 200 such draws/);
  });

  it('visits stations of an earlier survey again, never hand-picked ones', async () => {
    const panel = ['--revisit', 'Lorrin 2026', '--share', '0.5'];
    const { rows } = await planJson('draw', 'c', ...drawn, ...panel, '--dry-run');
    const fixed = rows.filter((row) => row.selection === 'fixed');
    const stations = rows.filter((row) => row.role === 'planned');
    expect(stations).toHaveLength(24);
    expect(fixed.length).toBeGreaterThan(8);
    expect(fixed.length).toBeLessThanOrEqual(14);
  });

  it('keeps stations apart and tells what that does to the chances', async () => {
    const { stdout } = await plan('draw', 'd', ...drawn, '--spacing', '300', '--redraws', '40', '--dry-run');
    expect(stdout).toContain('At least 300 m apart:');
    expect(stdout).toMatch(/from \d.* to \d.* times the chance it would have without/);
  });

  const impossible: readonly (readonly [string, readonly string[], RegExp])[] = [
    ['no stations', ['--stations', 'north flat: 0'], /no station is asked for/],
    [
      '10 000 stations in some hectares with a spacing',
      ['--stations', 'lagoon seagrass: 10000', '--spacing', '50'],
      /10.000 stations at least 50 m apart do not fit; \d+ were found/,
    ],
    [
      'more stations than belts could lie on',
      ['--stations', 'lagoon seagrass: 9000', '--protocol', 'belts in series'],
      /9.000 stations in 255 ha leave 28\d m² to each, and one station searches 480 m²/,
    ],
    // By hand: 1 degree north of the middle, 110.96 km, less the 2.52 km from the middle to the outer terrace.
    [
      'a hand-picked station outside',
      ['--total', '16', '--hand-picked', 'H1: 35.5 S 128 W'],
      /H1 lies in no stratum of the plan; the nearest is [a-z ]+, 108.\d{3} m away/,
    ],
    [
      'a hand-picked station without a code',
      ['--total', '16', '--hand-picked', '36.5 S 128 W'],
      /a hand-picked station has no code \(36\.5 S 128 W\); write --hand-picked "H1: /,
    ],
    ['a survey without a name', ['--total', '16', '--for', ' '], /the survey \(--for\) has no name/],
    ['half a station', ['--stations', 'north flat: 2.5'], /2\.5; it has to be a whole number/],
    ['fewer than no station', ['--stations', 'north flat: -3'], /the number of stations is −3/],
    ['neither total nor strata', [], /say how many stations/],
    // A draw that dropped what it was asked for would look like one that obeyed.
    ['a panel of no survey', ['--total', '16', '--panel', 'F4'], /--panel needs --revisit/],
    [
      'strata of no total',
      ['--stations', 'north flat: 4', '--stratum', 'south flat'],
      /--stratum needs --total/,
    ],
    [
      'a pilot that splits nothing',
      ['--total', '16', '--pilot', 'Lorrin 2026'],
      /--pilot needs --rule neyman/,
    ],
    ['a spread of no pilot', ['--total', '16', '--rule', 'neyman'], /--rule neyman needs --pilot/],
    [
      'spares without stations',
      ['--stations', 'north flat: 4', '--spares', 'south flat: 2'],
      /--spares "south flat" needs stations in that stratum/,
    ],
  ];
  it.each(impossible)('of %s is refused with the numbers', async (_, options, words) => {
    const { exitCode, stderr, stdout } = await plan('draw', 'never', '--for', 'X', ...options);
    expect(stderr).toMatch(words);
    expect(stdout).toBe('Nothing was drawn.\n');
    expect(exitCode).toBe(1);
  });

  it('of a stratum without a map is refused', async () => {
    const book = await bookWith({
      strata: [
        ['stratum', 'area_ha'],
        ['flat', 12],
      ],
    });
    const ran = await slateline(
      ...['plan', 'draw', 'a', '--for', 'X', '--stations', 'flat: 4', '--book', book],
    );
    expect(ran.stderr).toContain('there is no map of flat');
    expect(ran.exitCode).toBe(1);
  });

  it('leaves masked ground out before it is made, and says how much', async () => {
    const book = await demoBook();
    const file = join(temporaryFolder(), 'mask.geojson');
    writeFileSync(file, maskOf(-128.005, -36.495, -127.995, -36.48));
    await slateline('strata', '--from', file, '--accept', 'Officer A: a cay', '--book', book);
    const args = ['plan', 'draw', 'a', ...drawn, '--dry-run', '--book', book];
    const { stderr } = await slateline(...args);
    expect(stderr).toMatch(/north flat: \d+\.?\d* ha \(\d+\s%\) taken off before the draw: cay \(land\)/);
    const { rows } = await slatelineJson(...args);
    const inside = rows.filter(
      ({ position: { latitudeDeg, longitudeDeg } }) =>
        latitudeDeg > -36.495 && latitudeDeg < -36.48 && longitudeDeg > -128.005 && longitudeDeg < -127.995,
    );
    expect(inside).toEqual([]);
    const chosen = ['--hand-picked', 'H1: 36.488 S 128.0 W'];
    const onLand = await slateline(...args, ...chosen);
    expect(onLand.stderr).toContain('H1 lies in north flat on ground that a mask takes off');
    expect(onLand.exitCode).toBe(1);
  });

  it('says when its survey has another plan, and keeps the decision when it is drawn again', async () => {
    const first = ['draw', 'early', '--for', 'Two plans', '--total', '16', '--decision', 'open it?'];
    expect((await plan(...(first as [string, ...string[]]))).stderr).not.toContain('another plan');
    const second = await plan('draw', 'late', '--for', 'Two plans', '--total', '16', '--dry-run');
    expect(second.stderr).toContain('Two plans has another plan already: early;');
    expect(second.exitCode).toBe(0);
    const again = ['--total', '16', '--seed', '9', '--accept', 'Officer A: other ground'];
    await plan('draw', 'early', '--for', 'Two plans', ...again);
    const { rows } = await planJson('show', 'early');
    expect(rows[0]).toMatchObject({ seed: 9, decision: 'open it?' });
  });

  // Scenario 7: 46 may be seconds or hundredths of a minute, 430 m apart here; both lie on the flat.
  it('says what it took for granted in the position of a hand-picked station', async () => {
    const { stderr, exitCode } = await plan(
      ...(['draw', 'chosen', ...drawn, '--hand-picked', 'H1: 36 30 46 S 127 59 37 W', '--dry-run'] as const),
    );
    expect(stderr).toMatch(
      /H1: .*was read as degrees, minutes and seconds; are the last figures decimals of a minute\? \(planned at 36° 30\.767′ S/,
    );
    expect(exitCode).toBe(0);
  });

  it('refuses a table of hand-picked stations that holds none', async () => {
    const file = join(temporaryFolder(), 'chosen.csv');
    writeFileSync(file, 'code,position\n');
    const ran = await plan('draw', 'never', ...drawn, '--hand-picked', file);
    expect(ran.stderr).toMatch(/a hand-picked station has no code \(.*chosen\.csv\)/);
    expect(ran.exitCode).toBe(1);
  });
});

function maskOf(west: number, south: number, east: number, north: number): string {
  const ring = [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south],
  ];
  const geometry = { type: 'Polygon', coordinates: [ring] };
  const feature = { type: 'Feature', properties: { name: 'cay', role: 'mask', reason: 'land' }, geometry };
  return JSON.stringify({ type: 'FeatureCollection', features: [feature] });
}

describe('a station that cannot be worked', () => {
  beforeAll(async () => {
    await plan(
      'draw',
      'work',
      '--for',
      'Lorrin 2027',
      '--stations',
      'north flat: 4',
      '--spares',
      '2',
      '--redraws',
      '0',
    );
  });

  it('gives its place to the next of the list in the same stratum, with the reason on record', async () => {
    const before = (await planJson('show', 'work')).rows[0];
    // biome-ignore lint/suspicious/noExplicitAny: as above
    const firstSpare = before.stations.find((one: any) => one.role === 'spare');
    const ran = await plan('replace', 'work', '--station', 'NF-02', '--why', 'surf', '--by', 'Officer A');
    expect(ran.stdout).toContain(`NF-02 is dropped; ${firstSpare.code} takes its place`);
    const [after] = (await planJson('show', 'work')).rows;
    expect(after.replacements).toEqual([
      expect.objectContaining({
        dropped: 'NF-02',
        replacement: firstSpare.code,
        reason: 'surf',
        who: 'Officer A',
      }),
    ]);
    expect(after.strata[0]).toMatchObject({ planned: 4, replaced: 1, sparesLeft: 1 });
  });

  it('is refused when no spare is left, when it is unknown, and without a reason', async () => {
    await plan('replace', 'work', '--station', 'NF-01', '--why', 'surf', '--by', 'Officer A');
    const none = await plan('replace', 'work', '--station', 'NF-03', '--why', 'surf', '--by', 'Officer A');
    expect(none.stderr).toContain('no spare station is left in north flat to replace NF-03');
    expect(none.exitCode).toBe(1);
    const unknown = await plan('replace', 'work', '--station', 'NF03', '--why', 'surf', '--by', 'A');
    expect(unknown.stderr).toContain('no station NF03 in the plan; did you mean NF-03?');
    const silent = await plan('replace', 'work', '--station', 'NF-03', '--why', ' ', '--by', 'A');
    expect(silent.stderr).toContain('say why station NF-03 is dropped');
  });
});

// Authority: JOB, scenario 11: at 17.75 S 177.40 E on 21 December 2026 declination 12.8 E, compass 090 is true 102.8;
// the field itself is vector l3b (agency calculator).
describe('belts laid where the scenario is', () => {
  let book = '';

  beforeAll(async () => {
    book = join(temporaryFolder(), 'west');
    await slateline('new', '--book', book);
    const file = join(temporaryFolder(), 'strata.geojson');
    const box = maskOf(177.39, -17.76, 177.41, -17.74)
      .replace('cay', 'flat')
      .replace('"role":"mask","reason":"land"', '"role":"stratum"');
    writeFileSync(file, box);
    await slateline('strata', '--from', file, '--book', book);
    const where = ['--hand-picked', 'H1: 17 45.000 S 177 24.000 E'];
    await slateline('plan', 'draw', 'day', '--for', 'X', '--stations', 'flat: 3', ...where, '--book', book);
  });

  const lay = (...args: readonly string[]) =>
    slatelineJson('plan', 'lay', 'day', '--date', '2026-12-21', ...args, '--book', book);
  const series = ['--belts', '6', '--length', '40', '--gap', '10', '--width', '2'];

  it('have a compass bearing 12.8 degrees below the true one', async () => {
    const { rows } = await lay(...series, '--along', 'H1:102.8');
    const station = rows.find(({ code }) => code === 'H1');
    expect(station.laying.declinationDeg).toBeCloseTo(12.8, 1);
    const [belt] = station.belts;
    // Whole degrees are tried: 103 is the nearest to 102.8, and its compass bearing 90.2.
    expect(belt.trueBearingDeg).toBe(103);
    expect(belt.magneticBearingDeg).toBeCloseTo(103 - 12.8, 1);
  });

  it('lie to the north where every bearing is as good, and that is said of those whose contour nobody gave', async () => {
    const free = await lay(...series);
    const open = free.rows.filter(({ laying }) => laying.slackDeg === 180);
    expect(open.length).toBeGreaterThan(1);
    for (const { belts } of open) expect(belts[0].trueBearingDeg).toBe(0);
    const said = ({ problems }: typeof free) =>
      problems.find(({ code }) => code === 'plan-bearing-free')?.message as string;
    expect(said(free)).toContain(`at ${open.length} stations (room: any) every bearing was as good`);
    const along = await lay(...series, '--along', 'H1:0');
    expect(said(along)).toMatch(new RegExp(`^at ${open.length - 1} stations? `));
  });

  it('turn where the officer says so, between belts only', async () => {
    const { rows } = await lay(...series, '--along', 'H1:90', '--bend', 'H1:4:-20');
    const { belts } = rows.find(({ code }) => code === 'H1');
    const bearings = belts.map((belt: { trueBearingDeg: number }) => belt.trueBearingDeg);
    expect(bearings).toEqual([90, 90, 90, 70, 70, 70]);
  });

  it('turn once before a belt, and never back over the last one', async () => {
    const twice = await lay(...series, '--bend', 'H1:4:-20', '--bend', 'H1:4:30');
    expect(twice.problems[0].message).toContain('"--bend H1:4" is given twice; say once what is meant');
    const back = await lay(...series, '--bend', 'H1:4:-170');
    expect(back.problems[0].message).toContain('beyond a right angle a belt comes back over the last one');
    expect([twice.exitCode, back.exitCode]).toEqual([1, 1]);
  });

  it('are refused where they are no series, where nothing says how long they are, and where a bend has no belt', async () => {
    const parallel = await lay('--protocol', 'belts in parallel');
    expect(parallel.problems[0].message).toContain('only belts in series are laid');
    const unknown = await lay('--belts', '6');
    expect(unknown.problems[0].message).toContain(
      'their length (--length 40), the gap between them (--gap 10)',
    );
    const bend = await lay(...series, '--bend', 'H1:9:20');
    expect(bend.problems[0].message).toContain('a belt from 2 to 6');
    expect(bend.exitCode).toBe(1);
  });

  it('that cannot fit are named with the best that can be had, before the boat leaves', async () => {
    const { problems, exitCode } = await lay('--belts', '6', '--length', '900', '--gap', '10');
    const [first] = problems.filter(({ code }) => code === 'plan-belts-do-not-fit');
    expect(first.message).toMatch(
      /no bearing keeps all belts on the ground; the best, \d+° true, has .* of 5.400 m inside/,
    );
    expect(exitCode).toBe(0);
  });

  it('carry a caution for a day the compass model does not know', async () => {
    const { stderr } = await slateline(
      'plan',
      'lay',
      'day',
      '--date',
      '2031-03-01',
      ...series,
      '--book',
      book,
    );
    expect(stderr).toContain('the compass model WMM2025 holds from 2025 to 2030; for 2031-03-01');
  });
});

describe('the plan once it was worked', () => {
  const days: readonly (readonly Cell[])[] = [
    ['survey', 'station', 'stratum', 'date', 'selection'],
    ['Lorrin 2027', 'NF-02', 'north flat', '2027-03-10', 'random'],
    ['Lorrin 2027', 'NF-03', 'north flat', '2027-03-10', 'random'],
    ['Lorrin 2027', 'NF-99', 'north flat', '2027-03-10', 'random'],
  ];

  it('is told as planned, visited and replaced, in show and in the report', async () => {
    const book = await demoBook();
    const to = ['--book', book];
    await slateline('plan', 'draw', 'p', '--for', 'Lorrin 2027', '--stations', 'north flat: 4', ...to);
    await slateline(
      'plan',
      'replace',
      'p',
      '--station',
      'NF-01',
      '--why',
      'surf',
      '--by',
      'Officer A',
      ...to,
    );
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'stations.csv'), `${days.map((row) => row.join(',')).join('\n')}\n`);
    const imported = await slateline('import', folder, ...to);
    expect(imported.exitCode).toBe(0);
    const shown = await slateline('plan', 'show', 'p', ...to);
    const words = '4 stations were planned, 2 of them visited; 1 had been replaced by the next of the list.';
    expect(shown.stdout).toContain(`Lorrin 2027: ${words}`);
    expect(shown.stdout).toContain('Worked and not in the plan: NF-99.');
    const page = join(folder, 'report.html');
    await slateline('report', '--survey', 'Lorrin 2027', '--to', page, ...to);
    expect(readFileSync(page, 'utf8')).toContain(`Lorrin 2027, plan p: ${words}`);
  });
});

describe('the page of a plan', () => {
  it('holds map, allocation, precision, cost, bearings and the cautions, without network or script', async () => {
    const args = ['--seed', '3', '--hand-picked', 'H1: 36.5 S 128.0 W', '--protocol', 'belts in series'];
    await plan('draw', 'page', ...drawn, ...args);
    await plan('lay', 'page', '--date', '2027-03-10');
    await plan('replace', 'page', '--station', 'NF-02', '--why', 'surf <edge>', '--by', 'Officer A');
    const file = join(temporaryFolder(), 'plan.html');
    expect((await plan('page', 'page', '--to', file, '--stations-a-day', '4')).exitCode).toBe(0);
    const html = readFileSync(file, 'utf8');
    for (const words of [
      'Before the boat leaves',
      'flares',
      'dive supervisor prevail',
      'CV to count on',
      '7 boat days',
    ])
      expect(html).toContain(words);
    expect(html).toContain('surf &lt;edge&gt;');
    expect(html).toContain('declination by WMM2025 (holds from 2025 to 2030)');
    expect(html).not.toContain('<script');
    expect(
      [...html.matchAll(/https?:\/\/[^"'\s<)]+/g)]
        .map(([address]) => address)
        .filter((one) => !one.startsWith('http://www.w3.org/')),
    ).toEqual([]);
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
  });

  // By hand, from the tables of the demo: sandfish was met in the lagoon alone (W 0.197), 50.6 per ha at 7 stations of
  // 480 m2, standard deviation 75.9. Five stations: 0.197 x 75.9 / sqrt(5) / 9.97 = 67 %, times 1.398 for a pilot of 6
  // degrees of freedom 94 %; the earlier CV is 57 %, so a fall is told at exp(-(2.056 + 0.856) 1.398 hypot(0.57, 0.67)).
  // Belts of 40 m2 instead: 75.9^2 - 50.6 / 0.048 + 50.6 / 0.004 = 131.7^2, and 116 %.
  it('promises what its own belts can keep, with the careful CV behind every change', async () => {
    const rowOf = async (...belts: readonly string[]) => {
      const to = join(temporaryFolder(), 'sized.html');
      await plan('lay', 'sized', '--date', '2027-03-10', '--gap', '10', '--length', '40', ...belts);
      await plan('page', 'sized', '--to', to, '--pilot', 'Lorrin 2026');
      const cells = readFileSync(to, 'utf8').replace(/<[^>]*>/g, ' ');
      return /Sandfish\s+[\d.]+\s+(\d+)\s%\s+(\d+)\s%\s+(?:&lt; )?×\s([\d.]+)/
        .exec(cells)!
        .slice(1)
        .map(Number);
    };
    await plan('draw', 'sized', ...drawn, '--seed', '3');
    const [cv, counted, fall] = await rowOf('--belts', '6', '--width', '2');
    expect([cv, counted]).toEqual([67, 94]);
    expect(fall).toBeCloseTo(0.028, 3);
    const [small] = await rowOf('--belts', '1', '--width', '1');
    expect(Math.abs(small! - 116)).toBeLessThan(2);
  });

  it('keeps positions back where it is asked to, in words and in drawings', async () => {
    const file = join(temporaryFolder(), 'plan.html');
    await plan('page', 'page', '--to', file, '--positions', 'none');
    const html = readFileSync(file, 'utf8');
    expect(html).not.toMatch(/36°/);
    expect(html).not.toContain('Each station from above');
    expect(html).toContain('Positions are kept back in this document.');
  });

  it('says that no precision is known where no earlier survey is', async () => {
    const book = join(temporaryFolder(), 'first');
    await slateline('new', '--book', book);
    const file = join(temporaryFolder(), 's.geojson');
    writeFileSync(
      file,
      maskOf(10, 10, 10.01, 10.01).replace('"role":"mask","reason":"land"', '"role":"stratum"'),
    );
    await slateline('strata', '--from', file, '--book', book);
    await slateline('plan', 'draw', 'a', '--for', 'X', '--total', '5', '--book', book);
    const page = join(temporaryFolder(), 'a.html');
    expect((await slateline('plan', 'page', 'a', '--to', page, '--book', book)).exitCode).toBe(0);
    expect(readFileSync(page, 'utf8')).toContain(
      'Not known without a pilot: the book holds no earlier survey',
    );
  });
});
