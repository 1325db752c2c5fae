/** What every file of browser tests begins with: a server on a book of its own, a browser, and people in front of it. */

import { randomUUID } from 'node:crypto';
import type { Browser, BrowserContextOptions, Page } from '@playwright/test';
import { afterAll, afterEach, beforeAll, describe, expect } from 'vitest';
import { type OwnedBrowser, startOwnedBrowser } from './owned-browser.ts';
import {
  complaintsOf,
  hasBrowser,
  lastSurvey,
  openBrowser,
  personAt,
  type Served,
  type Settings,
  serveDemo,
  serveEmpty,
  stationsOf,
} from './screen-helper.ts';
import { watchRequests } from './settled.ts';

export const phone = { width: 360, height: 740 };
export const tablet = { width: 800, height: 1100 };
export const laptop = { width: 1366, height: 768 };

interface Seat extends Settings {
  readonly size?: typeof laptop;
  /** What else is unlike a laptop. */
  readonly device?: BrowserContextOptions;
}

export interface Place {
  readonly served: Served;
  /** The latest survey of the demo book. */
  readonly surveyId: string;
  /** A person of their own in front of a page. After the test they are gone, and it fails if the browser complained. */
  sitDown(seat?: Seat): Promise<Page>;
  /** A browser that can be killed as a dead battery would; its profile is a folder that outlives it, not the test. */
  ownBrowser(profile: string): Promise<OwnedBrowser>;
  /** As for pages of `sitDown`: complaints fail the test. */
  listenTo(page: Page): void;
  /** A room of the survey, or something in it, when its heading is there. */
  openRoom(page: Page, room: string, ...rest: readonly string[]): Promise<void>;
  /** From the list of sheets into the first cell of a new one. */
  newSheet(page: Page): Promise<void>;
  /** What the server says about the survey at this address below it. */
  ask<Value>(path: string): Promise<Value>;
  stationsCalled(code: string): ReturnType<typeof stationsOf>;
  /** Waits until the sheets of that station code in the book are these. */
  untilInBook(code: string, wanted?: readonly object[]): Promise<{ readonly id: string }>;
}

/** Skipped where there is no browser. A test that left the server dead leaves the others a live one. */
export function screenTests(
  name: string,
  { book }: { readonly book: 'demo' | 'empty' },
  tests: (here: Place) => void,
): void {
  describe.skipIf(!hasBrowser)(name, () => {
    let served: Served;
    let browser: Browser;
    let surveyId = '';
    const leaving: (() => Promise<void>)[] = [];
    const complaints: (readonly string[])[] = [];

    beforeAll(async () => {
      served = book === 'demo' ? await serveDemo() : await serveEmpty();
      browser = await openBrowser();
      if (book === 'demo') surveyId = await lastSurvey(served.url);
    });
    afterEach(async () => {
      const said = complaints.splice(0).flat();
      for (const leave of leaving.splice(0)) await leave();
      if (!served.isRunning) await served.start();
      expect(said, 'what the browser complained about').toEqual([]);
    });
    afterAll(async () => {
      await browser?.close();
      await served?.remove();
    });

    const listenTo = (page: Page) => {
      watchRequests(page);
      complaints.push(complaintsOf(page));
    };
    tests({
      get served() {
        return served;
      },
      get surveyId() {
        return surveyId;
      },
      listenTo,
      async sitDown({ size = laptop, device = {}, ...settings } = {}) {
        const context = await personAt(browser, size, settings, device);
        leaving.push(() => context.close());
        const page = await context.newPage();
        listenTo(page);
        return page;
      },
      async ownBrowser(profile) {
        const owned = await startOwnedBrowser(profile);
        leaving.push(owned.kill);
        listenTo(owned.page);
        return owned;
      },
      ...waysAbout(() => ({ url: served.url, surveyId })),
    });
  });
}

type Ways = Pick<Place, 'openRoom' | 'newSheet' | 'ask' | 'stationsCalled' | 'untilInBook'>;

function waysAbout(where: () => { readonly url: string; readonly surveyId: string }): Ways {
  const openRoom: Ways['openRoom'] = async (page, room, ...rest) => {
    const { url, surveyId } = where();
    await page.goto(`${url}#/${[room, surveyId, ...rest].map(encodeURIComponent).join('/')}`);
    await page.locator('#page h1').waitFor();
  };
  const stationsCalled: Ways['stationsCalled'] = async (code) => {
    const { url, surveyId } = where();
    return (await stationsOf(url, surveyId)).filter((one) => one.code === code);
  };
  return {
    openRoom,
    stationsCalled,
    async newSheet(page) {
      await openRoom(page, 'sheets');
      await page.getByRole('link', { name: 'Type a new sheet' }).click();
      await page.locator('.code:focus').waitFor();
    },
    async ask<Value>(path: string) {
      const { url, surveyId } = where();
      return (await fetch(`${url}api/surveys/${surveyId}/${path}`)).json() as Promise<Value>;
    },
    async untilInBook(code, wanted = [{ code }]) {
      await expect.poll(() => stationsCalled(code)).toMatchObject(wanted);
      return (await stationsCalled(code))[0]!;
    },
  };
}

/** Another program writes into the survey; the test fails unless it could. */
export async function sendAs(
  { served, surveyId }: Pick<Place, 'served' | 'surveyId'>,
  who: string,
  { path, body, method = 'PUT' }: { path: string; body: object; method?: 'PUT' | 'POST' },
): Promise<void> {
  const answer = await fetch(`${served.url}api/surveys/${surveyId}/${path}`, {
    method,
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ requestId: randomUUID(), who, ...body }),
  });
  expect(answer.status, await answer.text()).toBe(200);
}

/** Until this browser can open the screens with the server gone. */
export async function opensAlone(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready);
}
