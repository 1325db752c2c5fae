/** The docs say what the program does: made pages are up to date, every code and estimator is named, no link is dead. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { madePages } from '../scripts/docs.ts';

const root = resolve(import.meta.dirname, '..');
const pages = [
  ...['README.md', 'ARCHITECTURE.md', 'CHANGELOG.md', 'bench/README.md'],
  ...readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name)),
];
const read = (page: string) => readFileSync(join(root, page), 'utf8');

describe('the docs', () => {
  it('hold the command reference and the questions as the program gives them (node scripts/docs.ts makes them)', async () => {
    for (const [name, text] of Object.entries(await madePages()))
      expect(read(join('docs/handbook', name))).toBe(text);
  });

  it('have no dead link', () => {
    const dead = pages.flatMap((page) =>
      [...read(page).matchAll(/\]\((?!https?:)([^)#\s]+)/g)]
        .map((match) => match[1]!)
        .filter((target) => !existsSync(resolve(root, dirname(page), target)))
        .map((target) => `${page} -> ${target}`),
    );
    expect(dead).toEqual([]);
  });

  it('name every estimator in the methods pages', () => {
    const methods = pages
      .filter((page) => page.startsWith('docs/methods'))
      .map(read)
      .join('\n');
    const files = readdirSync(join(root, 'src/estimates')).filter(
      (name) => name.endsWith('.ts') && !name.includes('.test.'),
    );
    const plumbing = ['answers.ts', 'shapes.ts', 's1-survey.ts'];
    const missing = files.filter((name) => !plumbing.includes(name) && !methods.includes(name));
    expect(missing).toEqual([]);
  });
});
