/** Planning at the command line: how many stations, over which strata, and what the report will be able to say. */

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { openBook } from '../../src/store/book-folder.ts';
import type { PlanContent } from '../../src/survey/plan-words.ts';
import { bookWith, demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

let book = '';

beforeAll(async () => {
  book = await demoBook();
});

const words = (text: string) => text.split(' ');
const lorrin = () => ['--book', book, '--survey', 'Lorrin 2026'];

describe('plan size', () => {
  it('answers first, then who needs what, then what fewer would give', async () => {
    const { stdout, exitCode } = await slateline(
      ...['plan', 'size', ...lorrin(), '--species', 'lollyfish', '--cv', '0.2', '--stations-a-day', '4'],
      ...['--decide', 'close the flat if lollyfish fell by half'],
    );
    expect(exitCode).toBe(0);
    const lines = stdout.split('\n');
    expect(lines[0]).toBe('To decide: close the flat if lollyfish fell by half');
    expect(lines[2]).toMatch(/^About \d+ stations, \d+ boat days, for a CV of 20\s% for Lollyfish\./);
    expect(stdout).toContain('CV to count on');
  });

  it('carries the uncertainty of the pilot: more stations than its CV alone would ask for', async () => {
    const { rows } = await slatelineJson(
      'plan',
      'size',
      ...lorrin(),
      '--species',
      'lollyfish',
      '--cv',
      '0.2',
    );
    const [row] = rows;
    // By hand: (station CV / 0.2)^2 for the pilot as seen, times the factor squared for the plan.
    expect(row.stationsAsSeen).toBe(Math.ceil((row.stationCv / 0.2) ** 2));
    expect(row.stations).toBe(Math.ceil(((row.stationCv * row.factor) / 0.2) ** 2));
    expect(row.factor).toBeGreaterThan(1);
  });

  it('shows the same CV of the earlier survey as the density verb', async () => {
    const { rows } = await slatelineJson('plan', 'size', ...lorrin(), '--species', 'trochus', '--cv', '0.2');
    const density = await slatelineJson('density', ...lorrin(), '--species', 'trochus');
    const [answer] = density.rows;
    expect(rows[0].densityPerHa).toBeCloseTo(answer.densityPerHa, 9);
    expect(rows[0].pilotCv).toBeCloseTo(answer.standardErrorPerHa / answer.densityPerHa, 9);
  });

  it('takes typed values where there is no survey', async () => {
    const typed = ['--typed', 'sandfish: mean 30 per ha, k 0.3', '--station-area', '240'];
    const { rows, exitCode } = await slatelineJson('plan', 'size', ...typed, '--cv', '0.2');
    expect(exitCode).toBe(0);
    // By hand: mean count 0.72, (1 / 0.72 + 1 / 0.3) / 0.04 = 118.06, so 119 stations.
    expect(rows[0].stations).toBe(119);
  });

  it('does not promise what an uncertain earlier survey makes impossible', async () => {
    const { stdout } = await slateline(
      ...['plan', 'size', ...lorrin(), '--species', 'trochus', '--change', '0.5', '--simulations', '400'],
    );
    expect(stdout).toMatch(/not even 500 stations tell a halving/);
    expect(stdout).toMatch(/two new surveys of about \d+ stations each would/);
    expect(stdout).toContain('false alarm');
  });

  it('gives no CV for a species that the pilot never met, but a bound', async () => {
    const { stdout, exitCode } = await slateline(
      ...['plan', 'size', ...lorrin(), '--species', 'curryfish', '--cv', '0.2'],
    );
    expect(exitCode).toBe(0);
    expect(stdout).toMatch(
      /Curryfish: none at 28 stations .* 95 % sure below 2\.6 per ha.* no CV is planned/,
    );
    expect(stdout).not.toMatch(/^About/m);
  });

  it('lists the choices for several species, each with a target of its own', async () => {
    const { rows, settings } = await slatelineJson(
      ...['plan', 'size', ...lorrin(), '--species', 'lollyfish: 0.3', '--species', 'trochus', '--cv', '0.2'],
    );
    expect(rows.map((row) => row.target)).toEqual([0.3, 0.2]);
    expect(settings['stations']).toBe(Math.max(...rows.map((row) => row.stations)));
  });

  it('tells how many transects at a station pay', async () => {
    const { stdout } = await slateline(
      ...[
        'plan',
        'size',
        ...lorrin(),
        '--species',
        'trochus',
        ...words('--cv 0.2 --station-cost 60 --transect-cost 15'),
      ],
    );
    expect(stdout).toMatch(/Trochus: \d+.* of the variance of transects lies between stations/);
  });

  it('writes the curve as a picture', async () => {
    const picture = join(temporaryFolder(), 'curve.svg');
    await slateline('plan', 'size', ...lorrin(), '--species', 'trochus', '--cv', '0.2', '--picture', picture);
    expect(existsSync(picture)).toBe(true);
    expect(readFileSync(picture, 'utf8')).toContain('Trochus');
  });
});

describe('plan allocate', () => {
  // Authority: vector g2 (R), scenario 12: W S as given, 60 stations, minimum 2; Neyman 24.0 / 32.5 / 3.5.
  const g2 = ['RF: area 420, spread 60', 'LG: area 310, spread 110', 'SL: area 145, spread 25'];
  const typed = g2.flatMap((stratum) => ['--stratum', stratum]);

  it('splits 60 stations 24, 33 and 3 (scenario 12)', async () => {
    const { rows } = await slatelineJson('plan', 'allocate', ...typed, ...words('--stations 60 --minimum 2'));
    expect(rows.map((row) => row.stations)).toEqual([24, 33, 3]);
    const vector = JSON.parse(
      readFileSync(new URL('../vectors/g2_allocation.json', import.meta.url), 'utf8'),
    ) as { expected: { neyman: number[] } };
    vector.expected.neyman.forEach((n, h) => {
      expect(rows[h].exact / n).toBeCloseTo(1, 9);
    });
  });

  it('warns below three stations in a stratum and proposes a merge', async () => {
    const { stdout } = await slateline('plan', 'allocate', ...typed, ...words('--stations 30 --minimum 1'));
    expect(stdout).toMatch(/caution: SL would have [12] stations; .* Merge it with RF/);
  });

  it('spends a budget by the costs of each stratum', async () => {
    const costs = ['--cost', 'RF: 1', '--cost', 'LG: 1.4', '--cost', 'SL: 2.2'];
    const { rows, settings } = await slatelineJson(
      ...['plan', 'allocate', ...typed, ...costs, ...words('--budget 80 --rule cost --minimum 2')],
    );
    expect(settings['cost']).toBeLessThanOrEqual(80);
    // Vector g2: the exact split for this budget is 28.4, 32.5, 2.8.
    rows.forEach((row, h) => {
      expect(row.exact).toBeCloseTo([28.4246292097512, 32.5075791414853, 2.75670908734973][h]!, 6);
    });
  });

  it('says of a stratum without spread how many stations it gets all the same', async () => {
    const { stdout } = await slateline(
      ...['plan', 'allocate', ...lorrin(), '--species', 'sandfish', '--stations', '40'],
    );
    expect(stdout).toMatch(
      /outer terrace: all stations showed the same, spread 0.* 3 stations are the minimum/,
    );
  });
});

describe('plan rehearse', () => {
  it('says what the report will be able to say, what more days change, and how often it cries wolf', async () => {
    const { stdout, exitCode } = await slateline(
      ...['plan', 'rehearse', ...lorrin(), '--species', 'trochus', '--change', '0.5', '--change', '0.1'],
      ...words('--stations 40 --stations-a-day 4 --interval lognormal --surveys 100'),
    );
    expect(exitCode).toBe(0);
    expect(stdout).toContain('Trochus will mostly stay undecided: a halving is told');
    expect(stdout).toMatch(/You could tell a fall to 10\s% of Trochus/);
    expect(stdout).toContain('With 2 more boat days, 48 stations instead of 40:');
    expect(stdout).toContain('false alarm');
    // By hand: two standard errors of a share of one half are 1 / sqrt(100).
    expect(stdout).toContain(
      'Told: shares of 100 rehearsed surveys, which luck alone moves by up to 10 in 100',
    );
  });

  it('has a row for each species and option, with the rate of false alarms', async () => {
    const { rows } = await slatelineJson(
      ...['plan', 'rehearse', ...lorrin(), '--species', 'trochus', '--species', 'sandfish'],
      ...words('--stations-a-day 4 --interval lognormal --surveys 50'),
    );
    expect(rows.map((row) => row.stations)).toEqual([28, 28, 36, 36]);
    expect(rows[0].falseAlarm).toBeGreaterThan(0);
    expect(JSON.stringify(rows)).not.toMatch(/NaN|Infinity/);
  });
});

describe('plan rehearse of a plan in the book', () => {
  const stratum = (name: string, areaHa: number) => ({ name, areaHa, maskedHa: 0, stations: 2, spares: 1 });
  const station = (
    code: string,
    of: string,
    role: 'planned' | 'spare' | 'dropped',
    selection = 'random',
  ) => ({
    ...{ code, stratum: of, role, selection, replaces: null, belts: [], shareInside: null },
    position: { latitudeDeg: -17, longitudeDeg: 178 },
  });

  async function bookWithPlan(strata: readonly string[]): Promise<string> {
    const planned = await bookWith(miniatureTables());
    const store = await openBook(planned);
    const id = '0197a6f0-0000-7000-8000-000000000001';
    const content = {
      ...{
        survey: 'S2',
        decision: null,
        protocol: null,
        seed: 1,
        method: 'acceptance',
        minimumSpacingM: null,
      },
      ...{ drawnOn: '2026-10-01', drawnBy: 'Officer A', strata: strata.map((name) => stratum(name, 100)) },
      stations: strata.flatMap((name) => [
        ...['1', '2', '3'].map((n) => station(`${name}${n}`, name, 'planned')),
        ...[station(`${name}4`, name, 'spare'), station(`${name}5`, name, 'dropped')],
        station(`${name}6`, name, 'planned', 'hand-picked'),
      ]),
      ...{ passedOver: [], replacements: [], laid: null },
    } as PlanContent;
    const change = { kind: 'plan', recordId: id, after: { id, name: 'October', content } } as const;
    const signature = { who: 'Officer A', at: '2026-10-01T08:00:00Z', device: 'test', why: 'test' };
    await store.apply([change], signature, () => '0197a6f0-0000-7000-8000-000000000002');
    await store.close();
    return planned;
  }

  const rehearse = (planned: string) =>
    slatelineJson(
      ...[
        'plan',
        'rehearse',
        '--book',
        planned,
        '--survey',
        'S1',
        '--plan',
        'October',
        '--species',
        'sandfish',
      ],
      ...words('--interval lognormal --surveys 50'),
    );

  it('counts drawn stations only: no spares, none dropped, none hand-picked', async () => {
    const { rows } = await rehearse(await bookWithPlan(['RF', 'LG', 'SL']));
    expect(rows[0].strata.map((one: { stations: number }) => one.stations)).toEqual([3, 3, 3]);
    expect(rows[0].strata.map((one: { areaHa: number }) => one.areaHa)).toEqual([100, 100, 100]);
  });

  it('refuses strata that the earlier survey did not know, and ground that the plan leaves out', async () => {
    const { problems, exitCode } = await rehearse(await bookWithPlan(['RF', 'LG', 'lagon']));
    expect(exitCode).toBe(1);
    const messages = problems.map((problem) => problem.message).join('\n');
    expect(messages).toContain('there is no stratum "lagon" here; known are');
    expect(messages).toContain('the plan has no stations in SL, which S1 had');
  });
});

describe('bad input', () => {
  const survey = () => ['--survey', 'Lorrin 2026', '--book', book, '--species', 'sandfish'];
  const cases: readonly (readonly [string, () => readonly string[], RegExp, number])[] = [
    ['a CV of zero', () => ['size', ...survey(), '--cv', '0'], /the wanted CV is 0; .* above 0/, 1],
    [
      'a power of one',
      () => ['size', ...survey(), ...words('--change 0.5 --power 1')],
      /the power is 1; .* below 1/,
      1,
    ],
    ['no goal', () => ['size', ...survey()], /say one goal: .* 0 were given/, 1],
    ['no source', () => ['size', '--cv', '0.2'], /name one source/, 1],
    [
      'a cost of a day of an unknown length',
      () => ['size', ...survey(), ...words('--cv 0.2 --day-cost 9')],
      /--day-cost needs --stations-a-day/,
      1,
    ],
    [
      'an unknown species',
      () => ['size', '--book', book, '--survey', 'Lorrin 2026', '--species', 'sandfsh', '--cv', '0.2'],
      /no species .*sandfsh.*sandfish/,
      2,
    ],
    [
      'no stations',
      () => ['allocate', ...survey(), '--stations', '0'],
      /number of stations is 0; .* at least 1/,
      1,
    ],
    [
      'too few for the minimum',
      () => ['allocate', ...survey(), '--stations', '11'],
      /11 stations are too few: 4 strata .* need 12/,
      1,
    ],
    [
      'a negative cost',
      () => ['allocate', ...survey(), '--budget', '900', '--cost', 'north flat: -4'],
      /cost of a station is .4; .* above 0/,
      1,
    ],
    [
      'stations and a budget at once',
      () => ['allocate', ...survey(), ...words('--stations 9 --budget 9')],
      /one of the two/,
      1,
    ],
    ['an unknown plan', () => ['rehearse', ...survey(), '--plan', 'x'], /no plan .x. in this book/, 2],
    [
      'a rehearsal of no station',
      () => ['rehearse', ...survey(), '--stations', '0'],
      /number of stations is 0/,
      1,
    ],
    [
      'a rehearsal of fewer than two stations in each stratum',
      () => ['rehearse', ...survey(), '--stations', '1'],
      /1 stations? cannot be rehearsed over \d strata: .* takes \d/,
      1,
    ],
  ];
  for (const [what, args, expected, code] of cases) {
    it(`gets a sentence with the numbers: ${what}`, async () => {
      const ran = await slateline('plan', ...args());
      expect(ran.stderr).toMatch(expected);
      expect(ran.stdout).toBe('');
      expect(ran.exitCode).toBe(code);
    });
  }

  it('a survey with one station in a stratum shows no spread, and the stratum is named', async () => {
    const tables = miniatureTables();
    const stations = tables['stations']!;
    const [header, ...rows] = stations;
    const at = header!.indexOf('stratum');
    const kept = new Set<string>();
    const lone = rows.filter((row) => {
      const stratum = String(row[at]);
      if (kept.has(stratum)) return false;
      kept.add(stratum);
      return true;
    });
    const codes = new Set(lone.map((row) => row[header!.indexOf('station')]));
    const only = (name: string) => {
      const [head, ...all] = tables[name]!;
      return [head!, ...all.filter((row) => codes.has(row[head!.indexOf('station')]!))];
    };
    const thin = await bookWith({
      ...tables,
      ...{ stations: [header!, ...lone], transects: only('transects'), counts: only('counts') },
      ...(tables['lengths'] === undefined ? {} : { lengths: only('lengths') }),
    });
    const { rows: surveys } = await slatelineJson('density', '--book', thin);
    const ran = await slateline('plan', 'size', '--book', thin, '--survey', surveys[0].survey, '--cv', '0.2');
    expect(ran.exitCode).toBe(1);
    expect(ran.stderr).toMatch(/only one station was searched in .*one station shows no spread/);
  });
});

describe('a verb of a verb', () => {
  it('is asked for when it is missing, and the nearest is named when it is misspelt', async () => {
    expect((await slateline('plan')).stderr).toMatch(
      /a verb of "plan" is missing: one of .*size, .*allocate/,
    );
    expect((await slateline('plan', 'sise')).stderr).toBe(
      'there is no verb "sise" of "plan"; did you mean "size"?\n',
    );
    expect((await slateline('plan', 'size', '--speces', 'x')).stderr).toBe(
      'there is no option --speces for "plan size"; did you mean --species?\n',
    );
  });

  it('refuses in JSON under its whole name', async () => {
    const refused = await slatelineJson('plan', 'size', '--survey', 'x', '--book', '/nowhere');
    expect(refused.command).toBe('plan size');
    expect(refused.problems[0].code).toBe('no-book-here');
    expect((await slatelineJson('plan')).command).toBe('plan');
  });
});
