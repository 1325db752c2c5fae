/** Status through the command line: published densities of the same method, with source and standing in sight. */

import { beforeAll, describe, expect, it } from 'vitest';
import { bookWith, demoBook, slateline, slatelineJson } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

let demo = '';

beforeAll(async () => {
  demo = await demoBook();
});

describe('a density against a published one', () => {
  it('names author, year, method and standing beside the word, the chance, the interval and the stations', async () => {
    const { stdout, exitCode } = await slateline('status', '--book', demo, '--species', 'sandfish');
    expect(exitCode).toBe(0);
    expect(stdout).toContain(
      'Below the published density 700 per ha (Pakoa and others 2014, belts, from memory, not checked)',
    );
    expect(stdout).toMatch(/chance of being below it (over )?0\.9\d/);
    expect(stdout).toContain('recorded at 4 of 28 stations');
    expect(stdout).not.toMatch(/\bthe reference\b/);
  });

  // Authority: METHODS k: another method's value is held; issue 6.
  it('is held where the other was counted from a towed board, and says so', async () => {
    const ran = await slateline(
      'status',
      '--book',
      demo,
      '--species',
      'sandfish',
      '--reference',
      '50: Author 2014: towed observer',
    );
    expect(ran.exitCode).toBe(1);
    expect(ran.stdout).toContain('counted by towed observer, the survey by belts');
    const accepted = await slatelineJson(
      'status',
      ...['--book', demo, '--species', 'sandfish', '--reference', '50: Author 2014: towed observer'],
      ...['--accept', 'Officer A: shown as an example'],
    );
    expect(accepted.rows[0].comparisons[0].statusClass).toBe('below');
    expect(accepted.rows[0].comparisons[0].limitations[0]).toContain('towed observer');
  });

  it('refuses a density without its way of counting, and says which there are', async () => {
    const ran = await slateline('status', '--book', demo, '--reference', '50: Author 2014');
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('the ways are belts');
  });

  // Authority: METHODS c5 and k: a zero is a bound, never "absent".
  it('of a species that nobody saw is a bound, and never called absent or extinct', async () => {
    const { stdout } = await slateline('status', '--book', demo, '--species', 'curryfish');
    expect(stdout).toMatch(
      /Not recorded, below [\d.]+ per ha, and so below the published density 100 per ha/,
    );
    expect(stdout).not.toMatch(/absent|extinct/i);
    const { rows } = await slatelineJson(
      'status',
      '--book',
      demo,
      '--species',
      'curryfish',
      '--reference',
      '1: Author 2014: belts',
    );
    expect(rows[0].comparisons[0]).toMatchObject({ probabilityBelow: null, bound: { isBelow: false } });
  });

  it('says that a belt of another width is a limitation, and goes on', async () => {
    const { rows } = await slatelineJson('status', '--book', demo, '--species', 'black teatfish');
    const [first] = rows[0].comparisons;
    expect(first.held).toBeNull();
    expect(first.limitations[0]).toContain('1 m wide, those of the survey 2 m');
    expect(first.reference.status).toBe('memory');
  });

  // Invariance: an uncertain reference can only bring the chance nearer to a half.
  it('is less sure against an uncertain density', async () => {
    const chance = async (reference: string) =>
      (await slatelineJson('status', '--book', demo, '--species', 'sandfish', '--reference', reference))
        .rows[0].comparisons[0];
    const sure = await chance('30: Author 2014: belts');
    const unsure = await chance('30 cv 0.5: Author 2014: belts');
    expect(Math.abs(unsure.probabilityBelow - 0.5)).toBeLessThan(Math.abs(sure.probabilityBelow - 0.5));
    expect(Math.abs(unsure.designProbabilityBelow - 0.5)).toBeLessThan(
      Math.abs(sure.designProbabilityBelow - 0.5),
    );
  });

  // Authority: the sizes verb with the same limit.
  it('gives the shares that are mature and legal as the sizes have them', async () => {
    const { rows } = await slatelineJson('status', '--book', demo, '--species', 'sandfish');
    const sizes = await slatelineJson(
      'sizes',
      '--book',
      demo,
      '--species',
      'sandfish',
      '--survey',
      'Lorrin 2026',
      '--limit',
      '160',
    );
    expect(rows[0].atLegalSize.share).toEqual(sizes.rows[0].shareAtLeast);
    expect(rows[0].atMaturity[0].limitMm).toBe(160);
    expect(rows[0].measured).toBe(17);
  });

  it('gives no share where nothing was measured, and says so', async () => {
    const book = await bookWith(miniatureTables());
    const { rows } = await slatelineJson('status', '--book', book, '--reference', '300: Author 2014: belts');
    const [row] = rows;
    expect(row.comparisons[0].probabilityBelow).toBeGreaterThan(0);
    expect(row.atLegalSize).toBeNull();
    for (const share of row.atMaturity) {
      expect(share.share).toBeNull();
      expect(share.reason).toContain('measured');
    }
    const { stdout } = await slateline('status', '--book', book);
    expect(stdout).not.toMatch(/no [A-Z]\w+ \w+ was measured/);
  });
});
