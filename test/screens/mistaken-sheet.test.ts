/** A sheet that should not be in the book is withdrawn on its own page, and only when nothing hangs on it. */

import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jpegWithExif } from '../jpeg-with-exif.ts';
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

describe.skipIf(!hasBrowser)('a sheet typed by mistake', () => {
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

  const codes = async () => (await stationsOf(served.url, surveyId)).map(({ code }) => code);
  const withdraw = (page: Page, code: string) =>
    page.getByRole('button', { name: `Withdraw the sheet of ${code}` }).click();

  it('needs a reason and the book, is refused while a photo hangs on it, and is then gone from the list', async () => {
    const station = (await stationsOf(served.url, surveyId))[2]!;
    const said = { requestId: randomUUID(), who: 'Recorder A', name: 'slate.jpg', stationId: station.id };
    const address = `${served.url}api/photos?${new URLSearchParams(said)}`;
    const headers = { 'content-type': 'image/jpeg' };
    await fetch(address, { method: 'POST', body: new Uint8Array(jpegWithExif(null)), headers });
    const context = await personAt(browser, { width: 1366, height: 768 });
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    await page.goto(`${served.url}#/sheets/${surveyId}/${station.id}`);
    await page.getByText('This sheet was typed by mistake?').click();
    await withdraw(page, station.code);
    await page.getByText('Say why: the history keeps it').waitFor();
    await page.getByLabel('Why is it withdrawn?').fill('typed twice');
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

    await served.kill();
    await withdraw(page, station.code);
    await page.getByText('Withdrawing a sheet needs the book, and it does not answer.').waitFor();
    await served.start();
    await withdraw(page, station.code);
    await page.getByText('photos hang on this station (1); nothing was withdrawn').waitFor();
    await page.screenshot({ path: join(shots, 'mistaken-sheet.png'), fullPage: true });
    expect(await codes()).toContain(station.code);

    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    await page.getByText(/^More of the photo/).click();
    await page.getByRole('button', { name: 'Take it off this station' }).click();
    await expect
      .poll(
        async () =>
          (
            (await (await fetch(`${served.url}api/photos?stationId=${station.id}`)).json()) as {
              photos: object[];
            }
          ).photos.length,
      )
      .toBe(0);
    await withdraw(page, station.code);
    await page.waitForURL(`**/sheets/${surveyId}`);
    await expect.poll(() => page.getByRole('link', { name: station.code, exact: true }).count()).toBe(0);
    expect(await codes()).not.toContain(station.code);
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  it('that somebody changed since it was opened is not withdrawn unseen', async () => {
    const station = (await stationsOf(served.url, surveyId))[5]!;
    const context = await personAt(browser, { width: 800, height: 1100 });
    const page = await context.newPage();
    await page.goto(`${served.url}#/sheets/${surveyId}/${station.id}`);
    await page.getByText('This sheet was typed by mistake?').click();
    await page.getByLabel('Why is it withdrawn?').fill('typed twice');
    const address = `${served.url}api/surveys/${surveyId}/sheets/${station.id}`;
    const { revision, sheet } = (await (await fetch(address)).json()) as {
      revision: string;
      sheet: { station: object };
    };
    const changed = { ...sheet, station: { ...sheet.station, note: 'looked at again' } };
    const body = JSON.stringify({
      requestId: randomUUID(),
      base: revision,
      who: 'Recorder B',
      sheet: changed,
    });
    const headers = { 'content-type': 'application/json' };
    expect((await fetch(address, { method: 'PUT', headers, body })).status).toBe(200);
    await withdraw(page, station.code);
    await page.getByText('this sheet is not any more as it was when you looked at it').waitFor();
    expect(await codes()).toContain(station.code);
    await context.close();
  }, 120_000);
});
