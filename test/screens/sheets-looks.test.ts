/** The frame and the Sheets room as people see them: three sizes, three themes, two languages, and what axe finds. */

import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  complaintsOf,
  hasBrowser,
  lastSurvey,
  openBrowser,
  personAt,
  type Served,
  serveDemo,
  shots,
  stationsOf,
} from './screen-helper.ts';

const sizes = {
  phone: { width: 360, height: 740 },
  tablet: { width: 800, height: 1100 },
  laptop: { width: 1366, height: 768 },
} as const;
const looks = [
  { size: 'phone', theme: 'sun', language: 'fr' },
  { size: 'tablet', theme: 'night', language: 'en' },
  { size: 'laptop', theme: 'paper', language: 'en' },
  { size: 'laptop', theme: 'sun', language: 'en' },
  { size: 'phone', theme: 'night', language: 'en' },
  { size: 'tablet', theme: 'paper', language: 'fr' },
] as const;

describe.skipIf(!hasBrowser)('the frame and the Sheets room', () => {
  let served: Served;
  let browser: Browser;
  let surveyId: string;
  let stationId: string;

  beforeAll(async () => {
    served = await serveDemo();
    browser = await openBrowser();
    surveyId = await lastSurvey(served.url);
    stationId = (await stationsOf(served.url, surveyId))[3]!.id;
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.remove();
  });

  const screens = {
    start: () => '',
    plan: () => `#/plan/${surveyId}`,
    papers: () => `#/papers/${surveyId}`,
    sheets: () => `#/sheets/${surveyId}`,
    sheet: () => `#/sheets/${surveyId}/${stationId}`,
    'sheet-again': () => `#/sheets/${surveyId}/${stationId}/again`,
    waiting: () => `#/sheets/${surveyId}/waiting`,
  };

  for (const { size, theme, language } of looks) {
    it(`on a ${size} in ${theme}, ${language}: nothing that axe finds, nothing wider than the screen`, async () => {
      const context = await personAt(browser, sizes[size], { theme, language });
      const page = await context.newPage();
      const complaints = complaintsOf(page);
      for (const [name, address] of Object.entries(screens)) {
        await page.goto(`${served.url}${address()}`);
        await page.reload();
        await page.locator('#page h1').waitFor();
        await page.waitForLoadState('networkidle');
        await page.screenshot({
          path: join(shots, `${name}-${size}-${theme}-${language}.png`),
          fullPage: true,
        });
        expect(await violations(page), name).toEqual([]);
        const width = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(width, `${name} is wider than the screen`).toBeLessThanOrEqual(sizes[size].width);
      }
      expect(complaints).toEqual([]);
      await context.close();
    }, 120_000);
  }

  it('the sheet is read back at the pace of the space bar', async () => {
    const context = await personAt(browser, sizes.laptop);
    const page = await context.newPage();
    await page.goto(`${served.url}#/sheets/${surveyId}/${stationId}`);
    await page.getByRole('button', { name: 'Read back' }).click();
    const now = page.locator('.voice .now');
    const said: string[] = [(await now.textContent()) ?? ''];
    for (let i = 0; i < 3; i += 1) {
      await page.keyboard.press('Space');
      said.push((await now.textContent()) ?? '');
    }
    // Read off the demo sheet F4: belt 1, lollyfish, its first two lengths.
    expect(said).toEqual(['Station F4', 'Belt 1', 'lollyfish', '215, 195']);
    await page.keyboard.press('Escape');
    expect(await now.count()).toBe(0);
    await context.close();
  }, 60_000);

  async function violations(page: Page): Promise<string[]> {
    const found = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'wcag2aaa'])
      .analyze();
    return found.violations.map(
      (one) =>
        `${one.id}: ${one.nodes
          .map((node) => node.html.slice(0, 110))
          .slice(0, 3)
          .join(' | ')}`,
    );
  }
});
