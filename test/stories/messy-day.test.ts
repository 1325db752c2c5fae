/** The messy field day of the demo, worked through as the handbook tells it. Authority: the error list of the job (JOB, 24 errors). */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeWhole } from '../../src/cli/write-whole.ts';
import { writeWorkbook } from '../../src/exchange/write-tables.ts';
import { cleanDay } from '../../src/tasks/demo/clean-day.ts';
import { dayRows } from '../../src/tasks/demo/messy-day.ts';
import { messyErrors } from '../../src/tasks/demo/messy-errors.ts';
import { demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

let practice = '';

async function newBook(): Promise<string> {
  const book = join(temporaryFolder(), 'practice');
  await slateline('new', '--book', book);
  const map = join(practice, 'lorrin-strata.geojson');
  expect((await slateline('strata', '--from', map, '--book', book)).exitCode).toBe(0);
  return book;
}

beforeAll(async () => {
  const demo = await demoBook();
  practice = join(demo, 'practice');
});

describe('the messy field day', () => {
  it('stops as typed, and nothing is written', async () => {
    const book = await newBook();
    const typed = await slatelineJson('import', join(practice, 'messy-field-day.xlsx'), '--book', book);
    expect(typed.exitCode).toBe(1);
    expect(typed.problems.filter((one) => one.severity === 'stop').length).toBeGreaterThan(0);
    for (const row of typed.rows) expect(row.added + row.changed).toBe(0);
  });

  it('has every error of the list found by the check the handbook names, once the stops are mended', async () => {
    const book = await newBook();
    const path = join(practice, 'messy-field-day-stops-mended.xlsx');
    expect((await slateline('import', path, '--book', book)).exitCode).toBe(0);
    const { rows } = await slatelineJson('check', '--book', book);
    const found = new Set(rows.map((row) => row.code));
    const page = readFileSync(join(import.meta.dirname, '../../docs/handbook/messy-day.md'), 'utf8');
    const lines = page.split('\n').filter((line) => /^\| \d+ \|/.test(line));
    expect(lines).toHaveLength(24);
    for (const line of lines) {
      const cell = line.split('|')[4]!;
      if (cell.includes('stop:')) continue;
      for (const [, code] of cell.matchAll(/`([a-z-]+)`/g)) expect(found, line).toContain(code);
    }
  });

  it('has each of its five stops found when the others are mended', async () => {
    const codes: Record<number, string> = {
      4: 'repeated-row',
      5: 'number-out-of-range',
      11: 'lengths-without-count',
      12: 'more-lengths-than-animals',
      17: 'unknown-species',
    };
    for (const error of messyErrors.filter((one) => one.stops)) {
      const day = cleanDay(1);
      error.make(day);
      const path = join(temporaryFolder(), 'day.xlsx');
      writeWhole(path, await writeWorkbook(dayRows(day)));
      const ran = await slatelineJson('import', path, '--book', await newBook());
      expect(ran.exitCode).toBe(1);
      expect(ran.problems.map((one) => one.code)).toContain(codes[error.number]);
    }
  });

  it('is clean before it is spoiled: no stop and hardly a question', async () => {
    const path = join(temporaryFolder(), 'day.xlsx');
    writeWhole(path, await writeWorkbook(dayRows(cleanDay(1))));
    const book = await newBook();
    expect((await slateline('import', path, '--book', book)).exitCode).toBe(0);
    const { rows } = await slatelineJson('check', '--book', book);
    const codes = rows.filter((row) => row.severity !== 'note').map((row) => row.code);
    // One terrace station was taken into the day, and stands alone in its stratum.
    expect(codes).toEqual(['lone-station-in-stratum']);
  });
});
