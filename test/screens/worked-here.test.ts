/** Numbers and questions with the server gone: worked out on the laptop, tonight's waiting sheets included. */

import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { brokenRules } from './broken-rules.ts';
import { keptVersion } from './kept-version.ts';
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
import { inventSlate, typeBelts, typeStation } from './typist.ts';

const laptop = { width: 1366, height: 768 };

describe.skipIf(!hasBrowser)('with the server gone', () => {
  let served: Served;
  let browser: Browser;
  let surveyId: string;
  let context: BrowserContext;
  let page: Page;
  let complaints: string[];
  let isGone = false;

  beforeAll(async () => {
    served = await serveDemo();
    browser = await openBrowser();
    surveyId = await lastSurvey(served.url);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.remove();
  });
  beforeEach(async () => {
    context = await personAt(browser, laptop);
    page = await context.newPage();
    complaints = complaintsOf(page);
    await openRoom('sheets');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await recordsKept();
  }, 60_000);
  afterEach(async () => {
    const said = [...complaints];
    await context.close();
    if (isGone) await startServer();
    expect(said).toEqual([]);
  });

  async function killServer(): Promise<void> {
    await served.kill();
    isGone = true;
  }

  async function startServer(): Promise<void> {
    await served.start();
    isGone = false;
  }

  async function openRoom(room: string, ...rest: string[]): Promise<void> {
    await page.goto(`${served.url}#/${[room, surveyId, ...rest].map(encodeURIComponent).join('/')}`);
    await page.locator('#page h1').waitFor();
  }

  /** Until the laptop holds the records of the survey as the book has them now. */
  async function recordsKept(): Promise<void> {
    const { dataVersion } = (await (await fetch(`${served.url}api/book`)).json()) as { dataVersion: string };
    await expect.poll(() => page.evaluate(keptVersion, surveyId), { timeout: 30_000 }).toBe(dataVersion);
  }

  /** A sheet of 20 animals on belt 1; the others blank, unless they are said to be empty. */
  async function typeSheet(code: string, seed: number, empty: 'none seen' | 'blank'): Promise<void> {
    await openRoom('sheets');
    await page.getByRole('link', { name: 'Type a new sheet' }).click();
    await page.locator('.code:focus').waitFor();
    const slate = inventSlate(code, seed);
    await typeStation(page, slate);
    await typeBelts(page, { ...slate, belts: slate.belts.slice(0, 1) });
    for (let belt = 2; belt <= 6; belt += 1) {
      const box = page
        .locator('section')
        .nth(belt - 1)
        .getByRole('checkbox', { name: /none seen/i });
      if (empty === 'none seen' || belt > 2) await box.check();
    }
    await page.keyboard.press('Control+s');
    await page.getByText(`Sheet ${code} is saved on this laptop`).waitFor();
  }

  /** Every digit of the answers on the screen, line by line, once that word is in it. */
  async function table(word = ''): Promise<string[]> {
    const rows = page.locator('.scroll tbody tr');
    await rows.first().waitFor();
    const isThere = async () => (await rows.evaluateAll(textOfRows)).some((row) => row.includes(word));
    await expect.poll(isThere, { timeout: 20_000 }).toBe(true);
    return rows.evaluateAll(textOfRows);
  }

  async function choose(label: string, option: string): Promise<void> {
    await page.getByRole('combobox', { name: label, exact: true }).selectOption(option);
  }

  it('the answers are worked out here with the sheet that waits, and are the book’s own once it is there', async () => {
    await openRoom('answers');
    await choose('One answer for each', 'stratum');
    await page.getByRole('heading', { name: 'Animals per hectare' }).waitFor();
    const before = await table('\tstratum\t');
    await killServer();
    await typeSheet('HERE1', 11, 'none seen');
    await openRoom('answers');
    await page
      .getByText(/^Computed on this laptop from the book as of \d\d:\d\d and 1 sheet that waits\.$/)
      .waitFor();
    await choose('One answer for each', 'stratum');
    const densities = await table('\tstratum\t');
    expect(densities).not.toEqual(before);
    await page.screenshot({ path: join(shots, 'answers-worked-here.png'), fullPage: true });
    await choose('Interval', 'lognormal');
    const lognormal = await table('\tlognormal\t');
    await choose('What', 'sizes');
    await page.getByRole('heading', { name: 'Lengths' }).waitFor();
    const sizes = await table();
    await openRoom('day');
    await page.getByText(/^Computed on this laptop from the book as of/).waitFor();
    const strata = await table();
    await page.screenshot({ path: join(shots, 'day-worked-here.png'), fullPage: true });
    expect(await brokenRules(page)).toEqual([]);

    await startServer();
    await page
      .getByText(/^Computed on this laptop/)
      .first()
      .waitFor({ state: 'detached', timeout: 30_000 });
    expect((await stationsOf(served.url, surveyId)).filter((one) => one.code === 'HERE1')).toHaveLength(1);
    expectSame(await table(), strata);
    await openRoom('answers');
    await choose('One answer for each', 'stratum');
    expectSame(await table('\tstratum\t'), densities);
    await choose('Interval', 'lognormal');
    expectSame(await table('\tlognormal\t'), lognormal);
    await choose('What', 'sizes');
    await page.getByRole('heading', { name: 'Lengths' }).waitFor();
    expectSame(await table(), sizes);
  }, 120_000);

  it('the checks ask about the sheet that waits, and the answer given waits behind it and goes once', async () => {
    await killServer();
    await typeSheet('HERE2', 12, 'blank');
    await openRoom('questions');
    await page.getByText(/^Computed on this laptop .* and 1 sheet that waits\.$/).waitFor();
    await page.getByRole('heading', { name: 'Station HERE2' }).waitFor();
    const question = page.getByRole('group', { name: /^HERE2, belt 2/ }).first();
    await question.getByRole('button', { name: 'Searched, none seen' }).click();
    await page.keyboard.type('asked the diver on the boat');
    await page.keyboard.press('Enter');
    await page.getByText('1 answer is saved on this laptop, waiting for the book.').waitFor();
    await page.getByText(/and 1 sheet and 1 answer that wait\.$/).waitFor();
    await page.screenshot({ path: join(shots, 'questions-waiting.png'), fullPage: true });
    expect(await brokenRules(page)).toEqual([]);
    // It survives: on the disk of the laptop, not only on the screen.
    await page.reload();
    await page.getByRole('heading', { name: 'Answers not yet in the book' }).waitFor();
    await startServer();
    await page
      .getByRole('heading', { name: 'Answers not yet in the book' })
      .waitFor({ state: 'detached', timeout: 30_000 });
    const [row] = (await stationsOf(served.url, surveyId)).filter((one) => one.code === 'HERE2');
    const { sheet } = await sheetOf(row!.id);
    expect(sheet.transects.filter((one) => one.noneSeen)).toHaveLength(5);
    expect(await answersWritten('HERE2')).toBe(1);
  }, 120_000);

  it('an answer that somebody else gave meanwhile is shown beside mine, and nothing is overwritten unasked', async () => {
    const asked = await questionOf();
    await openRoom('questions');
    await killServer();
    const question = page.getByRole('group', { name: asked.message }).first();
    await question.getByRole('button', { name: /^Answer/ }).click();
    await page.keyboard.type('it is right');
    await page.keyboard.press('Tab');
    await page.keyboard.type('I was there');
    await page.keyboard.press('Enter');
    await page.getByText('The answer is saved on this laptop').waitFor();
    // The server comes back for somebody else first: this laptop is off the network.
    await context.setOffline(true);
    await startServer();
    await answerAs('Officer A', asked, 'it is a slip');
    await context.setOffline(false);
    await page.getByText('1 answer needs you before the book can take it.').waitFor({ timeout: 30_000 });
    await page.getByText('it is a slip').first().waitFor();
    await page.screenshot({ path: join(shots, 'questions-conflict.png'), fullPage: true });
    expect(await brokenRules(page)).toEqual([]);
    expect((await questionOf(asked.code)).answer?.answer).toBe('it is a slip');
    await page.getByRole('button', { name: 'Write yours into the book' }).click();
    await page.getByRole('heading', { name: 'Answers not yet in the book' }).waitFor({ state: 'detached' });
    await expect.poll(async () => (await questionOf(asked.code)).answer?.answer).toBe('it is right');
  }, 120_000);

  it('a sheet that went into the book after its records were last kept is in the numbers as well', async () => {
    await context.route('**/records', (route) => route.abort());
    await typeSheet('HERE3', 13, 'none seen');
    await page.getByText('Everything typed here is in the book (last save').waitFor();
    await killServer();
    await openRoom('answers');
    await choose('One answer for each', 'station');
    await page
      .getByText(/^Computed on this laptop from the book as of \d\d:\d\d, 1 sheet sent since\.$/)
      .waitFor();
    await table('\tHERE3\t');
    await startServer();
    // The browser says of each request that was refused to it.
    complaints = complaints.filter((one) => !one.includes('ERR_FAILED'));
  }, 120_000);

  it('an older program’s store is opened with everything that waited in it', async () => {
    const old = await browser.newContext({ viewport: laptop });
    const own = await old.newPage();
    const { id } = (await stationsOf(served.url, surveyId))[0]!;
    const { sheet } = await fromServer<{ sheet: { station: object } }>(`sheets/${id}`);
    const stationId = '01a2ffff-0000-7000-8000-00000000002a';
    const requestId = '01a2ffff-0000-7000-8000-00000000002b';
    const station = { ...sheet.station, id: stationId, code: 'OLD1' };
    const typed = {
      requestId,
      base: null,
      who: 'Recorder A',
      sheet: { station, transects: [], tallies: [] },
    };
    const place = { requestId, surveyId, stationId, stationCode: 'OLD1' };
    const waits = { typedAt: '2026-09-30T18:00:00.000Z', state: 'waiting', message: null, conflict: null };
    await own.goto(`${served.url}api/book`);
    await own.evaluate(makeOldStore, { ...place, request: typed, ...waits });
    await own.goto(`${served.url}#/sheets/${surveyId}/waiting`);
    await own.getByText('No sheet is waiting').waitFor();
    const found = (await stationsOf(served.url, surveyId)).filter((one) => one.code === 'OLD1');
    expect(found).toHaveLength(1);
    await old.close();
  }, 60_000);

  interface Question {
    readonly code: string;
    readonly severity: string;
    readonly message: string;
    readonly station: string | null;
    readonly transect: string | null;
    readonly swim: number | null;
    readonly species: string | null;
    readonly value: string | number | null;
    readonly answer: { readonly answer: string } | null;
  }

  /** One that can be answered and is no blank belt; of a code when it is given. */
  async function questionOf(code: string | null = null): Promise<Question> {
    const { problems } = await fromServer<{ problems: Question[] }>('problems');
    return problems.find((one) =>
      code === null
        ? one.severity !== 'stop' && one.answer === null && !/unresolved/.test(one.code)
        : one.code === code,
    )!;
  }

  async function answerAs(
    who: string,
    { code, station, transect, swim, species, value }: Question,
    answer: string,
  ) {
    const requestId = '01a2ffff-0000-7000-8000-00000000001a';
    const place = { code, station, transect, swim, species, value: value === null ? null : String(value) };
    const body = JSON.stringify({ requestId, ...place, answer, who, why: 'looked at the slate' });
    const headers = { 'content-type': 'application/json' };
    const said = await fetch(`${served.url}api/surveys/${surveyId}/answers`, {
      method: 'POST',
      headers,
      body,
    });
    expect(said.status).toBe(200);
  }

  async function sheetOf(stationId: string) {
    return fromServer<{ sheet: { transects: { noneSeen: boolean }[] } }>(`sheets/${stationId}`);
  }

  /** Records of answers about a station, as the history counts them. */
  async function answersWritten(station: string): Promise<number> {
    const { rows } = (await (await fetch(`${served.url}api/history?limit=10000`)).json()) as {
      rows: { table: string; record: Record<string, unknown>; why: string }[];
    };
    return rows.filter((one) => one.table === 'answers' && JSON.stringify(one.record).includes(station))
      .length;
  }

  async function fromServer<Value>(path: string): Promise<Value> {
    return (await fetch(`${served.url}api/surveys/${surveyId}/${path}`)).json() as Promise<Value>;
  }
});

