/** Questions, Day and Answers in a real browser: a question answered, a day logged, a number followed to its animals. */

import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { beforeEach, expect, it } from 'vitest';
import { leaveBeltBlank } from './blank-belt.ts';
import { untilKept } from './kept-in-browser.ts';
import { lookAt } from './look-at.ts';
import { shots, stationsOf } from './screen-helper.ts';
import { laptop, phone, screenTests, sendAs } from './screen-tests.ts';

const day = '2026-09-30';

screenTests('questions, the day and the answers', { book: 'demo' }, (here) => {
  let page: Page;
  beforeEach(() => open(laptop));

  async function open(size: typeof laptop, language: 'en' | 'fr' = 'en') {
    page = await here.sitDown({ size, language });
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  }

  const openRoom = (room: string, ...rest: string[]) => here.openRoom(page, room, ...rest);

  it('a question is answered with who and why, then stands apart, and held answers are free again', async () => {
    const { id, code } = (await stationsOf(here.served.url, here.surveyId))[0]!;
    await leaveBeltBlank(here, id);
    await openRoom('answers');
    await page.getByRole('heading', { name: /answers are held/ }).waitFor();
    await page.screenshot({ path: join(shots, 'answers-held.png'), fullPage: true });

    // Let through by name: who and why stand above the numbers and with each of them.
    await page.getByText('Go ahead in spite of it').click();
    await page.getByRole('button', { name: 'Give the numbers' }).click();
    await page.getByText('Both are printed with the result').waitFor();
    await page.getByRole('textbox', { name: 'Why' }).fill('the minister asks tonight');
    await page.getByRole('button', { name: 'Give the numbers' }).click();
    await page
      .getByText('let through by Recorder A, who gave as reason: the minister asks tonight')
      .first()
      .waitFor();
    await page.getByRole('heading', { name: 'Animals per hectare' }).waitFor();
    await expect.poll(() => page.getByRole('heading', { name: /held/ }).count()).toBe(0);
    // Every answer has it, so it is said once, above them; and the copy of each has it all the same.
    const letThrough = page.locator('li', { hasText: /^Let through by Recorder A/ });
    await letThrough.waitFor();
    expect(await page.getByRole('cell', { name: /Let through by Recorder A/ }).count()).toBeGreaterThan(1);
    await page.screenshot({ path: join(shots, 'answers-in-spite.png'), fullPage: true });
    await page.getByRole('button', { name: 'Hold them again' }).click();

    await page.getByRole('link', { name: 'To the questions' }).click();
    await page.getByRole('heading', { name: `Station ${code}` }).waitFor();
    // The record is one key away, from the keyboard alone.
    await page.locator('[data-question]').first().focus();
    await page.keyboard.press('o');
    await page.waitForURL(`**/sheets/${here.surveyId}/${id}`);
    await page.goBack();

    await page.locator('[data-question]').first().focus();
    await page.keyboard.press('a');
    await page.keyboard.type('none seen');
    await page.keyboard.press('Enter');
    await page.getByText('an answer needs what, why and who').waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.type('asked the diver on the boat');
    await page.screenshot({ path: join(shots, 'questions-answering.png'), fullPage: true });
    await page.keyboard.press('Enter');
    await page.getByText('The answer is in the book; 1 belt is marked none seen.').waitFor();
    await page.getByText('No question is open.').waitFor();

    await openRoom('answers');
    await page.getByRole('heading', { name: 'Animals per hectare' }).waitFor();
    await expect.poll(() => page.getByRole('heading', { name: /held/ }).count()).toBe(0);
  });

  it('the history of a record shows what was there before', async () => {
    const [station] = await stationsOf(here.served.url, here.surveyId);
    await openRoom('questions', 'history', station!.code);
    await page.getByText('asked the diver on the boat').first().waitFor();
    // By hand: the answer above marked the belt, so that field went from no to yes.
    const field = page
      .locator('.history li li')
      .filter({ hasText: /^\s*none seen/ })
      .first();
    expect((await field.textContent())!.replace(/\s+/g, ' ')).toMatch(/no → yes/);
  });

  it('a day is logged, its dives are added up and compared with the limits typed, and it is in the book', async () => {
    await openRoom('day', day);
    await page.getByText('Nothing is written for this day yet.').waitFor();
    await page.getByText('The local rules and the dive supervisor prevail').waitFor();
    await page.getByLabel('Sea').fill('slight');
    await page.getByLabel('Fuel used, litres').fill('62,5');
    for (const [line, cells] of [
      [1, ['Diver 1', '810', '0855', '14,5']],
      [2, ['Diver 1', '9:30', '10:20', '19']],
    ] as const) {
      await page.getByRole('button', { name: '+ A dive' }).click();
      const dive = page.getByRole('group', { name: `Dive ${line}` });
      for (const [i, label] of ['Diver', 'In', 'Out', 'Deepest, m'].entries()) {
        await dive.getByLabel(label, { exact: true }).fill(cells[i]!);
      }
    }
    await page.getByText('no limit is typed').waitFor();
    await page.getByLabel('Depth, m, at most').fill('18');
    await page.getByLabel('Minutes between two dives, at least').fill('60');
    // By hand: 45 + 50 minutes; 09:30 less 08:55 is 35 minutes; 19 m is deeper than 18.
    await page.getByRole('row', { name: 'Diver 1 2 95 19 35' }).waitFor();
    await page.getByText('35 minutes between two dives; the limit typed is at least 60').waitFor();
    await page.getByText('19 m deep; the limit typed is 18 m').waitFor();
    await page.getByText('Changed, not saved').waitFor();
    await page.screenshot({ path: join(shots, 'day-typed.png'), fullPage: true });
    await page.getByRole('button', { name: 'Save the day' }).click();
    await page.getByText('In the book since').waitFor();
    const { content } = await here.ask<{ content: { fuelUsedL: number; dives: unknown[] } }>(`days/${day}`);
    expect(content.fuelUsedL).toBe(62.5);
    expect(content.dives[0]).toEqual({ diver: 'Diver 1', entry: '08:10', exit: '08:55', maxDepthM: 14.5 });
  });

  it('what was typed and not saved is there after a reload', async () => {
    await openRoom('day', day);
    await page.getByText('This day is in the book as you see it.').waitFor();
    await page.getByLabel('Notes').fill('anchor dragged at the second station');
    await page.getByText('Changed, not saved').waitFor();
    const draft = { name: 'seen', key: `day-draft/${here.surveyId}/${day}` } as const;
    await untilKept(page, draft, 'anchor dragged at the second station');
    await page.reload();
    await page.getByText('that were not saved were found').waitFor();
    await expect
      .poll(() => page.getByLabel('Notes').inputValue())
      .toBe('anchor dragged at the second station');
    await page.getByRole('button', { name: 'Throw them away' }).click();
    await page.getByText('This day is in the book as you see it.').waitFor();
    await expect.poll(() => page.getByLabel('Notes').inputValue()).toBe('');
  });

  it('with the server gone a day waits on the laptop, says so, and goes once when it is back', async () => {
    await openRoom('day', day);
    await page.getByText('This day is in the book as you see it.').waitFor();
    await here.served.kill();
    await page.getByLabel('Habitat').fill('rubble');
    await page.getByRole('button', { name: 'Save the day' }).click();
    await page.getByText('Saved on this laptop, waiting for the book. It goes by itself').waitFor();
    await page.getByText('1 day is saved on this laptop, waiting for the book.').waitFor();
    await here.served.start();
    await page.getByText('In the book since').waitFor();
    const { content } = await here.ask<{ content: { habitat: string } }>(`days/${day}`);
    expect(content.habitat).toBe('rubble');
  });

  it('a day that somebody else saved in between is shown side by side, and nothing is overwritten unasked', async () => {
    await openRoom('day', day);
    await page.getByText('This day is in the book as you see it.').waitFor();
    const { revision, id, content } = await here.ask<{ revision: string; id: string; content: object }>(
      `days/${day}`,
    );
    const body = { base: revision, id, content: { ...content, sea: 'rough' } };
    await sendAs(here, 'Officer A', { path: `days/${day}`, body });
    await page.getByLabel('Sea').fill('calm');
    await page.getByRole('button', { name: 'Save the day' }).click();
    await page.getByRole('heading', { name: 'Somebody else saved this day in between' }).waitFor();
    await page.getByRole('row', { name: 'Sea calm rough' }).waitFor();
    await page.screenshot({ path: join(shots, 'day-conflict.png'), fullPage: true });
    await page.getByRole('button', { name: 'Write yours into the book' }).click();
    await page.getByText('In the book since').waitFor();
    const now = await here.ask<{ content: { sea: string } }>(`days/${day}`);
    expect(now.content.sea).toBe('calm');
  });

  it('a density is read, followed down to its animals, and copied as a table', async () => {
    await openRoom('answers');
    await page.getByRole('combobox', { name: 'One answer for each' }).selectOption('stratum');
    const { rows } = await here.ask<{
      rows: {
        species: string;
        name: string;
        scope: { name: string };
        animals: number;
        densityPerHa: number;
      }[];
    }>('densities?by=stratum');
    const row = rows.toSorted((a, b) => b.animals - a.animals)[0]!;
    const what = `${row.name}, ${row.scope.name}`;
    await page.getByRole('img', { name: new RegExp(`^${what}: .* per ha`) }).waitFor();
    // Zero animals: a band as well, from zero to a bound.
    await page
      .getByRole('img', { name: /not recorded; 95 %: below/ })
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Copy the table' }).click();
    await page.getByText(`${rows.length} rows copied.`).waitFor();
    const copied = (await page.evaluate(() => navigator.clipboard.readText())).trimEnd().split('\n');
    expect(copied).toHaveLength(rows.length + 1);
    const place = copied[0]!.split('\t').indexOf('density_per_ha');
    const line = copied.find((one) => one.includes(`${row.species}\tstratum\t${row.scope.name}\t`))!;
    expect(Number(line.split('\t')[place])).toBe(row.densityPerHa);

    await page.getByRole('link', { name: `Where does this come from: ${what}` }).click();
    await page.getByRole('heading', { name: `Where the number of ${row.name} comes from` }).waitFor();
    const sum = (await page.getByText(/animals on .* at .* stations that looked for it/).textContent())!;
    expect(Number(sum.split(' animals')[0]!.replace(/\D/g, ''))).toBe(row.animals);
    const first = page.locator('summary').first();
    await first.click();
    // Belts with their animals, each length in millimetres.
    await page.locator('details[open] tbody tr').first().waitFor();
    await page.locator('.strip svg').first().waitFor();
    await page.screenshot({ path: join(shots, 'answers-from.png'), fullPage: true });
    await page.locator('details[open]').getByRole('link', { name: 'Open the sheet' }).click();
    await page.waitForURL(`**/sheets/${here.surveyId}/**`);
  });

  it('the report opens in the language of the screen', async () => {
    await open(laptop, 'fr');
    await openRoom('answers');
    const link = page.getByRole('link', { name: 'Ouvrir le rapport' });
    expect(await link.getAttribute('href')).toBe(`/report/${here.surveyId}?lang=fr`);
    expect(await link.getAttribute('target')).toBe('_blank');
  });

  it('on a phone nothing is wider than the screen', async () => {
    await open(phone, 'fr');
    for (const room of ['day', 'questions', 'answers']) {
      await openRoom(room);
      await lookAt(page, `${room}-phone`);
    }
  });
});
