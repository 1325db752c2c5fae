/** No screen in any light breaks a rule of accessibility that a machine can check, contrast of AAA among them. */

import type { Page } from '@playwright/test';
import { beforeAll, expect, it } from 'vitest';
import { leaveBeltBlank } from './blank-belt.ts';
import { brokenRules } from './broken-rules.ts';
import { stationsOf } from './screen-helper.ts';
import { phone, screenTests } from './screen-tests.ts';
import { openAnew } from './settled.ts';

interface Screen {
  readonly name: string;
  readonly address: readonly string[];
  /** What a person does there before the rules are asked. */
  readonly act?: (page: Page) => Promise<void>;
}

screenTests('accessibility of every screen', { book: 'demo' }, (here) => {
  let screens: readonly Screen[];

  beforeAll(async () => {
    const [station] = await stationsOf(here.served.url, here.surveyId);
    await leaveBeltBlank(here, station!.id);
    screens = screensOf(here.surveyId, station!);
  });

  it.each([
    ['in the light of paper', { theme: 'paper' }],
    ['in the light of night', { theme: 'night' }],
    ['in full sun', { theme: 'sun' }],
    ['on a phone in French', { size: phone, theme: 'paper', language: 'fr' }],
  ] as const)('%s', async (_, seat) => {
    const page = await here.sitDown(seat);
    const found: string[] = [];
    for (const { name, address, act } of screens) {
      await openAnew(page, `${here.served.url}#/${address.map(encodeURIComponent).join('/')}`);
      await act?.(page);
      for (const broken of await brokenRules(page)) found.push(`${name}: ${broken}`);
    }
    expect(found).toEqual([]);
  });
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
