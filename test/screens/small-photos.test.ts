/** A list of photos loads what it shows, once; its small pictures stand upright and outlive the page. */

import { createHash } from 'node:crypto';
import type { Page } from '@playwright/test';
import { expect, it } from 'vitest';
import { jpegWithExif } from '../jpeg-with-exif.ts';
import { screenTests } from './screen-tests.ts';
import { settled } from './settled.ts';

const many = 40;

screenTests('a list of photos', { book: 'demo' }, (here) => {
  const openPhotos = (page: Page) => here.openRoom(page, 'sheets', 'photos');
  /** Whole photos that the page asked the book for. */
  function wholePhotosAsked(page: Page): string[] {
    const asked: string[] = [];
    page.on('request', (one) => {
      if (one.method() === 'GET' && /\/api\/photos\/[0-9a-f]{64}$/.test(one.url())) asked.push(one.url());
    });
    return asked;
  }
  const picturesInSight = (page: Page) =>
    page
      .locator('[data-small="made"] img')
      .evaluateAll(
        (images: HTMLImageElement[]) => images.filter((img) => img.complete && img.naturalWidth > 0).length,
      );

  it('in the book loads those in sight, once, and not again after a reload', async () => {
    for (let i = 0; i < many; i += 1) {
      const bytes = new Uint8Array(jpegWithExif(null, { blocksWide: 40, blocksHigh: 30 + i, grey: 40 + i }));
      const said = {
        requestId: crypto.randomUUID(),
        who: 'Recorder A',
        name: `L${i}.jpg`,
        surveyId: here.surveyId,
      };
      const address = `${here.served.url}api/photos?${new URLSearchParams(said)}`;
      const headers = { 'content-type': 'image/jpeg' };
      expect((await fetch(address, { method: 'POST', body: bytes, headers })).status).toBe(200);
    }
    const page = await here.sitDown();
    const asked = wholePhotosAsked(page);
    await openPhotos(page);
    await expect.poll(() => picturesInSight(page)).toBeGreaterThan(2);
    await settled(page);
    // A row is at least as high as its picture: 768 points show no more than 11 of them.
    expect(asked.length).toBeLessThanOrEqual(11);
    expect(new Set(asked).size).toBe(asked.length);

    await page.getByText(`L${many - 1}.jpg`, { exact: true }).scrollIntoViewIfNeeded();
    await expect
      .poll(() =>
        page
          .locator('li', { hasText: `L${many - 1}.jpg` })
          .locator('img')
          .count(),
      )
      .toBe(1);
    await page.reload();
    await expect.poll(() => picturesInSight(page)).toBeGreaterThan(2);
    await settled(page);
    expect(new Set(asked).size).toBe(asked.length);
  });

  it('added here asks the book for no picture, and stands upright however the camera was held', async () => {
    const page = await here.sitDown();
    const asked = wholePhotosAsked(page);
    await openPhotos(page);
    await page.locator('input[data-photos]').waitFor({ state: 'attached' });
    // Every way to hold a camera that EXIF knows; 5 to 8 lie on their side (EXIF 2.32, tag 274).
    const held = Array.from({ length: 8 }, (_, i) => i + 1);
    const files = held.map((orientation) => {
      const buffer = Buffer.from(jpegWithExif({ orientation }, { blocksWide: 60, blocksHigh: 40, grey: 99 }));
      return { name: `A${orientation}.jpg`, mimeType: 'image/jpeg', buffer };
    });
    await page.locator('input[data-photos]').setInputFiles(files);
    await page.getByText('8 photos added.').waitFor();
    const inBook = async () => {
      const { photos } = (await (await fetch(`${here.served.url}api/photos`)).json()) as {
        photos: { sha256: string }[];
      };
      const known = new Set(photos.map(({ sha256 }) => sha256));
      return files.every(({ buffer }) => known.has(createHash('sha256').update(buffer).digest('hex')));
    };
    await expect.poll(inBook).toBe(true);
    await page.reload();
    for (const orientation of held) {
      const row = page.locator('li', { hasText: `A${orientation}.jpg` });
      await row.scrollIntoViewIfNeeded();
      const image = row.locator('[data-small="made"] img');
      const size = () =>
        image.evaluate(({ naturalWidth, naturalHeight }: HTMLImageElement) => [naturalWidth, naturalHeight]);
      // 480 x 320 as stored: 207 x 138 lying (138/320), 184 x 276 on its side (184/320).
      await expect.poll(size).toEqual(orientation < 5 ? [207, 138] : [184, 276]);
    }
    const own = files.map(({ buffer }) => createHash('sha256').update(buffer).digest('hex'));
    expect(asked.filter((url) => own.some((sha256) => url.endsWith(sha256)))).toEqual([]);
  });
});
