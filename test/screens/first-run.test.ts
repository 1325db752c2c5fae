/** The first evening with a new book: no survey yet, one is begun on the screen, its first sheet typed. */

import type { Browser } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  complaintsOf,
  hasBrowser,
  openBrowser,
  personAt,
  type Served,
  serveEmpty,
  shots,
} from './screen-helper.ts';

describe.skipIf(!hasBrowser)('the first evening with a new book', () => {
  let served: Served;
  let browser: Browser;
  beforeAll(async () => {
    [served, browser] = await Promise.all([serveEmpty(), openBrowser()]);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.remove();
  });

  it('a survey is begun, what cannot be read is asked about, and the second begins as the first', async () => {
    const page = await (await personAt(browser, { width: 1366, height: 768 })).newPage();
    const complaints = complaintsOf(page);
    await page.goto(served.url);
    await page.getByRole('button', { name: 'New survey' }).click();
    await page.getByLabel('Name of the survey').fill('North 2027');
    await page.getByLabel('First day').fill('3/4/2027');
    await page.getByText('Sat 3 April 2027, or Thu 4 March 2027?').waitFor();
    await page.getByLabel('Width of a belt').fill('1,5');
    await page.getByLabel('Strata, one on each line').fill('reef flat, 1,200\nlagoon, 12,5');
    await page.getByLabel('Species looked for').fill('Holothuria scabra, HSC, sandfish\nHolothuria atra');
    await page.getByRole('button', { name: 'Make the survey' }).click();
    await page.getByText('Strata, line 1: "1,200" is no area in hectares.').waitFor();
    await page.screenshot({ path: `${shots}/new-survey-asks.png` });

    await page.getByLabel('First day').fill('3 Apr 2027');
    await page.getByText('Sat 3 April 2027').waitFor();
    await page.getByLabel('Strata, one on each line').fill('reef flat, 1200\nlagoon, 12,5');
    await page.getByRole('button', { name: 'Make the survey' }).click();
    await page.getByText('No sheet is typed yet').waitFor();

    const surveys = await answerOf<{ surveys: { survey: { id: string; starts: string } }[] }>('api/surveys');
    const { id, starts } = surveys.surveys[0]!.survey;
    expect(starts).toBe('2027-04-03');
    const words = await answerOf<{
      strata: { name: string; areaHa: number }[];
      protocol: { widthM: number };
      targets: string[];
    }>(`api/surveys/${id}/words`);
    expect(words.strata.map(({ name, areaHa }) => [name, areaHa]).sort()).toEqual([
      ['lagoon', 12.5],
      ['reef flat', 1200],
    ]);
    expect(words.protocol.widthM).toBe(1.5);
    expect(words.targets).toHaveLength(2);

    await page.goto(`${served.url}#/`);
    await page.getByRole('button', { name: 'New survey' }).click();
    await page.getByText('as in North 2027').waitFor({ state: 'attached' });
    const species = await page.getByLabel('Species looked for').inputValue();
    expect(species.split('\n').sort()).toEqual(['Holothuria atra', 'Holothuria scabra, HSC, sandfish']);
    await page.getByLabel('Name of the survey').fill('North 2028');
    await page.getByRole('button', { name: 'Make the survey' }).click();
    await page.getByText('No sheet is typed yet').waitFor();
    expect(complaints).toEqual([]);
  }, 120_000);

  async function answerOf<Answer>(path: string): Promise<Answer> {
    return (await (await fetch(`${served.url}${path}`)).json()) as Answer;
  }
});
