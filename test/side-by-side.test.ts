import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

const script = resolve(import.meta.dirname, '../scripts/side-by-side.ts');

function runOf(...names: readonly string[]) {
  const folder = mkdtempSync(join(tmpdir(), 'side-by-side-'));
  const scripts = { sound: 'node --version', broken: 'node --no-such-option', late: 'node --version' };
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ scripts }));
  return spawnSync(process.execPath, [script, ...names], { cwd: folder, encoding: 'utf8' });
}

it('checks that all hold let the tests begin', () => {
  const { status, stdout } = runOf('sound', 'late');
  expect(status).toBe(0);
  expect(stdout).toContain('good: sound');
});

it('one check that fails, or is not there, fails the run, is named with what it said, and stops no other', () => {
  const { status, stdout } = runOf('broken', 'nowhere', 'late');
  expect(status).toBe(1);
  expect(stdout).toMatch(/FAILED: broken.*\n.*no-such-option/);
  expect(stdout).toContain('good: late');
  expect(stdout).toMatch(/failed: (broken, nowhere|nowhere, broken)\n$/);
});
