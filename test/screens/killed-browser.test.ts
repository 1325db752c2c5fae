/** A laptop whose battery dies in the middle of the evening, with the server gone as well: no sheet is lost or doubled. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptVersion } from './kept-version.ts';
import { type OwnedBrowser, startOwnedBrowser } from './owned-browser.ts';
import {
  complaintsOf,
  hasBrowser,
  lastSurvey,
  type Served,
  serveDemo,
  shots,
  stationsOf,
} from './screen-helper.ts';
import { inventSlate, typeBelts, typeStation } from './typist.ts';

describe.skipIf(!hasBrowser)('a browser killed in the middle of the evening', () => {
  const profile = mkdtempSync(join(tmpdir(), 'slateline-profile-'));
  let served: Served;
  let surveyId: string;
  let browser: OwnedBrowser | null = null;

  beforeAll(async () => {
    served = await serveDemo();
    surveyId = await lastSurvey(served.url);
  }, 120_000);
  afterAll(async () => {
    await browser?.kill();
    await served?.remove();
    rmSync(profile, { recursive: true, force: true });
  });

  async function openSheets(page: Page, ...rest: string[]): Promise<void> {
    await page.goto(`${served.url}#/sheets/${[surveyId, ...rest].join('/')}`);
    await page.locator('#page h1').waitFor();
  }

  async function newSheet(page: Page): Promise<void> {
    await openSheets(page);
    await page.getByRole('link', { name: 'Type a new sheet' }).click();
    await page.locator('.code:focus').waitFor();
  }

  it('opens again without the server: the sheet waits, the half-typed one is there, and each goes into the book once', async () => {
    browser = await startOwnedBrowser(profile);
    const { page } = browser;
    await openSheets(page);
    await page.getByLabel('Who types').fill('Recorder A');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await newSheet(page);
    // A moment after the book answered, what the numbers rest on is kept as well.
    await expect.poll(() => page.evaluate(keptVersion, surveyId), { timeout: 30_000 }).toBeTruthy();
    await served.kill();
    const slate = inventSlate('DEAD1', 3);
    await typeStation(page, slate);
    await typeBelts(page, slate);
    await page.keyboard.press('Enter');
    await page.getByText('Sheet DEAD1 is saved on this laptop').waitFor();
    const half = inventSlate('DEAD2', 4);
    await page.locator('.code:focus').waitFor();
    await typeStation(page, half);
    await typeBelts(page, { ...half, belts: half.belts.slice(0, 2) });
    await page.getByText('kept on this laptop').waitFor();
    const typed = await page.locator('.lengths').evaluateAll(valuesOf);
    // What the screen calls kept is what it wrote last; the letter after it may still be on its way.
    await page.waitForTimeout(300);
    await browser.kill();

    browser = await startOwnedBrowser(profile);
    const again = browser.page;
    const complaints = complaintsOf(again);
    await openSheets(again);
    await again.getByText('1 sheet is saved on this laptop, waiting for the book').first().waitFor();
    // What the numbers rest on survived as well.
    await again.goto(`${served.url}#/answers/${surveyId}`);
    await again.getByText(/^Computed on this laptop .* and 1 sheet that waits\.$/).waitFor();
    await openSheets(again, 'waiting');
    await again.getByRole('row', { name: /^DEAD1 / }).waitFor();
    await again.screenshot({ path: join(shots, 'killed-browser-waiting.png'), fullPage: true });
    await openSheets(again);
    await again.getByRole('link', { name: /DEAD2/ }).first().click();
    await expect.poll(() => again.locator('.code').inputValue()).toBe('DEAD2');
    expect(await again.locator('.lengths').evaluateAll(valuesOf)).toEqual(typed);
    // The browser's own small settings are written late and may have died with it; they are no data.
    await again.getByLabel('Who types').fill('Recorder A');
    await again.locator('.code').focus();
    await again.keyboard.press('Control+s');
    await again.getByText('Sheet DEAD2 is saved on this laptop').waitFor();

    await served.start();
    await openSheets(again, 'waiting');
    await again.getByText('No sheet is waiting').waitFor({ timeout: 30_000 });
    const inBook = (await stationsOf(served.url, surveyId)).filter((one) => one.code.startsWith('DEAD'));
    // By hand: six belts of 20 lengths, and two belts of 20.
    expect(inBook.map(({ code, animals, measured }) => [code, animals, measured])).toEqual([
      ['DEAD1', 120, 120],
      ['DEAD2', 40, 40],
    ]);
    expect(complaints).toEqual([]);
  }, 180_000);
});

function valuesOf(cells: (Element & { value?: string })[]): string[] {
  return cells.map((cell) => cell.value ?? '');
}
