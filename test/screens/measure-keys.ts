/**
 * What a key costs the browser, read from its own trace: everything the thread of the page does from the key to the
 * end of the frame that shows what was understood (handlers, reading, style, layout, paint), and the longest piece of
 * work that can stand before a key.
 */

import type { Browser, Page } from '@playwright/test';
import { type TraceEvent, workOfKeys } from './key-work.ts';

export interface Measured {
  /** Milliseconds on the clock, shortest first; with other programs at work longer than the work itself. */
  readonly clockMs: readonly number[];
  /** Milliseconds of the processor, shortest first. */
  readonly processorMs: readonly number[];
  /** The longest piece of work between keys, of the processor. */
  readonly longestBetweenMs: number;
}

/** A name, its lengths with a slip taken back, the next line: what hands really do. */
const written = [
  ...'white',
  'Enter',
  ...'182 190 20',
  'Backspace',
  ...'10 240 175',
  'Enter',
  ...'black',
  'Enter',
  ...'231 188 ',
];

/** Types into whatever has the cursor, with the processor so many times slower. */
export async function measureKeys(browser: Browser, page: Page, slowed: number): Promise<Measured> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  await page.waitForTimeout(1000);
  await browser.startTracing(page, { categories: ['toplevel', 'devtools.timeline'] });
  for (const key of written) {
    await page.keyboard.press(key === ' ' ? 'Space' : key);
    await page.waitForTimeout(gapMs * Math.sqrt(slowed));
  }
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const { keys, longestBetweenMs } = workOfKeys(trace.traceEvents);
  const sorted = (values: number[]) => values.toSorted((a, b) => a - b);
  return {
    clockMs: sorted(keys.map((key) => key.clockMs)),
    processorMs: sorted(keys.map((key) => key.processorMs)),
    longestBetweenMs,
  };
}

/** Longer than strip and questions wait for a pause, so that their work is in the trace as well. */
const gapMs = 350;

/** A new sheet of so many belts, each with something on it; the cursor in a new line of the middle one. */
export async function openFullSheet(page: Page, address: string, belts: number): Promise<void> {
  await page.goto(address);
  await page.getByRole('link', { name: 'Type a new sheet' }).click();
  await page.locator('.code:focus').waitFor();
  const more = page.getByRole('button', { name: 'One more belt' });
  while ((await page.locator('section h2').count()) < belts) await more.click();
  for (const belt of await page.locator('section').all()) {
    for (const [species, lengths] of [
      ['sand', '182 190 201 240'],
      ['lolly', '150 165'],
    ]) {
      await belt.locator('.species').last().fill(species!);
      await belt.locator('.species').last().press('Enter');
      await belt.locator('.lengths').last().fill(lengths!);
      await belt.locator('.lengths').last().press('Enter');
    }
  }
  await page
    .locator('section')
    .nth(Math.floor(belts / 2))
    .locator('.species')
    .last()
    .focus();
}

/** The least that any page costs: one box and nothing else. */
export async function openEmptyPage(page: Page): Promise<void> {
  await page.setContent('<textarea aria-label="nothing else"></textarea>');
  await page.locator('textarea').focus();
}

/** The same page to the eye, and no program behind it: what the browser alone takes for a key. */
export async function openStillSheet(page: Page, sheet: Page, address: string): Promise<void> {
  const html = await sheet.evaluate(() => {
    const copy = document.documentElement.cloneNode(true) as HTMLElement;
    const written = [...document.querySelectorAll<HTMLInputElement>('input, textarea')].map(
      (one) => one.value,
    );
    copy.querySelectorAll<HTMLInputElement>('input, textarea').forEach((one, i) => {
      if (one.localName === 'textarea') one.textContent = written[i]!;
      else one.setAttribute('value', written[i]!);
    });
    for (const script of copy.querySelectorAll('script, link[rel=modulepreload]')) script.remove();
    return copy.outerHTML;
  });
  await page.route(address, (route) =>
    route.fulfill({ contentType: 'text/html', body: `<!doctype html>${html}` }),
  );
  await page.goto(address);
  const sections = page.locator('section');
  const middle = sections.nth(Math.floor((await sections.count()) / 2));
  await middle.locator('.species').last().focus();
}
