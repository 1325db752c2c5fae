/** The time from a key to the end of the work it causes, as the browser itself measures it. */

import type { Page } from '@playwright/test';

interface Asked {
  readonly url: string;
  readonly surveyId: string;
  readonly belts: number;
  /** How many times slower the processor is made. */
  readonly slowed: number;
}

/** Milliseconds for each key, shortest first: handling, drawing and layout, up to when the frame is ready. */
export async function keyTimes(page: Page, { url, surveyId, belts, slowed }: Asked): Promise<number[]> {
  await page.goto(`${url}#/sheets/${surveyId}`);
  await page.getByRole('link', { name: 'Type a new sheet' }).click();
  await page.locator('.code:focus').waitFor();
  const more = page.getByRole('button', { name: 'One more belt' });
  while ((await page.locator('section h2').count()) < belts) await more.click();
  await fillBelts(page);
  await page.evaluate(watchKeys);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const middle = page.locator('section').nth(Math.floor(belts / 2));
  await middle.locator('.lengths').last().focus();
  for (const key of '182 190 201 240 188 175 231 ')
    await page.keyboard.press(key === ' ' ? 'Space' : key, { delay: 40 });
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const times = await page.evaluate(() => (globalThis as unknown as { keyTimes: number[] }).keyTimes);
  return times.toSorted((a, b) => a - b);
}

/** Every belt holds something, as on a full sheet. */
async function fillBelts(page: Page): Promise<void> {
  for (const belt of await page.locator('section').all()) {
    await belt.locator('.species').first().fill('sand');
    await belt.locator('.species').first().press('Enter');
    await belt.locator('.lengths').first().fill('182 190 201 240');
    await belt.locator('.lengths').first().press('Enter');
    await belt.locator('.species').last().fill('lolly');
    await belt.locator('.species').last().press('Enter');
    await belt.locator('.lengths').last().fill('150 ');
  }
}

/** Runs in the browser: the work of the key itself, and the frame's work of style, layout and paint that follows it. */
function watchKeys(): void {
  const times: number[] = [];
  (globalThis as unknown as { keyTimes: number[] }).keyTimes = times;
  let keyAt = 0;
  addEventListener(
    'keydown',
    () => {
      keyAt = performance.now();
    },
    true,
  );
  addEventListener('input', () => {
    // The screens change in a microtask that was asked for before this one.
    queueMicrotask(() => {
      const handledMs = performance.now() - keyAt;
      requestAnimationFrame(() => {
        const frameAt = performance.now();
        const channel = new MessageChannel();
        channel.port1.onmessage = () => times.push(handledMs + performance.now() - frameAt);
        channel.port2.postMessage(null);
      });
    });
  });
}
