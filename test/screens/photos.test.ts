/** Photos of slates in a real browser: read, kept, sent once, matched to their station, looked at. */

import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { beforeAll, expect, it } from 'vitest';
import { type CameraWrote, jpegWithExif } from '../jpeg-with-exif.ts';
import { lookAt } from './look-at.ts';
import { nameRecorder, shots, stationsOf } from './screen-helper.ts';
import { laptop, opensAlone, phone, screenTests, tablet } from './screen-tests.ts';
import { settled } from './settled.ts';

const heic = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic'), Buffer.alloc(64, 7)]);
let pictures = 0;
/** Each of another shape, so that each has its own checksum. */
function slatePhoto(wrote: CameraWrote | null = null, grey = 60) {
  pictures += 1;
  const bytes = Buffer.from(jpegWithExif(wrote, { blocksWide: 8, blocksHigh: 4 + pictures, grey }));
  return {
    buffer: bytes,
    sha256: createHash('sha256').update(bytes).digest('hex'),
    height: 8 * (4 + pictures),
  };
}
const asFile = (name: string, buffer: Buffer, mimeType = 'image/jpeg') => ({ name, mimeType, buffer });

screenTests('photos of slates', { book: 'demo' }, (here) => {
  let station: {
    readonly id: string;
    readonly code: string;
    readonly date: string;
    readonly timeStart: string;
  };
  let home: string;

  beforeAll(async () => {
    station = (await stationsOf(here.served.url, here.surveyId))[3] as unknown as typeof station;
    home = mkdtempSync(join(tmpdir(), 'slateline-photos-'));
    await addPictures();
  });

  async function openSheet(page: Page, { id, code }: Pick<typeof station, 'id' | 'code'> = station) {
    await here.openRoom(page, 'sheets', id);
    // Not the panel of the sheet that was open before.
    await expect.poll(() => page.locator('.code').inputValue()).toBe(code);
    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    await page.locator('input[data-photos]').waitFor({ state: 'attached' });
  }

  /** Two pictures with something to see on them, one beside the sheet and one without a station. */
  async function addPictures() {
    const docs = join(import.meta.dirname, '../../docs');
    for (const [i, name] of ['sheet.png', 'report.png'].entries()) {
      const query = new URLSearchParams({
        requestId: `01a2ffff-0000-7000-8000-00000000001${i}`,
        who: 'Recorder A',
        name,
        surveyId: here.surveyId,
        takenAt: `${station.date}T06:3${i}`,
        ...(i === 0 ? { stationId: station.id } : {}),
      });
      const body = new Uint8Array(readFileSync(join(docs, name)));
      const headers = { 'content-type': 'image/png' };
      const answer = await fetch(`${here.served.url}api/photos?${query}`, { method: 'POST', body, headers });
      if (!answer.ok) throw new Error(await answer.text());
    }
  }

  async function ownBrowser(profile: string) {
    const owned = await here.ownBrowser(profile);
    await nameRecorder(owned.context);
    return owned;
  }

  const add = (page: Page, ...files: ReturnType<typeof asFile>[]) =>
    page.locator('input[data-photos]').setInputFiles(files);

  // biome-ignore lint/suspicious/noExplicitAny: read as any program would
  const photosInBook = async (): Promise<any[]> =>
    ((await (await fetch(`${here.served.url}api/photos`)).json()) as { photos: object[] }).photos;
  const inBook = async (sha256: string) => (await photosInBook()).find((one) => one.sha256 === sha256);
  const untilInBook = (sha256: string) =>
    expect.poll(() => inBook(sha256).then((one) => one !== undefined)).toBe(true);

  /** Acts on photos by their names, as the history of the book tells them. */
  async function actsOnPhotos(): Promise<Map<string, string[]>> {
    const { rows } = (await (await fetch(`${here.served.url}api/history?limit=500`)).json()) as {
      rows: { why: string; record: { photo?: string } }[];
    };
    const acts = new Map<string, string[]>();
    for (const { why, record } of rows) {
      if (record.photo !== undefined) acts.set(record.photo, [...(acts.get(record.photo) ?? []), why]);
    }
    return acts;
  }
  const actsOn = async (name: string) => (await actsOnPhotos()).get(name);

  it('stand beside the sheet upright, at the time on the clock of the camera, wherever the laptop is', async () => {
    const page = await here.sitDown({ device: { timezoneId: 'America/New_York', locale: 'en' } });
    await openSheet(page);
    const wrote = { dateTimeOriginal: '2026:09:30 16:20:05', offsetTimeOriginal: '+12:00', orientation: 6 };
    const photo = slatePhoto(wrote);
    await add(page, asFile('IMG_1.jpg', photo.buffer));
    await page
      .getByText('IMG_1.jpg; taken 2026-09-30 16:20, by the clock of the camera (UTC +12:00); in the book')
      .waitFor();
    // Held on its side: 64 points wide as stored, 64 high as shown.
    const size = await page
      .locator('.frame img')
      .evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]);
    expect(size).toEqual([photo.height, 64]);
    expect(await inBook(photo.sha256)).toMatchObject({
      takenAt: '2026-09-30T16:20:05',
      clockOffset: '+12:00',
      orientation: 6,
    });
    expect(existsSync(join(here.served.book, 'photos', `${photo.sha256}.jpg`))).toBe(true);
  });

  it('are made larger, turned, moved and changed by the keyboard, also while the sheet is typed', async () => {
    const page = await here.sitDown();
    await openSheet(page);
    await add(page, asFile('A1.jpg', slatePhoto().buffer), asFile('A2.jpg', slatePhoto().buffer));
    await page.getByText('A2.jpg; the camera wrote no time; in the book').waitFor();
    const frame = page.locator('.frame');
    const widths = () => frame.evaluate((one) => [one.scrollWidth, one.clientWidth] as const);
    await frame.focus();
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await expect.poll(async () => (await widths())[0] / (await widths())[1]).toBeGreaterThan(1.9);
    await page.keyboard.press('r');
    // Turned, its paper has the shape it then has: nothing is cut off and nothing is empty.
    const shape = () =>
      page.locator('.paper').evaluate((paper) => {
        const [p, i] = [paper.getBoundingClientRect(), paper.querySelector('img')!.getBoundingClientRect()];
        return [p.width / i.width, p.height / i.height, p.height / p.width].map(
          (one) => Math.round(one * 50) / 50,
        );
      });
    await expect.poll(async () => (await shape()).slice(0, 2)).toEqual([1, 1]);
    expect((await shape())[2]).toBeGreaterThan(0.5);
    await page.keyboard.press('0');
    await expect.poll(async () => (await widths())[0] - (await widths())[1]).toBeLessThan(2);
    await page.keyboard.press('p');
    await page.getByText(/^A1\.jpg;/).waitFor();
    // From the cell in which somebody types: the letters go to the sheet, with Alt to the photo.
    const cell = page.locator('[data-cell="station/site"]');
    const before = await cell.inputValue();
    await cell.focus();
    const name = await page.locator('.said').textContent();
    await page.keyboard.press('Alt+n');
    await expect.poll(() => page.locator('.said').textContent()).not.toBe(name);
    await page.keyboard.press('Alt+=');
    await expect.poll(async () => (await widths())[0] / (await widths())[1]).toBeGreaterThan(1.3);
    expect(await cell.inputValue()).toBe(before);
  });

  it('as HEIC are kept and get a sentence, whatever they are called; damaged ones and what is no picture too', async () => {
    const page = await here.sitDown();
    await openSheet(page);
    await add(page, asFile('IMG_9.JPG', heic));
    await page.getByText('This browser cannot show HEIC pictures').waitFor();
    const sha256 = createHash('sha256').update(heic).digest('hex');
    await untilInBook(sha256);
    expect(await inBook(sha256)).toMatchObject({ type: 'image/heic', bytes: heic.length });
    expect(existsSync(join(here.served.book, 'photos', `${sha256}.heic`))).toBe(true);
    await add(
      page,
      asFile('cut.jpg', slatePhoto().buffer.subarray(0, 60)),
      asFile('list.txt', Buffer.from('no picture')),
    );
    await page.getByText('This picture cannot be shown').waitFor();
    await page.getByText('1 file is no picture and was left out: list.txt').waitFor();
  });

  it('taken while the book is gone wait on this laptop, through a reload and a killed browser, and go once', async () => {
    const profile = join(home, 'profile');
    const alone = (await stationsOf(here.served.url, here.surveyId))[7]!;
    const own = await ownBrowser(profile);
    let { page } = own;
    await openSheet(page, alone);
    await settled(page);
    await opensAlone(page);
    await here.served.kill();
    const photo = slatePhoto({ dateTimeOriginal: '2026:09:30 17:05:00' });
    await add(page, asFile('offline.jpg', photo.buffer));
    await page
      .getByText(
        'offline.jpg; taken 2026-09-30 17:05, by the clock of the camera; on this laptop, waits for the book',
      )
      .waitFor();
    await page.getByText('1 photo is saved on this laptop, waiting for the book.').waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    await page.getByText('offline.jpg; taken').waitFor();
    await own.kill();
    ({ page } = await ownBrowser(profile));
    await here.openRoom(page, 'sheets', alone.id);
    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    await page.getByText('offline.jpg; taken').waitFor();
    // Still to be looked at: larger and turned, with the server gone.
    const image = page.locator('.frame img');
    await expect.poll(() => image.evaluate((img: HTMLImageElement) => img.naturalHeight)).toBe(photo.height);
    await page.getByRole('button', { name: 'Larger' }).click();
    await page.getByRole('button', { name: 'Turn' }).click();
    expect(await image.evaluate((img) => getComputedStyle(img).rotate)).toBe('90deg');
    await page.getByRole('link', { name: '1 photo is saved on this laptop' }).click();
    await page.getByRole('row', { name: /offline\.jpg.*waits for the book/ }).waitFor();
    await page.screenshot({ path: join(shots, 'photos-waiting.png'), fullPage: true });
    await here.served.start();
    await untilInBook(photo.sha256);
    await expect.poll(() => page.getByText('offline.jpg').count()).toBe(0);
    expect(await inBook(photo.sha256)).toMatchObject({ stationId: alone.id, matchedBy: 'by hand' });
    expect(await actsOn('offline.jpg')).toEqual(['photo added']);
  });

  it('are neither lost nor doubled by a server that is killed while it takes them', async () => {
    const page = await here.sitDown();
    await here.openRoom(page, 'sheets', 'photos');
    await page.locator('input[data-photos]').waitFor({ state: 'attached' });
    const taken = Array.from({ length: 24 }, (_, i) => {
      const { buffer } = slatePhoto();
      // As large as a small photo, so that many are on their way when the server dies.
      const bytes = Buffer.concat([buffer, Buffer.alloc(400_000, i)]);
      return { name: `K${i}.jpg`, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
    });
    await add(page, ...taken.map(({ name, bytes }) => asFile(name, bytes)));
    await expect.poll(() => photosInBook().then((all) => all.some(({ name }) => /^K/.test(name)))).toBe(true);
    await here.served.kill();
    await page.getByText('24 photos added.').waitFor();
    await here.served.start();
    const own = async () => (await photosInBook()).filter(({ name }) => /^K/.test(name));
    await expect.poll(async () => (await own()).length).toBe(24);
    const checksums = (await own()).map(({ sha256 }) => sha256);
    expect(new Set(checksums)).toEqual(new Set(taken.map(({ sha256 }) => sha256)));
    const acts = await actsOnPhotos();
    for (const { name } of taken) expect([name, acts.get(name)]).toEqual([name, ['photo added']]);
  });

  it('of a sheet that nobody saved yet are in the book at once, and find their station when it is saved', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    await page.keyboard.type('PH1');
    await page.getByRole('button', { name: 'Photo of the slate' }).click();
    const photo = slatePhoto();
    await add(page, asFile('new-sheet.jpg', photo.buffer));
    await page.getByText('new-sheet.jpg; the camera wrote no time').waitFor();
    await untilInBook(photo.sha256);
    expect((await inBook(photo.sha256)).stationId).toBeNull();
    await page.getByRole('button', { name: /^Save/ }).click();
    await expect.poll(async () => (await inBook(photo.sha256)).stationId).not.toBeNull();
    const saved = (await stationsOf(here.served.url, here.surveyId)).find(({ code }) => code === 'PH1');
    expect((await inBook(photo.sha256)).stationId).toBe(saved!.id);
    expect(await actsOn('new-sheet.jpg')).toEqual(['photo added', 'photo matched']);
  });

  it('from a dropped folder and from a chosen one come with everything below it, and nothing that is no picture', async () => {
    const card = join(home, 'CARD');
    mkdirSync(join(card, 'DAY1', 'SLATES'), { recursive: true });
    const [one, two, three] = [slatePhoto(), slatePhoto(), slatePhoto()] as const;
    writeFileSync(join(card, 'DAY1', 'P1.JPG'), one.buffer);
    writeFileSync(join(card, 'DAY1', 'SLATES', 'P2.JPG'), two.buffer);
    writeFileSync(join(card, 'INDEX.DAT'), 'not a picture');
    const page = await here.sitDown();
    await here.openRoom(page, 'sheets', 'photos');
    await page.getByRole('heading', { name: 'Photos without a station' }).waitFor();
    await dropFolder(page, card);
    await page.getByText('2 photos added.').waitFor();
    await page.getByText('1 file is no picture and was left out: INDEX.DAT').waitFor();
    writeFileSync(join(card, 'P3.JPG'), three.buffer);
    await page.locator('input[data-folder]').setInputFiles(card);
    await page.getByText('3 photos added.').waitFor();
    for (const { sha256 } of [one, two, three]) await untilInBook(sha256);
    // The two that came twice are still one each.
    expect(await actsOn('P1.JPG')).toEqual(['photo added']);
  });

  it('from the camera of a phone are taken from the sheet itself', async () => {
    const page = await here.sitDown({ size: phone, device: { hasTouch: true, isMobile: true } });
    await openSheet(page);
    const camera = page.locator('label.camera');
    expect(await camera.isVisible()).toBe(true);
    expect(await camera.locator('input').getAttribute('capture')).toBe('environment');
    await camera.locator('input').setInputFiles([asFile('camera.jpg', slatePhoto().buffer)]);
    await page.getByText('camera.jpg; the camera wrote no time; in the book').waitFor();
  });

  it('are matched by hand: the stations of that day are suggested, the nearest first, and taken off again', async () => {
    const page = await here.sitDown();
    const [year, month, day] = station.date.split('-');
    const photo = slatePhoto({ dateTimeOriginal: `${year}:${month}:${day} ${station.timeStart}:30` });
    await here.openRoom(page, 'sheets', 'photos');
    await page.locator('input[data-photos]').waitFor({ state: 'attached' });
    await add(page, asFile('loose.jpg', photo.buffer));
    const row = page.getByRole('listitem').filter({ hasText: 'loose.jpg' });
    await row.waitFor();
    await untilInBook(photo.sha256);
    // Arrow keys in the list of stations match nothing on their way.
    await row.getByRole('combobox').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await row.getByRole('button', { name: 'It belongs there' }).waitFor();
    expect((await inBook(photo.sha256)).stationId).toBeNull();
    await row.getByRole('button', { name: 'Look at loose.jpg' }).click();
    await page.screenshot({ path: join(shots, 'photos-loose.png'), fullPage: true });
    await row.getByRole('button', { name: `${station.code}, during the visit` }).click();
    await expect.poll(async () => (await inBook(photo.sha256)).stationId).toBe(station.id);
    await expect.poll(() => row.count()).toBe(0);
    await openSheet(page);
    await page.locator('aside summary').first().click();
    await page.getByRole('button', { name: /^Look at loose\.jpg/ }).click();
    await page.getByRole('button', { name: 'Take it off this station' }).click();
    await expect.poll(async () => (await inBook(photo.sha256)).stationId).toBeNull();
    // Now among those without a station beside the sheet, and back again with one press.
    await page.getByText(/^Photos without a station/).waitFor();
    await page.getByRole('button', { name: 'Belongs to this station' }).click();
    await expect.poll(async () => (await inBook(photo.sha256)).stationId).toBe(station.id);
    expect(await actsOn('loose.jpg')).toEqual([
      'photo added',
      'photo matched',
      'photo taken off its station',
      'photo matched',
    ]);
  });

  it('matched by two people to two stations: the second sees what the book says, and decides', async () => {
    const other = (await stationsOf(here.served.url, here.surveyId))[5]!;
    const page = await here.sitDown();
    const photo = slatePhoto();
    await openSheet(page);
    await add(page, asFile('both.jpg', photo.buffer));
    await untilInBook(photo.sha256);
    // The same picture again, beside another sheet.
    await openSheet(page, other);
    await add(page, asFile('both.jpg', photo.buffer));
    await page.getByRole('link', { name: '1 photo needs you.' }).click();
    const row = page.getByRole('row', { name: /both\.jpg/ });
    await row.getByText(`The book says: ${station.code}.`).waitFor();
    await page.screenshot({ path: join(shots, 'photos-conflict.png'), fullPage: true });
    expect((await inBook(photo.sha256)).stationId).toBe(station.id);
    await row.getByRole('button', { name: `${other.code} all the same` }).click();
    await expect.poll(async () => (await inBook(photo.sha256)).stationId).toBe(other.id);
    await expect.poll(() => row.count()).toBe(0);
  });

  it('for which the browser has no room are said so by name; those that wait stay, and the book takes them when it answers', async () => {
    const page = await here.sitDown();
    // Before the first write: Chromium asks for the room that is left then, and counts by itself from there.
    const tools = await page.context().newCDPSession(page);
    const origin = here.served.url.replace(/\/$/, '');
    await tools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 10_000_000 });
    await openSheet(page);
    await settled(page);
    await here.served.kill();
    const kept = slatePhoto();
    await add(page, asFile('kept.jpg', kept.buffer));
    await page.getByText('kept.jpg; the camera wrote no time; on this laptop').waitFor();
    const full = slatePhoto();
    // Fourteen megabytes behind the end of the picture, which no reader of JPEG looks at.
    full.buffer = Buffer.concat([full.buffer, Buffer.alloc(14_000_000, pictures)]);
    full.sha256 = createHash('sha256').update(full.buffer).digest('hex');
    await add(page, asFile('full.jpg', full.buffer));
    await page
      .getByText('This browser has no room left, and the book does not answer: full.jpg is not kept.')
      .waitFor();
    await page.screenshot({ path: join(shots, 'photos-no-room.png'), fullPage: true });
    await page.getByText('1 photo is saved on this laptop, waiting for the book.').waitFor();
    await here.served.start();
    await untilInBook(kept.sha256);
    expect(await inBook(full.sha256)).toBeUndefined();
    // Still no room in the browser: it goes straight into the book.
    await add(page, asFile('full.jpg', full.buffer));
    await untilInBook(full.sha256);
  });

  it('find a browser that kept sheets for an earlier version of the screens: its sheets are still there', async () => {
    const page = await here.sitDown();
    await page.goto(`${here.served.url}manifest.webmanifest`);
    await page.evaluate(
      () =>
        new Promise<void>((done, failed) => {
          const opening = indexedDB.open('slateline', 1);
          opening.onupgradeneeded = () => {
            const made = opening.result;
            made.createObjectStore('seen').put('kept', 'by version 1');
            made.createObjectStore('drafts', { keyPath: 'key' });
            made.createObjectStore('queue', { keyPath: 'requestId' });
          };
          opening.onsuccess = () => {
            opening.result.close();
            done();
          };
          opening.onerror = () => failed(opening.error);
        }),
    );
    await openSheet(page);
    await add(page, asFile('after.jpg', slatePhoto().buffer));
    await page.getByText('after.jpg; the camera wrote no time; in the book').waitFor();
    const found = await page.evaluate(
      () =>
        new Promise<unknown>((done) => {
          const opening = indexedDB.open('slateline');
          opening.onsuccess = () => {
            const { result: book } = opening;
            const reading = book.transaction('seen').objectStore('seen').get('by version 1');
            reading.onsuccess = () => done([reading.result, [...book.objectStoreNames].includes('photos')]);
          };
        }),
    );
    expect(found).toEqual(['kept', true]);
  });

  const sizes = { phone, tablet, laptop };
  it.each([
    ['phone', 'sun', 'fr'],
    ['tablet', 'night', 'en'],
    ['laptop', 'paper', 'fr'],
    ['laptop', 'sun', 'en'],
  ] as const)(
    'on a %s in %s, %s: nothing that axe finds, nothing wider than the screen',
    async (size, theme, language) => {
      const page = await here.sitDown({ size: sizes[size], theme, language });
      const look = (name: string) => lookAt(page, `${name}-${size}-${theme}-${language}`);
      await here.openRoom(page, 'sheets', 'photos');
      await page.locator('li button').first().click();
      await look('photos-page');
      await here.openRoom(page, 'sheets', station.id);
      await page.locator('.tools button').first().click();
      await page.locator('.frame img').waitFor();
      await look('photos-panel');
      await page.locator('aside summary').first().click();
      const more = page.locator('aside details details summary');
      await more.first().click();
      await more.nth(1).click();
      await look('photos-panel-open');
    },
  );
});

/** As the system does it when a folder is let go over the page. */
async function dropFolder(page: Page, folder: string): Promise<void> {
  const box = (await page.locator('.area').boundingBox())!;
  const at = { x: box.x + 20, y: box.y + 20 };
  const data = { items: [], files: [folder], dragOperationsMask: 1 };
  const tools = await page.context().newCDPSession(page);
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const) {
    await tools.send('Input.dispatchDragEvent', { type, ...at, data });
  }
}
