/** A sheet that is not saved yet: what a reload and a browser that dies leave of it. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  browserPath,
  complaintsOf,
  hasBrowser,
  lastSurvey,
  openBrowser,
  personAt,
  type Served,
  serveDemo,
} from './screen-helper.ts';

const laptop = { width: 1366, height: 768 };

describe.skipIf(!hasBrowser)('a sheet that is being typed', () => {
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

  async function typeOn(page: Page, lengths: string): Promise<void> {
    await page.locator('.species').first().focus();
    await page.keyboard.type('sand');
    await page.keyboard.press('Enter');
    await page.keyboard.type(lengths);
  }

  it('has every letter after a reload, also when it comes upon the last key', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    for (let i = 1; i <= 5; i += 1) {
      const id = `0199a000-0000-7000-8000-00000000010${i}`;
      await page.goto(`${served.url}#/sheets/${surveyId}/${id}/new`);
      await page.locator('.code:focus').waitFor();
      await typeOn(page, `182 190 20${i}`);
      await page.reload();
      await expect.poll(() => page.locator('.lengths').first().inputValue()).toBe(`182 190 20${i}`);
    }
    await context.close();
  }, 120_000);

  it('may be left before it is open: what comes back late finds nobody, and says nothing', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await page.goto(`${served.url}#/sheets/${surveyId}`);
    await page.getByRole('link', { name: 'Type a new sheet' }).waitFor();
    for (let waitMs = 0; waitMs < 60; waitMs += 2) {
      await page.evaluate(leaveSoon, { surveyId, waitMs });
      await page.getByRole('link', { name: 'Type a new sheet' }).waitFor();
    }
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  it('is there when the browser dies a second after the last key', async () => {
    const profile = mkdtempSync(join(tmpdir(), 'slateline-profile-'));
    const options = {
      executablePath: browserPath,
      args: ['--no-sandbox', '--disable-gpu'],
      viewport: laptop,
    };
    const address = `${served.url}#/sheets/${surveyId}/0199a000-0000-7000-8000-000000000201/new`;
    const first = await chromium.launchPersistentContext(profile, options);
    const page = await first.newPage();
    await page.goto(address);
    await page.locator('.code:focus').waitFor();
    await typeOn(page, '182 190 201');
    await page.waitForTimeout(1000);
    const gone = new Promise((done) => first.once('close', done));
    const devtools = await first.newCDPSession(page);
    devtools.send('Browser.crash').catch(() => {});
    await gone;
    const second = await chromium.launchPersistentContext(profile, options);
    const again = await second.newPage();
    await again.goto(address);
    await expect
      .poll(() => again.locator('.lengths').first().inputValue(), { timeout: 20_000 })
      .toBe('182 190 201');
    await second.close();
    rmSync(profile, { recursive: true, force: true });
  }, 120_000);
});

/** In the browser: opens a new sheet, and the day after so many milliseconds, and the list of sheets. */
async function leaveSoon({ surveyId, waitMs }: { surveyId: string; waitMs: number }): Promise<void> {
  const rest = (ms: number) => new Promise((done) => setTimeout(done, ms));
  location.hash = `#/sheets/${surveyId}/0199a000-0000-7000-8000-000000000300/new`;
  await rest(waitMs);
  location.hash = `#/day/${surveyId}`;
  await rest(30);
  location.hash = `#/sheets/${surveyId}`;
}
