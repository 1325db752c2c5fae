/** The frame and the Sheets room as people see them: three sizes, three themes, two languages, and what axe finds. */

import { beforeAll, expect, it } from 'vitest';
import { lookAt } from './look-at.ts';
import { stationsOf } from './screen-helper.ts';
import { laptop, phone, screenTests, tablet } from './screen-tests.ts';
import { openAnew } from './settled.ts';

const sizes = { phone, tablet, laptop } as const;
const looks = [
  { size: 'phone', theme: 'sun', language: 'fr' },
  { size: 'tablet', theme: 'night', language: 'en' },
  { size: 'laptop', theme: 'paper', language: 'en' },
  { size: 'laptop', theme: 'sun', language: 'en' },
  { size: 'phone', theme: 'night', language: 'en' },
  { size: 'tablet', theme: 'paper', language: 'fr' },
] as const;

screenTests('the frame and the Sheets room', { book: 'demo' }, (here) => {
  let stationId: string;
  beforeAll(async () => {
    stationId = (await stationsOf(here.served.url, here.surveyId))[3]!.id;
  });

  const screens = {
    start: () => '',
    plan: () => `#/plan/${here.surveyId}`,
    papers: () => `#/papers/${here.surveyId}`,
    sheets: () => `#/sheets/${here.surveyId}`,
    sheet: () => `#/sheets/${here.surveyId}/${stationId}`,
    'sheet-again': () => `#/sheets/${here.surveyId}/${stationId}/again`,
    waiting: () => `#/sheets/${here.surveyId}/waiting`,
  };

  for (const { size, theme, language } of looks) {
    it(`on a ${size} in ${theme}, ${language}: nothing that axe finds, nothing wider than the screen`, async () => {
      const page = await here.sitDown({ size: sizes[size], theme, language });
      for (const [name, address] of Object.entries(screens)) {
        await openAnew(page, `${here.served.url}${address()}`);
        await lookAt(page, `${name}-${size}-${theme}-${language}`);
      }
    });
  }

  it('the sheet is read back at the pace of the space bar', async () => {
    const page = await here.sitDown();
    await here.openRoom(page, 'sheets', stationId);
    await page.getByRole('button', { name: 'Read back' }).click();
    const now = page.locator('.voice .now');
    // Read off the demo sheet F4: belt 1, lollyfish, its first two lengths.
    for (const words of ['Station F4', 'Belt 1', 'lollyfish', '215, 195']) {
      await expect.poll(() => now.textContent()).toBe(words);
      await page.keyboard.press('Space');
    }
    await page.keyboard.press('Escape');
    await expect.poll(() => now.count()).toBe(0);
  });
});
