/** What a shell is told by the verbs that estimate: alike for all of them (src/cli/exit-codes.ts). */

import { beforeAll, describe, expect, it } from 'vitest';
import { demoBook, slateline } from './cli-helper.ts';

let demo = '';

beforeAll(async () => {
  demo = await demoBook();
});

const codeOf = async (...args: readonly string[]) => (await slateline(...args, '--book', demo)).exitCode;
const last = ['--survey', 'Lorrin 2026'];

// Authority: the rules in src/cli/exit-codes.ts, and the demo: no curryfish in 2026, no weight of large giant clam.
describe('a species asked for by name without one number', () => {
  it.each([
    ['biomass', '--species', 'large giant clam', ...last],
    ['sizes', '--species', 'curryfish', ...last],
    ['explain', '--species', 'curryfish', '--of', 'biomass', ...last],
    ['sensitivity', '--species', 'curryfish', ...last],
    ['change', '--species', 'curryfish'],
    ['trend', '--species', 'curryfish'],
    ['harvest', '--species', 'curryfish', '--rate', '0.1: plan', ...last],
  ])('is not answered: %s %s %s ends with 1', async (...args) => {
    expect(await codeOf(...args)).toBe(1);
  });
});

describe('an answer', () => {
  it.each([
    ['biomass', '--species', 'sandfish', ...last],
    // A range made from published mean weights is a number, and a zero with its bound is one too.
    ['biomass', '--species', 'leopardfish', ...last],
    ['density', '--species', 'curryfish', ...last],
    ['status', '--species', 'curryfish', ...last],
    // Of many species some may have a reason in place of a number.
    ['sizes', ...last],
    ['change'],
    ['trend'],
  ])('%s %s %s ends with 0', async (...args) => {
    expect(await codeOf(...args)).toBe(0);
  });
});

describe('a name that is not there', () => {
  it.each([
    ['harvest', '--species', 'trochus', '--rate', '0.1: plan', '--closed-zone', 'clozed', ...last],
    ['explain', '--species', 'trochus', '--scope', 'zone: clozed', ...last],
    ['change', '--impact', 'clozed', '--control', 'open'],
    ['biomass', '--species', 'sandfsh', '--survey', 'Lorrin 2062'],
  ])('%s %s %s ends with 2, and the nearest name', async (...args) => {
    const ran = await slateline(...args, '--book', demo);
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toMatch(/closed|Lorrin 2026|sandfish/);
  });
});
