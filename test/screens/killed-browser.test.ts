/** A laptop whose battery dies in the middle of the evening, with the server gone as well: no sheet is lost or doubled. */

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, it } from 'vitest';
import { keptVersion, untilKept } from './kept-in-browser.ts';
import { shots } from './screen-helper.ts';
import { opensAlone, screenTests } from './screen-tests.ts';
import { inventSlate, typeBelts, typeStation } from './typist.ts';

screenTests('a browser killed in the middle of the evening', { book: 'demo' }, (here) => {
  it('opens again without the server: the sheet waits, the half-typed one is there, and each goes into the book once', async () => {
    const profile = mkdtempSync(join(tmpdir(), 'slateline-profile-'));
    const first = await here.ownBrowser(profile);
    const { page } = first;
    await here.openRoom(page, 'sheets');
    await page.getByLabel('Who types').fill('Recorder A');
    await opensAlone(page);
    await here.newSheet(page);
    // A moment after the book answered, what the numbers rest on is kept as well.
    await expect.poll(() => keptVersion(page, here.surveyId)).toBeTruthy();
    await here.served.kill();
    const slate = inventSlate('DEAD1', 3);
    await typeStation(page, slate);
    await typeBelts(page, slate);
    await page.keyboard.press('Enter');
    await page.getByText('Sheet DEAD1 is saved on this laptop').waitFor();
    const half = inventSlate('DEAD2', 4);
    await page.locator('.code:focus').waitFor();
    await typeStation(page, half);
    await typeBelts(page, { ...half, belts: half.belts.slice(0, 2) });
    await page.getByText('kept on this laptop').waitFor();
    const typed = await page.locator('.lengths').evaluateAll(writtenIn);
    // What the screen calls kept is what it wrote last; the letter after it may still be on its way.
    const last = half.belts[1]!.at(-1)!.lengthsMm.join(' ');
    await untilKept(page, { name: 'drafts', key: stationIdOf(page) }, last);
    await first.kill();

    const { page: again } = await here.ownBrowser(profile);
    await here.openRoom(again, 'sheets');
    await again.getByText('1 sheet is saved on this laptop, waiting for the book').first().waitFor();
    // What the numbers rest on survived as well.
    await here.openRoom(again, 'answers');
    await again.getByText(/^Computed on this laptop .* and 1 sheet that waits\.$/).waitFor();
    await here.openRoom(again, 'sheets', 'waiting');
    await again.getByRole('row', { name: /^DEAD1 / }).waitFor();
    await again.screenshot({ path: join(shots, 'killed-browser-waiting.png'), fullPage: true });
    await here.openRoom(again, 'sheets');
    await again.getByRole('link', { name: /DEAD2/ }).first().click();
    await expect.poll(() => again.locator('.code').inputValue()).toBe('DEAD2');
    await expect.poll(() => again.locator('.lengths').evaluateAll(writtenIn)).toEqual(typed);
    // The browser's own small settings are written late and may have died with it; they are no data.
    await again.getByLabel('Who types').fill('Recorder A');
    await again.locator('.code').focus();
    await again.keyboard.press('Control+s');
    await again.getByText('Sheet DEAD2 is saved on this laptop').waitFor();

    await here.served.start();
    await here.openRoom(again, 'sheets', 'waiting');
    await again.getByText('No sheet is waiting').waitFor();
    // By hand: six belts of 20 lengths, and two belts of 20.
    await here.untilInBook('DEAD1', [{ animals: 120, measured: 120 }]);
    await here.untilInBook('DEAD2', [{ animals: 40, measured: 40 }]);
  });
});

function writtenIn(cells: (Element & { value?: string })[]): string[] {
  return cells.map((cell) => cell.value ?? '').filter((text) => text !== '');
}

/** `#/sheets/SURVEY/STATION/new` */
function stationIdOf(page: Page): string {
  return new URL(page.url()).hash.split('/')[3]!;
}
