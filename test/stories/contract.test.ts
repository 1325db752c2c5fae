/** What programs outside rely on: JSON keys, exit codes, and tables that come back as they went out. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { everyVerb } from '../../src/cli/called-verb.ts';
import { allCommands } from '../../src/cli/commands.ts';
import { bookWith, demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

let demo = '';

beforeAll(async () => {
  demo = await demoBook();
});

// Authority: DESIGN 4, the table of verbs and their rows.
describe('--json', () => {
  it('is one object with command, version, dataVersion, settings, rows and problems for every verb', async () => {
    const lorrin = ['--book', demo, '--survey', 'Lorrin 2026'];
    const calls: Record<string, readonly string[]> = {
      new: ['--book', join(temporaryFolder(), 'b')],
      demo: ['--book', demo],
      import: [temporaryFolder(), '--book', demo],
      check: ['--book', demo],
      answer: `--book ${demo} --code far-from-plan --survey S --answer x --who A --why B`.split(' '),
      strata: ['--book', demo],
      density: ['--book', demo, '--species', 'sandfish'],
      sizes: ['--book', demo, '--species', 'sandfish'],
      biomass: ['--book', demo, '--species', 'sandfish'],
      values: ['--book', demo, '--species', 'sandfish'],
      status: ['--book', demo, '--species', 'sandfish'],
      harvest: ['--book', demo, '--species', 'trochus', '--rate', '0.05: plan 2026'],
      observers: ['--book', demo, '--species', 'sandfish'],
      richness: ['--book', demo, '--by', 'stratum'],
      sensitivity: ['--book', demo, '--species', 'sandfish'],
      explain: ['--book', demo, '--species', 'sandfish'],
      change: ['--book', demo, '--species', 'sandfish', '--draws', '2000'],
      trend: ['--book', demo, '--species', 'sandfish'],
      report: ['--book', demo, '--to', join(temporaryFolder(), 'r.html')],
      export: ['--book', demo, '--to', temporaryFolder()],
      history: ['--book', demo],
      backup: ['--book', demo],
      // In the order of this list: the backup was made by the call above.
      restore: [demo, '--book', join(temporaryFolder(), 'restored')],
      verify: ['--book', demo],
      serve: ['--book', demo, '--get', '/api/book'],
      'plan size': [...lorrin, ...'--species sandfish --change 0.5'.split(' ')],
      'plan allocate': [...lorrin, ...'--species sandfish --stations 40'.split(' ')],
      'plan draw': ['spring', ...'--for X --total 16 --redraws 0'.split(' '), '--book', demo],
      'plan lay': [
        'spring',
        ...'--date 2026-12-21 --belts 6 --length 40 --gap 10'.split(' '),
        '--book',
        demo,
      ],
      'plan replace': ['spring', ...'--station NF-02 --why surf --by A --book'.split(' '), demo],
      'plan show': ['spring', '--book', demo],
      'plan page': ['spring', '--to', join(temporaryFolder(), 'plan.html'), '--book', demo],
      waypoints: ['--plan', 'spring', '--to', join(temporaryFolder(), 'plan.gpx'), '--book', demo],
      'plan rehearse': [
        ...lorrin,
        ...'--species sandfish --interval lognormal --surveys 20 --stations 20'.split(' '),
      ],
    };
    expect(Object.keys(calls).sort()).toEqual(
      everyVerb(await allCommands())
        .map(({ words }) => words.join(' '))
        .sort(),
    );
    for (const [verb, args] of Object.entries(calls)) {
      const output = await slatelineJson(...verb.split(' '), ...args);
      const { exitCode: _, ...object } = output;
      expect(Object.keys(object)).toEqual([
        'command',
        'version',
        'dataVersion',
        'settings',
        'rows',
        'problems',
      ]);
      expect(object.command).toBe(verb);
    }
  });

  it('of density has every key of the contract in every row', async () => {
    const keys =
      'survey species scope stations stationsWithSpecies animals searchedAreaM2 densityPerHa standardErrorPerHa degreesOfFreedom intervalPerHa intervalMethod totalAnimals totalStandardError totalInterval meanWherePresentPerHa prevalence prevalenceInterval reason leftOut';
    for (const by of ['survey', 'stratum', 'site', 'zone', 'station']) {
      const { rows } = await slatelineJson('density', '--book', demo, '--survey', 'Lorrin 2026', '--by', by);
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) {
        for (const key of keys.split(' ')) expect(row).toHaveProperty(key);
        expect(row.scope.by).toBe(by);
      }
      expect(JSON.stringify(rows)).not.toMatch(/NaN|Infinity/);
    }
  });

  it('of sizes has every key of the contract in every row', async () => {
    const keys =
      'survey species scope animals measured meanLengthMm standardErrorMm shareAtLeast quantilesMm classes reason';
    const { rows } = await slatelineJson('sizes', '--book', demo, '--limit', '150', '--by', 'stratum');
    for (const row of rows) {
      for (const key of keys.split(' ')) expect(row).toHaveProperty(key);
      if (row.shareAtLeast !== null) {
        expect(Object.keys(row.shareAtLeast)).toEqual(['limitMm', 'share', 'standardError', 'interval']);
      }
    }
  });

  it('of import counts every row: read is added, changed, unchanged and refused', async () => {
    const { rows } = await slatelineJson('demo', '--book', demo);
    for (const row of rows) {
      expect(Object.keys(row)).toEqual(['table', 'read', 'added', 'changed', 'unchanged', 'refused']);
      expect(row.added + row.changed + row.unchanged + row.refused).toBe(row.read);
    }
  });

  it('of a refusal is still one object, with the refusal as its problem', async () => {
    const output = await slatelineJson('density', '--book', '/nowhere');
    expect(output.exitCode).toBe(2);
    expect(output.problems[0]).toMatchObject({ code: 'no-book-here', severity: 'stop' });
  });
});

describe('the demo', () => {
  it('raises no stop and no question: a clean survey is left in peace', async () => {
    const { problems } = await slatelineJson('check', '--book', demo);
    expect(problems.filter((problem) => problem.severity !== 'note')).toEqual([]);
  });

  it('changes nothing the second time', async () => {
    const { rows } = await slatelineJson('demo', '--book', demo);
    for (const row of rows) expect(row.unchanged).toBe(row.read);
  });

  it('is never written over a real book', async () => {
    const book = await bookWith(miniatureTables());
    const ran = await slateline('demo', '--book', book);
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('not the invented demo');
  });

  it('gives a report page without network, with every species and the word invented', async () => {
    const page = join(temporaryFolder(), 'report.html');
    expect((await slateline('report', '--book', demo, '--to', page)).exitCode).toBe(0);
    const html = readFileSync(page, 'utf8');
    for (const name of ['Sandfish', 'Curryfish', 'Lollyfish']) expect(html).toContain(name);
    expect(html.toLowerCase()).toContain('invented');
    const addresses = [...html.matchAll(/https?:\/\/[^"'\s<)]+/g)].map((match) => match[0]);
    expect(addresses.filter((address) => !address.startsWith('http://www.w3.org/'))).toEqual([]);
    expect(html).not.toContain('<script');
  });
});

describe('export and import', () => {
  async function roundTrip(to: string): Promise<void> {
    expect((await slateline('export', '--book', demo, '--to', to)).exitCode).toBe(0);
    const second = join(temporaryFolder(), 'second');
    await slateline('new', '--book', second);
    const imported = await slateline('import', to, '--book', second);
    expect(imported.stderr).not.toContain('stop:');
    expect(imported.exitCode).toBe(0);
    const out = async (book: string) => {
      const folder = temporaryFolder();
      await slateline('export', '--book', book, '--to', folder);
      return readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]);
    };
    expect(await out(second)).toEqual(await out(demo));
    const rowsOf = async (book: string) =>
      (await slatelineJson('density', '--book', book, '--survey', 'Lorrin 2026', '--by', 'stratum')).rows;
    expect(await rowsOf(second)).toEqual(await rowsOf(demo));
  }

  it('give back the same tables, to the byte, and the same answers through CSV files', () =>
    roundTrip(temporaryFolder()));

  it('give back the same tables and answers through one workbook', () =>
    roundTrip(join(temporaryFolder(), 'book.xlsx')));
});

describe('help', () => {
  it('is there for every verb, with an example in it', async () => {
    for (const { words } of everyVerb(await allCommands())) {
      const ran = await slateline(...words, '--help');
      expect(ran.exitCode).toBe(0);
      expect(ran.stdout).toContain(`Example: slateline ${words.join(' ')}`);
    }
  });
});
