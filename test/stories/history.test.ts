/** What changed, by whom, when and why; and the book as it stood, so that last month's report can be made again. */

import { readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 } from 'uuid';
import { beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { temporaryFolder, writeFolder } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

const september = '2026-09-30T06:00:00.000Z';
const october = '2026-10-20T06:00:00.000Z';
let book = '';
let reportThen = '';
let densityThen: Output;
let exportThen: Files;

// biome-ignore lint/suspicious/noExplicitAny: tests read the contract as any program would
type Output = any;
type Files = readonly (readonly string[])[];

beforeAll(async () => {
  book = join(temporaryFolder(), 'book');
  await at(september, 'new', '--book', book);
  await at(september, 'import', writeFolder(miniatureTables()), '--book', book, '--who', 'Recorder A');
  reportThen = await report();
  densityThen = await json('density', '--by', 'stratum');
  exportThen = await exported();
  await at(
    october,
    ...['import', writeFolder({ counts: changedCounts }), '--book', book],
    ...['--who', 'Officer B', '--why', 'read the slate again'],
  );
});

const [, ...countRows] = miniatureTables().counts!;
const [survey, station, transect, species] = cellsOfCount();
const countBefore = Number(countRows[0]!.at(-1));
const changedCounts = [miniatureTables().counts![0]!, [...countRows[0]!.slice(0, -1), countBefore + 40]];

describe('the book as it stood', () => {
  it('gives last month’s report again, to the byte, with the data version printed then', async () => {
    expect(await report()).not.toBe(reportThen);
    // But for where it says that it is the book of then (as-of-advice.test.ts).
    const said =
      / It shows the book as it stood at [^<]*|<p class="quiet">The book as it stood at [^<]*<\/p>/g;
    expect((await report('--as-of', '2026-09-30')).replaceAll(said, '')).toBe(reportThen);
    expect(reportThen).toContain(densityThen.dataVersion);
  });

  it('gives the same densities, sizes, questions and tables, and says the moment among the settings', async () => {
    const then = await json('density', '--by', 'stratum', '--as-of', '2026-09-30T12:00:00Z');
    expect(then.rows).toEqual(densityThen.rows);
    expect(then.dataVersion).toBe(densityThen.dataVersion);
    expect(then.settings.asOf).toBe('2026-09-30T12:00:00.000Z');
    expect((await json('density', '--by', 'stratum')).rows).not.toEqual(densityThen.rows);
    expect(await exported('--as-of', '2026-09-30')).toEqual(exportThen);
    const checkThen = await json('check', '--as-of', '2026-09-30');
    expect(checkThen.settings.asOf).toMatch(/^2026-(09-30|10-01)T/);
    expect(checkThen.dataVersion).toBe(densityThen.dataVersion);
    const sizes = await json('sizes', '--as-of', '2026-09-30');
    expect(sizes.dataVersion).toBe(densityThen.dataVersion);
  });

  it('before the first change held nothing, and says when that was', async () => {
    const ran = await at(october, 'density', '--book', book, '--as-of', '2026-01-01');
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain(`the first change was written at ${september}`);
  });

  it.each(['yesterday', '2026-02-30', '2026-9-3', '2026-09'])('is not guessed from “%s”', async (moment) => {
    const ran = await at(october, 'density', '--book', book, '--as-of', moment);
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('write a day as in 2026-09-30');
  });

  it('of a day is the book at its end by the clock on the wall', async () => {
    // By hand: the change came at 06:00 UTC; no zone is more than 14 hours away, so the day before it is unchanged
    // and two days after it holds it.
    const day = async (text: string) => (await json('density', '--as-of', text)).dataVersion;
    expect(await day('2026-10-18')).toBe(densityThen.dataVersion);
    expect(await day('2026-10-22')).toBe((await json('density')).dataVersion);
  });
});

describe('the history', () => {
  it('of a count says who changed it, when, why, on which device, from what to what', async () => {
    const asked = [
      '--survey',
      survey!,
      '--station',
      station!,
      '--transect',
      transect!,
      '--species',
      species!,
    ];
    const { rows } = await json('history', ...asked);
    expect(rows).toHaveLength(2);
    expect(rows[0]).toMatchObject({ what: 'entered', who: 'Recorder A', at: september });
    expect(rows[1]).toMatchObject({
      at: october,
      who: 'Officer B',
      device: 'laptop of October',
      why: 'read the slate again',
      what: 'changed',
      table: 'counts',
      changes: [{ column: 'count', before: countBefore, after: countBefore + 40 }],
      clockBehind: false,
    });
    expect(rows[1].record).toMatchObject({ survey, station, transect });
    const ofRecord = await json('history', '--record', rows[1].recordId);
    expect(ofRecord.rows).toEqual(rows);
  });

  it('of a station holds its belts and counts, and of the whole book everything, newest last', async () => {
    const ofStation = await json('history', '--station', station!, '--limit', '1000');
    const tables = new Set(ofStation.rows.map((row: Output) => row.table));
    for (const table of ['stations', 'transects', 'counts']) expect(tables).toContain(table);
    for (const row of ofStation.rows) expect(row.record.station).toBe(station);
    const all = await json('history', '--limit', '3');
    expect(all.rows).toHaveLength(3);
    expect(all.rows.at(-1).why).toBe('read the slate again');
    expect(all.settings.leftOut).toBeGreaterThan(ofStation.rows.length);
  });

  it('for people names the columns of the tables and no identity', async () => {
    const { stdout } = await at(october, 'history', '--book', book, '--limit', '1');
    expect(stdout).toContain('Officer B, on laptop of October: read the slate again');
    expect(stdout).toContain(`count: ${countBefore} → ${countBefore + 40}`);
    expect(stdout).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}-7/);
  });

  it('of what was never there is a sentence, not an empty page', async () => {
    const ran = await at(october, 'history', '--book', book, '--station', 'nowhere');
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('nothing in the history matches station “nowhere”');
  });
});

function cellsOfCount(): (string | undefined)[] {
  const header = miniatureTables().counts![0]!;
  const row = miniatureTables().counts![1]!;
  return ['survey', 'station', 'transect', 'species'].map((name) => String(row[header.indexOf(name)]));
}

async function at(moment: string, ...args: string[]) {
  const out = { stdout: '', stderr: '' };
  const exitCode = await run(args, {
    stdout: (text) => {
      out.stdout += text;
    },
    stderr: (text) => {
      out.stderr += text;
    },
    env: {},
    cwd: tmpdir(),
    now: () => new Date(moment),
    newId: () => v7(),
    device: moment === october ? 'laptop of October' : 'laptop of September',
    user: 'Officer A',
    isTerminal: false,
  });
  return { exitCode, ...out };
}

async function json(verb: string, ...args: string[]): Promise<Output> {
  return JSON.parse((await at(october, verb, '--book', book, ...args, '--json')).stdout);
}

/** Made on one day, so that only the data can differ. */
async function report(...args: string[]): Promise<string> {
  const page = join(temporaryFolder(), 'report.html');
  const ran = await at('2026-10-31T06:00:00.000Z', 'report', '--book', book, '--to', page, ...args);
  expect(ran.stderr).toBe('');
  return readFileSync(page, 'utf8');
}

async function exported(...args: string[]): Promise<Files> {
  const folder = temporaryFolder();
  await at(october, 'export', '--book', book, '--to', folder, ...args);
  return readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]);
}
