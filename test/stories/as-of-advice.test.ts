/**
 * Advice from the book as it stood: a count is changed in October, and every verb of advice gives September's number
 * again when it is asked for September's book.
 */

import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 } from 'uuid';
import { beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { temporaryFolder, writeFolder } from './cli-helper.ts';

const september = '2026-09-30T06:00:00.000Z';
const october = '2026-10-20T06:00:00.000Z';
const november = '2026-11-02T06:00:00.000Z';
const asOf = ['--as-of', '2026-10-01T00:00:00Z'];
const rates = ['0.05: plan', '0.1: plan', '0.2: plan'].flatMap((rate) => ['--rate', rate]);
const sandfish = ['--survey', 'Lorrin 2026', '--species', 'sandfish'];

/** Every verb that gives advice, and how it is asked for sandfish. */
const verbs: readonly (readonly string[])[] = [
  ['change', '--species', 'sandfish'],
  ['change', '--species', 'sandfish', '--by', 'zone'],
  ['trend', '--species', 'sandfish'],
  ['biomass', ...sandfish],
  ['status', ...sandfish],
  ['harvest', ...sandfish, ...rates, '--limit-reference', '50 per ha: plan'],
  ['sensitivity', ...sandfish],
  ['explain', ...sandfish],
  ['explain', ...sandfish, '--of', 'biomass'],
  ['richness'],
];

let book = '';
const rowsThen = new Map<string, unknown>();
let reportThen = '';

beforeAll(async () => {
  book = join(temporaryFolder(), 'demo');
  await at(september, 'demo', '--book', book);
  for (const verb of verbs) rowsThen.set(verb.join(' '), (await json(verb)).rows);
  reportThen = await report();
  const folder = temporaryFolder();
  await at(september, 'export', '--book', book, '--to', folder);
  const [head, ...rows] = readFileSync(join(folder, 'counts.csv'), 'utf8').trim().split(/\r?\n/);
  const columns = head!.split(',');
  const cell = (row: string, column: string) => row.split(',')[columns.indexOf(column)]!;
  const seen = rows.find(
    (row) => cell(row, 'survey') === 'Lorrin 2026' && cell(row, 'species').toLowerCase().includes('scabra'),
  )!;
  const corrected = seen.split(',');
  corrected[columns.indexOf('count')] = '60';
  const changed = await at(
    october,
    ...['import', writeFolder({ counts: [columns, corrected] }), '--book', book],
    ...['--who', 'Officer B', '--why', 'read the slate again'],
  );
  expect(changed.exitCode).toBe(0);
});

describe('advice as of a day before the correction', () => {
  it.each(verbs.map((verb) => [verb.join(' '), verb] as const))('%s is what it was', async (name, verb) => {
    const now = await json(verb);
    const then = await json([...verb, ...asOf]);
    expect(then.rows).toEqual(rowsThen.get(name));
    expect(then.settings.asOf).toBe('2026-10-01T00:00:00.000Z');
    expect(now.rows).not.toEqual(then.rows);
    expect(now.dataVersion).not.toBe(then.dataVersion);
  });
});

describe('a report of the book as it stood', () => {
  it('says both days: when it was made, and how the book stood', async () => {
    const page = await report(...asOf);
    expect(page).toContain('Made on 2 November 2026 with Slateline');
    expect(page).toContain('It shows the book as it stood at 1 October 2026, 00:00 UTC;');
    expect(page).toContain('<p class="quiet">The book as it stood at 1 October 2026, 00:00 UTC</p>');
    const french = await report(...asOf, '--language', 'fr');
    expect(french).toContain('Fait le 2 novembre 2026');
    expect(french).toContain('tel qu’il était le 1er octobre 2026 à 00\u00a0h\u00a000 UTC');
  });

  it('is otherwise the report of then, also in its advice', async () => {
    const said =
      / It shows the book as it stood at [^<]*|<p class="quiet">The book as it stood at [^<]*<\/p>/g;
    expect((await report(...asOf)).replaceAll(said, '')).toBe(reportThen);
    const now = await report();
    expect(now).not.toBe(reportThen);
    expect(now).not.toContain('as it stood');
  });
});

async function at(moment: string, ...args: readonly string[]) {
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
    device: 'test laptop',
    user: 'Officer A',
    isTerminal: false,
  });
  return { exitCode, ...out };
}

async function json([verb, ...args]: readonly string[]) {
  const { stdout } = await at(november, verb!, '--book', book, ...args, '--json');
  return JSON.parse(stdout) as { rows: unknown; settings: { asOf: string }; dataVersion: string };
}

/** Always made on one day, so that only the book can differ. */
async function report(...args: readonly string[]): Promise<string> {
  const page = join(temporaryFolder(), 'report.html');
  const chosen = [...rates, '--limit-reference', '50 per ha: plan'];
  const ran = await at(november, 'report', '--book', book, '--to', page, ...chosen, ...args);
  expect(ran.stderr).toBe('');
  return readFileSync(page, 'utf8');
}