/** Runs in the browser: the store as the first program made it, with one sheet in its queue. */
async function makeOldStore(waits: object): Promise<void> {
  await new Promise<void>((done, failed) => {
    const opening = indexedDB.open('slateline', 1);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore('seen');
      opening.result.createObjectStore('drafts', { keyPath: 'key' });
      opening.result.createObjectStore('queue', { keyPath: 'requestId' }).put(waits);
    };
    opening.onsuccess = () => {
      opening.result.close();
      done();
    };
    opening.onerror = () => failed(opening.error);
  });
}

/**
 * The same words and the same numbers. Two programs of one language need not round exp and log in the same way: this
 * browser and that server differ in the 16th digit, and intervals found by search a little before it. The same code
 * under one of them gives the same digits to the last: src/server/records.test.ts.
 */
function expectSame(found: readonly string[], wanted: readonly string[]): void {
  const cells = (rows: readonly string[]) => rows.map((row) => row.split('\t'));
  expect(cells(found).map((row) => row.map(rounded))).toEqual(cells(wanted).map((row) => row.map(rounded)));
}

function rounded(cell: string): string {
  const value = Number(cell);
  return cell === '' || Number.isNaN(value) ? cell : value.toPrecision(9);
}

function textOfRows(rows: Element[]): string[] {
  return rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '').join('\t'));
}
