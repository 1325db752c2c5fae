/** What a browser must fetch before the first sheet can be typed, and that the other language is there offline all the same. */

import { readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { expect, it } from 'vitest';
import { opensAlone, screenTests } from './screen-tests.ts';
import { settled } from './settled.ts';

const built = resolve(import.meta.dirname, '../../dist/web');
/** The promise: 150 KB of JavaScript, compressed as a server would. */
const limitBytes = 150_000;

screenTests('the first load', { book: 'demo' }, (here) => {
  it('of the program before any room is at most 150 KB of JavaScript', () => {
    const entry = /src="\/assets\/([^"]+\.js)"/.exec(readFileSync(join(built, 'index.html'), 'utf8'));
    const files = withImports([entry![1]!]);
    expect(files.size).toBeGreaterThan(0);
    expect(gzipBytes(files), [...files].join(', ')).toBeLessThanOrEqual(limitBytes);
  });

  const screens = {
    'the start page': { address: () => '#/', ready: '#page h1' },
    'a new sheet': {
      address: () => `#/sheets/${here.surveyId}/0199a000-0000-7000-8000-0000000000bb/new`,
      ready: '.species',
    },
  };
  for (const [name, { address, ready }] of Object.entries(screens)) {
    it(`of ${name} fetches at most 150 KB of JavaScript, in the language in use alone`, async () => {
      const page = await here.sitDown();
      await page.goto(`${here.served.url}${address()}`);
      await page.locator(ready).first().waitFor();
      await settled(page);
      const files = await scriptsOf(page);
      expect(files.size).toBeGreaterThan(1);
      expect(gzipBytes(files), [...files].join(', ')).toBeLessThanOrEqual(limitBytes);
      // A word of each language's catalogue of words.
      expect(anyHolds(files, 'Type a new sheet')).toBe(true);
      expect(anyHolds(files, 'Saisir une nouvelle fiche')).toBe(false);
    });
  }

  it('leaves the other language for later, and it is there when the server is gone', async () => {
    const page = await here.sitDown();
    await here.openRoom(page, 'sheets');
    await page.getByRole('link', { name: 'Type a new sheet' }).waitFor();
    await opensAlone(page);
    await page.reload();
    await page.getByRole('link', { name: 'Type a new sheet' }).waitFor();
    await here.served.kill();
    await page.getByLabel('Language').selectOption('fr');
    await page.getByRole('link', { name: 'Saisir une nouvelle fiche' }).waitFor();
    await page.reload();
    await page.getByRole('link', { name: 'Saisir une nouvelle fiche' }).waitFor();
  });
});

/** A file of the build with everything that it imports before it runs. */
function withImports(names: readonly string[], found = new Set<string>()): ReadonlySet<string> {
  for (const name of names) {
    if (found.has(name)) continue;
    found.add(name);
    const text = readFileSync(join(built, 'assets', name), 'utf8');
    // `import"./a.js"` and `from"./a.js"`; `import("./a.js")` is for later.
    const imports = [...text.matchAll(/(?:\bimport|\bfrom)\s*["']\.\/([^"']+\.js)["']/g)];
    withImports(
      imports.map((one) => one[1]!),
      found,
    );
  }
  return found;
}

/** What the page fetched; what the service worker keeps for later is not the page's. */
async function scriptsOf(page: Page): Promise<ReadonlySet<string>> {
  const addresses = await page.evaluate(() =>
    performance.getEntriesByType('resource').map((one) => new URL(one.name).pathname),
  );
  const scripts = addresses.filter((address) => /^\/assets\/.*\.js$/.test(address));
  return new Set(scripts.map((address) => basename(address)));
}

function gzipBytes(files: ReadonlySet<string>): number {
  let bytes = 0;
  for (const file of files) bytes += gzipSync(readFileSync(join(built, 'assets', file))).length;
  return bytes;
}

function anyHolds(files: ReadonlySet<string>, words: string): boolean {
  return [...files].some((file) => readFileSync(join(built, 'assets', file), 'utf8').includes(words));
}
