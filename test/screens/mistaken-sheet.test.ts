/** A sheet that should not be in the book is withdrawn on its own page, and only when nothing hangs on it. */

import { randomUUID } from 'node:crypto';
import type { Page } from '@playwright/test';
import { expect, it } from 'vitest';
import { jpegWithExif } from '../jpeg-with-exif.ts';
import { lookAt } from './look-at.ts';
import { stationsOf } from './screen-helper.ts';
import { screenTests, tablet } from './screen-tests.ts';

screenTests('a sheet typed by mistake', { book: 'demo' }, (here) => {
  const codes = async () => (await stationsOf(here.served.url, here.surveyId)).map(({ code }) => code);
  const photosOn = async (stationId: string) => {
    const answer = await fetch(`${here.served.url}api/photos?stationId=${stationId}`);
    return ((await answer.json()) as { photos: object[] }).photos;
  };
  const withdraw = (page: Page, code: string) =>
    page.getByRole('button', { name: `Withdraw the sheet of ${code}` }).click();

  it('needs a reason and the book, is refused while a photo hangs on it, and is then gone from the list', async () => {
    const station = (await stationsOf(here.served.url, here.surveyId))[2]!;
    const said = { requestId: randomUUID(), who: 'Recorder A', name: 'slate.jpg', stationId: station.id };
    const address = `${here.served.url}api/photos?${new URLSearchParams(said)}`;
    const headers = { 'content-type': 'image/jpeg' };
    await fetch(address, { method: 'POST', body: new Uint8Array(jpegWithExif(null)), headers });
    const page = await here.sitDown();
    await here.openRoom(page, 'sheets', station.id);
    await page.getByText('This sheet was typed by mistake?').click();
    await withdraw(page, station.code);
    await page.getByText('Say why: the history keeps it').waitFor();
    await page.getByLabel('Why is it withdrawn?').fill('typed twice');

    await here.served.kill();
    await withdraw(page, station.code);
    await page.getByText('Withdrawing a sheet needs the book, and it does not answer.').waitFor();
    await here.served.start();
    await withdraw(page, station.code);
    await page.getByText('photos hang on this station (1); nothing was withdrawn').waitFor();
    await lookAt(page, 'mistaken-sheet');
    expect(await codes()).toContain(station.code);

    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    await page.getByText(/^More of the photo/).click();
    await page.getByRole('button', { name: 'Take it off this station' }).click();
    await expect.poll(() => photosOn(station.id)).toEqual([]);
    await withdraw(page, station.code);
    await page.waitForURL(`**/sheets/${here.surveyId}`);
    await expect.poll(() => page.getByRole('link', { name: station.code, exact: true }).count()).toBe(0);
    expect(await codes()).not.toContain(station.code);
  });

  it('that somebody changed since it was opened is not withdrawn unseen', async () => {
    const station = (await stationsOf(here.served.url, here.surveyId))[5]!;
    const page = await here.sitDown({ size: tablet });
    await here.openRoom(page, 'sheets', station.id);
    await page.getByText('This sheet was typed by mistake?').click();
    await page.getByLabel('Why is it withdrawn?').fill('typed twice');
    const address = `${here.served.url}api/surveys/${here.surveyId}/sheets/${station.id}`;
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
  });
});
