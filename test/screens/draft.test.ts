/** A sheet that is not saved yet: what a reload and a browser that dies leave of it. */

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, it } from 'vitest';
import { untilKept } from './kept-in-browser.ts';
import { screenTests } from './screen-tests.ts';

screenTests('a sheet that is being typed', { book: 'demo' }, (here) => {
  async function typeOn(page: Page, lengths: string): Promise<void> {
    await page.locator('.species').first().focus();
    await page.keyboard.type('sand');
    await page.keyboard.press('Enter');
    await page.keyboard.type(lengths);
  }

  it('has every letter after a reload, also when it comes upon the last key', async () => {
    const page = await here.sitDown();
    for (let i = 1; i <= 5; i += 1) {
      const id = `0199a000-0000-7000-8000-00000000010${i}`;
      await here.openRoom(page, 'sheets', id, 'new');
      await page.locator('.code:focus').waitFor();
      await typeOn(page, `182 190 20${i}`);
      await page.reload();
      await expect.poll(() => page.locator('.lengths').first().inputValue()).toBe(`182 190 20${i}`);
    }
  });

  it('is there when the browser dies after the last key was kept', async () => {
    const profile = mkdtempSync(join(tmpdir(), 'slateline-profile-'));
    const id = '0199a000-0000-7000-8000-000000000201';
    const first = await here.ownBrowser(profile);
    await here.openRoom(first.page, 'sheets', id, 'new');
    await first.page.locator('.code:focus').waitFor();
    await typeOn(first.page, '182 190 201');
    await untilKept(first.page, { name: 'drafts', key: id }, '182 190 201');
    await first.kill();
    const second = await here.ownBrowser(profile);
    await here.openRoom(second.page, 'sheets', id, 'new');
    await expect.poll(() => second.page.locator('.lengths').first().inputValue()).toBe('182 190 201');
  });
});
