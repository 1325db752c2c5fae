import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allChecks, estimateChecks } from './all-checks.ts';
import { cleanSketch, contextOf } from './survey-sketch.ts';

test('a clean survey is asked nothing', () => {
  const context = contextOf(cleanSketch());
  for (const check of allChecks) expect(check.run(context).map((one) => [check.code, one])).toEqual([]);
});

test('every check is one file of its name, with its test beside it', () => {
  const files = readdirSync(import.meta.dirname);
  const codes = allChecks.map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
  for (const code of codes) {
    expect(files).toContain(`${code}.ts`);
    expect(files).toContain(`${code}.test.ts`);
  }
});

test('what an estimate asks is part of the whole round', () => {
  for (const check of estimateChecks) expect(allChecks).toContain(check);
});
