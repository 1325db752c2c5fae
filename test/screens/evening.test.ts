/** The evening after the dive, in a real browser: sheets typed, online or not, and none lost or doubled. */

import { join } from 'node:path';
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
import { cellMoves, dataKeys, inventSlate, type Slate, typeBelts, typeStation } from './typist.ts';

const laptop = { width: 1366, height: 768 };

describe.skipIf(!hasBrowser)('the evening after the dive', () => {
  let served: Served;
  let browser: Browser;
  let surveyId: string;

  beforeAll(async () => {
    served = await serveDemo();
    browser = await openBrowser();
    surveyId = await lastSurvey(served.url);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.remove();
  });

  async function openRoom(page: Page, ...rest: string[]): Promise<void> {
    await page.goto(`${served.url}#/sheets/${[surveyId, ...rest].join('/')}`);
    await page.locator('#page h1').waitFor();
  }

  async function newSheet(page: Page): Promise<void> {
    await openRoom(page);
    await page.getByRole('link', { name: 'Type a new sheet' }).click();
    await page.locator('.code:focus').waitFor();
  }

  async function saveAndWait(page: Page, code: string): Promise<void> {
    await page.keyboard.press('Enter');
    await page.getByText(`Sheet ${code} is saved on this laptop`).waitFor();
  }

  async function inBook(code: string) {
    return (await stationsOf(served.url, surveyId)).filter((one) => one.code === code);
  }

  async function untilInBook(code: string) {
    await expect.poll(() => inBook(code).then((found) => found.length), { timeout: 20_000 }).toBe(1);
    return (await inBook(code))[0]!;
  }

  async function oneSheet(page: Page, slate: Slate): Promise<{ keys: number; ms: number }> {
    await typeStation(page, slate);
    const begun = performance.now();
    const keys = await typeBelts(page, slate);
    const ms = performance.now() - begun;
    await saveAndWait(page, slate.code);
    await page.locator('.code:focus').waitFor();
    return { keys, ms };
  }

  it('ten sheets of 120 lengths cost no key that is neither data nor a move, and the last is as quick as the first', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await newSheet(page);
    const times: number[] = [];
    for (let i = 1; i <= 10; i += 1) {
      const slate = inventSlate(`T${i}`, i);
      const { keys, ms } = await oneSheet(page, slate);
      // By hand: names and figures on the slate, one move after each, one from belt to belt.
      expect(keys).toBe(dataKeys(slate) + cellMoves(slate));
      times.push(ms);
    }
    for (let i = 1; i <= 10; i += 1) {
      expect(await untilInBook(`T${i}`)).toMatchObject({ animals: 120, measured: 120 });
    }
    const early = Math.min(...times.slice(0, 3));
    const late = Math.min(...times.slice(-3));
    expect(late).toBeLessThan(early * 2);
    expect(complaints).toEqual([]);
    await context.close();
  }, 600_000);

  it('day and times are typed as they stand on the slate, said back, and never saved as a guess', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    await newSheet(page);
    await page.keyboard.type('W1');
    for (let cell = 0; cell < 2; cell += 1) await page.keyboard.press('Enter');
    const day = page.locator('[data-cell="station/date"]');
    await expect.poll(() => day.evaluate((cell) => cell === document.activeElement)).toBe(true);
    await day.fill('13/13/2026');
    await page.getByText('"13/13/2026" cannot be read as one day.').waitFor();
    await page.keyboard.press('Control+s');
    await page.getByText('The day cannot be read; write it as').waitFor();
    // 9 October or 10 September: the survey was in September (7 to 15).
    await day.fill('9/10/2026');
    await page.getByText('Thu 10 September 2026').waitFor();
    await page.keyboard.press('Enter');
    await page.keyboard.type('0810');
    await page.keyboard.press('Enter');
    await page.keyboard.type('noon');
    await page.getByText('"noon" is no time').waitFor();
    await page.keyboard.press('Control+s');
    await page.getByText('Sheet W1 is saved on this laptop').waitFor();
    const { id } = await untilInBook('W1');
    const { sheet } = (await (await fetch(`${served.url}api/surveys/${surveyId}/sheets/${id}`)).json()) as {
      sheet: { station: object };
    };
    expect(sheet.station).toMatchObject({
      date: '2026-09-10',
      timeStart: '08:10',
      timeEnd: null,
      note: 'End: noon',
    });
    await context.close();
  });

  it('a running list is read as the diver wrote it, and what is odd stands in the margin', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await newSheet(page);
    await page.getByLabel('Typed as').selectOption('list');
    await page.locator('.code').focus();
    await typeStation(page, inventSlate('L1', 1));
    for (const list of [
      'sandfish 182 190 lolly 150 sandfish 24 +12',
      'none',
      'sanfish 190',
      'starfish 80',
      '',
      'sand',
    ]) {
      await page.keyboard.type(list);
      await page.keyboard.press('Enter');
    }
    await page.getByText('3 animals, 24-190 mm, 12 more counted').waitFor();
    await page.getByText('240 mm', { exact: false }).first().waitFor();
    await page.getByText('"sanfish" read as sandfish').waitFor();
    await page.getByText('"starfish" is no species of this book').waitFor();
    await page.getByText('Belt 5 is blank').waitFor();
    await page.getByText('sand: how many?').waitFor();
    await page.screenshot({ path: join(shots, 'sheet-list-margin.png'), fullPage: true });
    // What cannot be read would be lost: only this stops.
    await page.keyboard.press('Control+s');
    await page.getByText('they would be lost').waitFor();
    // One step back each: the words that were typed last are gone, their cell is in hand again.
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.list').nth(5).inputValue()).toBe('');
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);

  it('the server goes away in the middle of a sheet: it waits on this laptop, survives a reload, and goes once', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await newSheet(page);
    await page.evaluate(() => navigator.serviceWorker.ready);
    const slate = inventSlate('OFF1', 77);
    await typeStation(page, slate);
    await typeBelts(page, { ...slate, belts: slate.belts.slice(0, 3) });
    await served.kill();
    await page.getByText('kept on this laptop').waitFor();
    await page.reload();
    await expect.poll(() => page.locator('.code').inputValue()).toBe('OFF1');
    expect(await page.locator('.lengths').first().inputValue()).toBe(slate.belts[0]![0]!.lengthsMm.join(' '));
    await page.locator('section').nth(3).locator('.species').first().focus();
    await typeBelts(page, { ...slate, belts: slate.belts.slice(3) });
    await saveAndWait(page, 'OFF1');
    await page.getByText('1 sheet is saved on this laptop, waiting for the book').waitFor();
    await page.goto(`${served.url}#/sheets/${surveyId}/waiting`);
    await page.reload();
    await page.getByRole('cell', { name: 'saved on this laptop, waiting for the book' }).waitFor();
    await page.screenshot({ path: join(shots, 'waiting.png'), fullPage: true });
    // Opened again while it waits: the second saving follows the first and is no conflict with it.
    await page.getByRole('link', { name: 'Open' }).click();
    await page.locator('.more').first().fill('5');
    await page.keyboard.press('Control+s');
    await page.getByText('2 sheets are saved on this laptop').waitFor();
    await page.goto(`${served.url}#/sheets/${surveyId}/waiting`);
    await served.start();
    await page.getByText('No sheet is waiting').waitFor();
    expect(await untilInBook('OFF1')).toMatchObject({ animals: 125, measured: 120 });
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  it('a server killed while it saves loses no sheet and doubles none', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    await newSheet(page);
    for (let i = 1; i <= 3; i += 1) {
      const slate = inventSlate(`K${i}`, i);
      await typeStation(page, slate);
      await typeBelts(page, { ...slate, belts: slate.belts.slice(0, 1) });
      const sent = page.waitForRequest((request) => request.method() === 'PUT');
      await page.keyboard.press('Control+s');
      await sent;
      await served.kill();
      await page.reload();
      await served.start();
      await untilInBook(`K${i}`);
      await newSheet(page);
    }
    for (let i = 1; i <= 3; i += 1) expect(await inBook(`K${i}`)).toMatchObject([{ animals: 20 }]);
    await context.close();
  }, 120_000);

  it('two tabs on one sheet: the second is told, reads only, and can take it over', async () => {
    const context = await personAt(browser, laptop);
    const [one, two] = [await context.newPage(), await context.newPage()];
    const [station] = await stationsOf(served.url, surveyId);
    await openRoom(one, station!.id);
    await one.locator('.species').last().waitFor();
    await openRoom(two, station!.id);
    await two.getByText('being typed in another tab').waitFor();
    expect(await two.locator('.species').first().getAttribute('readonly')).not.toBeNull();
    await two.getByRole('button', { name: 'Type it here' }).click();
    await one.getByText('Another tab has taken this sheet over').waitFor();
    expect(await two.locator('.species').first().getAttribute('readonly')).toBeNull();
    await context.close();
  }, 60_000);

  it('a sheet that somebody else changed meanwhile is shown side by side and never overwritten', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    const [station] = await stationsOf(served.url, surveyId);
    await openRoom(page, station!.id);
    await page.locator('.more').first().fill('7');
    await changeInBook(station!.id);
    await page.keyboard.press('Control+s');
    await page.getByRole('link', { name: '1 sheet needs you' }).click();
    await page.getByText('Nothing was overwritten').waitFor();
    await page.screenshot({ path: join(shots, 'conflict.png'), fullPage: true });
    for (const choice of await page.getByRole('radio', { name: 'typed here' }).all()) await choice.check();
    await page.getByRole('button', { name: 'Save what I chose' }).click();
    await page.getByText('No sheet is waiting').waitFor();
    const after = (await stationsOf(served.url, surveyId)).find((one) => one.id === station!.id)!;
    expect(after.animals).toBe(station!.animals + 7);
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);

  it('position and depth of the slate are in the book afterwards, and what cannot be read is in the note', async () => {
    const context = await personAt(browser, { width: 360, height: 740 });
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await newSheet(page);
    await page.getByText('More of the slate').click();
    await page.locator('.code').focus();
    await typeStation(page, inventSlate('P1', 1));
    for (const cell of ['17 45.300 S 177 24.0 E', '12 or 13', '', '8,5']) {
      await page.keyboard.type(cell);
      await page.keyboard.press('Enter');
    }
    await page.getByText('read as 17° 45.300′ S, 177° 24.000′ E').waitFor();
    await page.getByText('"12 or 13" is no number of metres').waitFor();
    await page.screenshot({ path: join(shots, 'slate-head-phone.png'), fullPage: true });
    await page.keyboard.press('Control+s');
    const { id } = await untilInBook('P1');
    const { sheet } = (await (await fetch(`${served.url}api/surveys/${surveyId}/sheets/${id}`)).json()) as {
      sheet: { station: Record<string, unknown> };
    };
    // By hand: 45.3 / 60 = 0.755 and 24 / 60 = 0.4.
    expect(sheet.station['latitudeDeg']).toBeCloseTo(-17.755, 10);
    expect(sheet.station['longitudeDeg']).toBeCloseTo(177.4, 10);
    expect(sheet.station).toMatchObject({ depthM: null, visibilityM: 8.5, note: 'Depth, m: 12 or 13' });
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);

  it('a second typing shows where it differs from the first', async () => {
    const context = await personAt(browser, laptop);
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await newSheet(page);
    const slate = inventSlate('D1', 5);
    const one = { ...slate, belts: slate.belts.slice(0, 1) };
    await typeStation(page, one);
    await typeBelts(page, one);
    await page.keyboard.press('Control+s');
    await untilInBook('D1');
    const id = (await inBook('D1'))[0]!.id;
    await openRoom(page, id, 'again');
    await page.locator('.species').first().focus();
    const [first, ...others] = one.belts[0]!;
    const slip = { ...first!, lengthsMm: [first!.lengthsMm[0]! + 1, ...first!.lengthsMm.slice(1)] };
    await typeBelts(page, { code: 'D1', belts: [[slip, ...others]] });
    await page.getByRole('button', { name: 'Compare with the first' }).click();
    await page.getByText('1 place differs').waitFor();
    await page.screenshot({ path: join(shots, 'typed-twice.png'), fullPage: true });
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);

  /** Somebody else, on another program, writes a note into belt 1 and counts one animal more there. */
  async function changeInBook(stationId: string): Promise<void> {
    const address = `${served.url}api/surveys/${surveyId}/sheets/${stationId}`;
    const { revision, sheet } = (await (await fetch(address)).json()) as {
      revision: string;
      sheet: { tallies: { count: number }[] };
    };
    sheet.tallies[0]!.count += 1;
    const requestId = '0199a000-0000-7000-8000-0000000000aa';
    const body = JSON.stringify({ requestId, base: revision, who: 'Recorder B', sheet });
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(address, { method: 'PUT', headers, body });
    expect(answer.status).toBe(200);
  }
});
