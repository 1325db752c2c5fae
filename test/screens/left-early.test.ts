/** People do not wait for a screen: what comes back after they have left it finds nobody, and says nothing. */

import type { Page } from '@playwright/test';
import { beforeEach, expect, it } from 'vitest';
import { leaveBeltBlank } from './blank-belt.ts';
import { stationsOf } from './screen-helper.ts';
import { screenTests } from './screen-tests.ts';
import { settled } from './settled.ts';

screenTests('a screen that is left early', { book: 'demo' }, (here) => {
  let page: Page;
  let station: Awaited<ReturnType<typeof stationsOf>>[number];

  beforeEach(async () => {
    page = await here.sitDown();
    station = (await stationsOf(here.served.url, here.surveyId))[0]!;
  });

  /** Goes elsewhere; only then what was held is answered. */
  async function leave(gate: Gate): Promise<void> {
    await goTo(page, 'papers', here.surveyId);
    await page.getByRole('heading', { name: 'Papers' }).waitFor();
    gate.open();
    await settled(page);
  }

  it('of any room, after none, one, two or three answers of the book', async () => {
    await here.openRoom(page, 'papers');
    const gate = await gateBefore(page);
    for (const [room, ...rest] of [
      ['day', '2026-09-30'],
      ['sheets'],
      ['sheets', station.id],
      ['sheets', '0199a000-0000-7000-8000-000000000301', 'new'],
      ['sheets', 'photos'],
      ['questions'],
      ['questions', 'history', station.code],
      ['answers'],
      ['answers', 'from', 'Holothuria atra'],
    ] as const) {
      let isMoreAsked = true;
      for (let answers = 0; answers <= 3 && isMoreAsked; answers += 1) {
        gate.closeAfter(answers);
        await goTo(page, room, here.surveyId, ...rest);
        await settled(page, () => gate.isHolding);
        isMoreAsked = gate.isHolding;
        await leave(gate);
      }
    }
  });

  it('while it saves: the sheet is in the book all the same', async () => {
    await here.openRoom(page, 'sheets', station.id);
    await page.locator('.more').first().fill('3');
    const gate = await gateBefore(page);
    gate.closeAfter(0);
    await page.keyboard.press('Control+s');
    await leave(gate);
    await here.untilInBook(station.code, [{ animals: station.animals + 3 }]);
  });

  it('while a day is saved: it is in the book all the same', async () => {
    await here.openRoom(page, 'day', '2026-09-30');
    await page.getByLabel('Sea').fill('slight');
    const gate = await gateBefore(page);
    gate.closeAfter(0);
    await page.getByRole('button', { name: 'Save the day' }).click();
    await leave(gate);
    const sea = async () =>
      (await here.ask<{ content: { sea: string } | null }>('days/2026-09-30')).content?.sea;
    await expect.poll(sea).toBe('slight');
  });

  it('while a question is answered: the answer is in the book all the same', async () => {
    await leaveBeltBlank(here, station.id);
    await here.openRoom(page, 'questions');
    await page.locator('[data-question]').first().focus();
    const gate = await gateBefore(page);
    gate.closeAfter(0);
    await page.keyboard.press('h');
    await page.locator('[data-question]').first().focus();
    await page.keyboard.press('a');
    await page.keyboard.type('none seen');
    await page.keyboard.press('Tab');
    await page.keyboard.type('asked the diver');
    await page.keyboard.press('Enter');
    await leave(gate);
    const history = async () => (await fetch(`${here.served.url}api/history?limit=100`)).text();
    await expect.poll(history).toContain('asked the diver');
  });

  it('while another answer is asked for', async () => {
    await here.openRoom(page, 'answers');
    await settled(page);
    const gate = await gateBefore(page);
    gate.closeAfter(0);
    await page.getByRole('combobox', { name: 'One answer for each' }).selectOption('station');
    await page.getByRole('combobox', { name: 'What' }).selectOption('sizes');
    await leave(gate);
  });
});

interface Gate {
  /** So many questions to the book are let through, and the others wait. */
  closeAfter(questions: number): void;
  open(): void;
  readonly isHolding: boolean;
}

/** Open at first. */
async function gateBefore(page: Page): Promise<Gate> {
  await settled(page);
  let free = Number.POSITIVE_INFINITY;
  const waiting: (() => void)[] = [];
  await page.route('**/api/**', async (route) => {
    free -= 1;
    if (free < 0) await new Promise<void>((go) => waiting.push(go));
    // Refused when the page has ended meanwhile.
    await route.continue().catch(() => {});
  });
  return {
    closeAfter: (questions) => {
      free = questions;
    },
    open: () => {
      free = Number.POSITIVE_INFINITY;
      for (const go of waiting.splice(0)) go();
    },
    get isHolding() {
      return waiting.length > 0;
    },
  };
}

/** Within the page: `page.goto` would wait for what is not waited for here. */
async function goTo(page: Page, ...places: readonly string[]): Promise<void> {
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    `#/${places.map(encodeURIComponent).join('/')}`,
  );
}
