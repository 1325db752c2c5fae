/** No screen in any light breaks a rule of accessibility that a machine can check, contrast of AAA among them. */

import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { brokenRules } from './broken-rules.ts';
import {
  hasBrowser,
  lastSurvey,
  openBrowser,
  personAt,
  type Served,
  type Settings,
  serveDemo,
  stationsOf,
} from './screen-helper.ts';

const laptop = { width: 1366, height: 768 };
const phone = { width: 360, height: 740 };
/** Fifteen screens, some of a thousand cells, on a machine that may be busy. */
const patienceMs = 400_000;

interface Screen {
  readonly name: string;
  readonly address: readonly string[];
  /** What a person does there before the rules are asked. */
  readonly act?: (page: Page) => Promise<void>;
}

describe.skipIf(!hasBrowser)('accessibility of every screen', () => {
  let served: Served;
  let browser: Browser;
  let screens: readonly Screen[];

  beforeAll(async () => {
    served = await serveDemo();
    browser = await openBrowser();
    const survey = await lastSurvey(served.url);
    const [station] = await stationsOf(served.url, survey);
    await leaveOneBeltBlank(served.url, survey, station!.id);
    screens = screensOf(survey, station!);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.remove();
  });

  async function violations(size: typeof laptop, settings: Settings): Promise<string[]> {
    const context = await personAt(browser, size, settings);
    const page = await context.newPage();
    const found: string[] = [];
    for (const { name, address, act } of screens) {
      await page.goto(`${served.url}#/${address.map(encodeURIComponent).join('/')}`);
      await page.locator('#page h1, #page h2').first().waitFor();
      await page.waitForLoadState('networkidle');
      await act?.(page);
      for (const broken of await brokenRules(page)) found.push(`${name}: ${broken}`);
    }
    await context.close();
    return found;
  }

  it(
    'in the light of paper',
    async () => {
      expect(await violations(laptop, { theme: 'paper' })).toEqual([]);
    },
    patienceMs,
  );
  it(
    'in the light of night',
    async () => {
      expect(await violations(laptop, { theme: 'night' })).toEqual([]);
    },
    patienceMs,
  );
  it(
    'in full sun',
    async () => {
      expect(await violations(laptop, { theme: 'sun' })).toEqual([]);
    },
    patienceMs,
  );
  it(
    'on a phone in French',
    async () => {
      expect(await violations(phone, { theme: 'paper', language: 'fr' })).toEqual([]);
    },
    patienceMs,
  );
});

function screensOf(survey: string, { id, code }: { readonly id: string; readonly code: string }): Screen[] {
  const newId = '01a2ffff-0000-7000-8000-0000000000ff';
  return [
    { name: 'start', address: [] },
    { name: 'plan', address: ['plan', survey] },
    {
      name: 'day',
      address: ['day', survey],
      act: async (page) => {
        await page.locator('form button[type=button]').first().click();
        await page.locator('form button[type=button]').last().click();
      },
    },
    { name: 'stations', address: ['sheets', survey] },
    { name: 'a sheet', address: ['sheets', survey, id] },
    { name: 'a new sheet', address: ['sheets', survey, newId, 'new'] },
    { name: 'photos without a station', address: ['sheets', survey, 'photos'] },
    { name: 'waiting sheets', address: ['sheets', survey, 'waiting'] },
    {
      name: 'questions',
      address: ['questions', survey],
      act: async (page) => {
        const question = page.locator('[data-question]').first();
        await question.focus();
        await page.keyboard.press('h');
        await page.locator('.history li').first().waitFor();
        await question.focus();
        await page.keyboard.press('a');
      },
    },
    { name: 'history', address: ['questions', survey, 'history', code] },
    { name: 'answers', address: ['answers', survey] },
    {
      name: 'answers by stratum',
      address: ['answers', survey],
      act: async (page) => {
        await page.locator('#page .choices select').nth(1).selectOption('stratum');
        await page.locator('.bands li').first().waitFor();
      },
    },
    {
      name: 'sizes',
      address: ['answers', survey],
      act: async (page) => {
        await page.locator('#page .choices select').first().selectOption('sizes');
        await page.locator('.sizes li').first().waitFor();
      },
    },
    {
      name: 'where a number comes from',
      address: ['answers', survey, 'from', 'Holothuria atra'],
      act: (page) => page.locator('summary').first().click(),
    },
    { name: 'papers', address: ['papers', survey] },
  ];
}

/** A question to look at: neither a count nor "none seen". */
async function leaveOneBeltBlank(url: string, survey: string, station: string): Promise<void> {
  const address = `${url}api/surveys/${survey}/sheets/${station}`;
  const { revision, sheet } = (await (await fetch(address)).json()) as {
    revision: string;
    sheet: { transects: { id: string; noneSeen: boolean }[]; tallies: { transectId: string }[] };
  };
  const belt = sheet.transects[0]!;
  belt.noneSeen = false;
  sheet.tallies = sheet.tallies.filter((tally) => tally.transectId !== belt.id);
  const requestId = '01a2ffff-0000-7000-8000-00000000000c';
  const body = JSON.stringify({ requestId, base: revision, who: 'Recorder A', sheet });
  const saved = await fetch(address, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body,
  });
  if (!saved.ok) throw new Error(`leaveOneBeltBlank requires a saved sheet: ${saved.status}`);
}
