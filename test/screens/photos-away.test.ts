/** A photo taken by mistake: taken away on screen, also without the book, and brought back. */

import { createHash, randomUUID } from 'node:crypto';
import type { Page } from '@playwright/test';
import { beforeEach, expect, it } from 'vitest';
import { jpegWithExif } from '../jpeg-with-exif.ts';
import { lookAt } from './look-at.ts';
import { stationsOf } from './screen-helper.ts';
import { opensAlone, screenTests } from './screen-tests.ts';

screenTests('a photo taken by mistake', { book: 'demo' }, (here) => {
  let stationId: string;
  let page: Page;
  let pictures = 0;

  beforeEach(async () => {
    stationId = (await stationsOf(here.served.url, here.surveyId))[3]!.id;
    page = await here.sitDown();
  });

  async function addBesideSheet(name: string): Promise<string> {
    pictures += 1;
    const buffer = Buffer.from(jpegWithExif(null, { blocksWide: 9, blocksHigh: 4 + pictures, grey: 90 }));
    await page.locator('input[data-photos]').setInputFiles([{ name, mimeType: 'image/jpeg', buffer }]);
    await page.getByText(`${name}; the camera wrote no time`).waitFor();
    return createHash('sha256').update(buffer).digest('hex');
  }
  async function openSheet() {
    await here.openRoom(page, 'sheets', stationId);
    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    await page.locator('input[data-photos]').waitFor({ state: 'attached' });
  }
  async function takeAway(why: string) {
    const mistaken = page.getByText('Taken or added by mistake?');
    if (!(await mistaken.isVisible())) await page.getByText(/^More of the photo/).click();
    await mistaken.click();
    await page.getByLabel('Why is it no photo of this survey?').fill(why);
    await page.getByRole('button', { name: 'Take it away', exact: true }).click();
  }
  // biome-ignore lint/suspicious/noExplicitAny: read as any program would
  const photosAt = async (address: string): Promise<any[]> =>
    ((await (await fetch(`${here.served.url}api/${address}`)).json()) as { photos: object[] }).photos;
  const isInBook = async (sha256: string) =>
    (await photosAt('photos')).some((photo) => photo.sha256 === sha256);
  const gone = async (sha256: string) =>
    (await photosAt('photos-away')).find((photo) => photo.sha256 === sha256);

  it('leaves the sheet with a reason, stands among those taken away, and comes back as it was', async () => {
    await openSheet();
    const sha256 = await addBesideSheet('lunch.jpg');
    await expect.poll(() => isInBook(sha256)).toBe(true);
    await takeAway('');
    await page.getByText('Say why: the history keeps it').waitFor();
    await page.getByLabel('Why is it no photo of this survey?').fill('a picture of the lunch');
    await page.getByRole('button', { name: 'Take it away', exact: true }).click();
    await expect.poll(() => isInBook(sha256)).toBe(false);
    await expect.poll(() => page.getByText('lunch.jpg').count()).toBe(0);
    expect(await gone(sha256)).toMatchObject({ who: 'Recorder A', why: 'a picture of the lunch', stationId });

    await here.openRoom(page, 'sheets', 'photos');
    await page.getByText('1 photo was taken away').click();
    await page.getByText('by Recorder A: a picture of the lunch').waitFor();
    await lookAt(page, 'photos-away');
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await expect.poll(() => isInBook(sha256)).toBe(true);
    await expect.poll(() => page.getByText('1 photo was taken away').count()).toBe(0);
    expect((await photosAt('photos')).find((photo) => photo.sha256 === sha256)).toMatchObject({ stationId });
  });

  it('added and taken away while the book does not answer goes there and away again, each once', async () => {
    await openSheet();
    await opensAlone(page);
    await here.served.kill();
    const sha256 = await addBesideSheet('offline.jpg');
    await takeAway('my foot');
    await expect.poll(() => page.getByText('offline.jpg').count()).toBe(0);
    await page.reload();
    await here.openRoom(page, 'sheets', 'waiting');
    await page
      .getByRole('row', { name: /offline\.jpg.*taken away here; the book does not know it yet/ })
      .waitFor();
    await lookAt(page, 'photos-away-waiting');
    await here.served.start();
    await expect.poll(() => gone(sha256)).toMatchObject({ why: 'my foot' });
    await expect.poll(() => page.getByText('offline.jpg').count()).toBe(0);
    const { rows } = (await (await fetch(`${here.served.url}api/history?limit=20`)).json()) as {
      rows: { why: string; record: { photo?: string } }[];
    };
    const acts = rows.filter(({ record }) => record.photo === 'offline.jpg').map(({ why }) => why);
    expect(acts).toEqual(['photo added', 'my foot']);
  });

  it('of which somebody says something meanwhile is not taken away unasked', async () => {
    await openSheet();
    const sha256 = await addBesideSheet('both.jpg');
    await page.getByText('both.jpg; the camera wrote no time; in the book').waitFor();
    // Said elsewhere: this screen still shows what was before.
    const photo = (await photosAt('photos')).find((one) => one.sha256 === sha256);
    const said = { requestId: randomUUID(), base: photo.revision, who: 'Recorder B', note: 'blue slate' };
    const headers = { 'content-type': 'application/json' };
    const address = `${here.served.url}api/photos/${sha256}`;
    await fetch(address, { method: 'PUT', headers, body: JSON.stringify(said) });
    await takeAway('blurred');
    await page.getByRole('link', { name: '1 photo needs you.' }).click();
    const row = page.getByRole('row', { name: /both\.jpg/ });
    expect(await isInBook(sha256)).toBe(true);
    await row.getByRole('button', { name: 'Take it away all the same' }).click();
    await expect.poll(() => gone(sha256)).toMatchObject({ why: 'blurred', note: 'blue slate' });
    await expect.poll(() => row.count()).toBe(0);
  });
});
