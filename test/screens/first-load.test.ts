/** What a browser must fetch before the first sheet can be typed, and that the other language is there offline all the same. */

import { readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, lastSurvey, openBrowser, personAt, type Served, serveDemo } from './screen-helper.ts';

const built = resolve(import.meta.dirname, '../../dist/web');
/** The promise: 150 KB of JavaScript, compressed as a server would. */
const limitBytes = 150_000;

describe.skipIf(!hasBrowser)('the first load', () => {
  let served: Served;
  let browser: Browser;
  let surveyId: string;

  beforeAll(async () => {
    served = await serveDemo();
    browser = await openBrowser();
    surveyId = await lastSurvey(served.url);
  }, 240_000);
  afterAll(async () => {
    await browser?.close();
    await served?.remove();
  });

  it('of the program before any room is at most 150 KB of JavaScript', () => {
    const entry = /src="\/assets\/([^"]+\.js)"/.exec(readFileSync(join(built, 'index.html'), 'utf8'));
    const files = withImports([entry![1]!]);
    expect(files.size).toBeGreaterThan(0);
    expect(gzipBytes(files), [...files].join(', ')).toBeLessThanOrEqual(limitBytes);
  });

  const screens = {
    'the start page': { address: () => '#/', ready: '#page h1' },
    'a new sheet': {
      address: () => `#/sheets/${surveyId}/0199a000-0000-7000-8000-0000000000bb/new`,
      ready: '.species',
    },
  };
  for (const [name, { address, ready }] of Object.entries(screens)) {
    it(`of ${name} fetches at most 150 KB of JavaScript, in the language in use alone`, async () => {
      const context = await personAt(browser, { width: 1366, height: 768 });
      const page = await context.newPage();
      await page.goto(`${served.url}${address()}`);
      await page.locator(ready).first().waitFor();
      await page.waitForLoadState('networkidle');
      const files = await scriptsOf(page);
      expect(files.size).toBeGreaterThan(1);
      expect(gzipBytes(files), [...files].join(', ')).toBeLessThanOrEqual(limitBytes);
      // A word of each language's catalogue of words.
      expect(anyHolds(files, 'Type a new sheet')).toBe(true);
      expect(anyHolds(files, 'Saisir une nouvelle fiche')).toBe(false);
      await context.close();
    }, 60_000);
  }

  it('leaves the other language for later, and it is there when the server is gone', async () => {
    const context = await personAt(browser, { width: 1366, height: 768 });
    const page = await context.newPage();
    await page.goto(`${served.url}#/sheets/${surveyId}`);
    await page.getByRole('link', { name: 'Type a new sheet' }).waitFor();
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await page.getByRole('link', { name: 'Type a new sheet' }).waitFor();
    await served.kill();
    await page.getByLabel('Language').selectOption('fr');
    await page.getByRole('link', { name: 'Saisir une nouvelle fiche' }).waitFor();
    await page.reload();
    await page.getByRole('link', { name: 'Saisir une nouvelle fiche' }).waitFor();
    await served.start();
    await context.close();
  }, 60_000);
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
