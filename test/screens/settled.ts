import type { Page, Request } from '@playwright/test';
import { expect } from 'vitest';

const underway = new WeakMap<Page, Set<Request>>();

/** To be called before the page goes anywhere. */
export function watchRequests(page: Page): void {
  const open = new Set<Request>();
  underway.set(page, open);
  page.on('request', (request) => open.add(request));
  const close = (request: Request) => void open.delete(request);
  page.on('requestfinished', close);
  page.on('requestfailed', close);
}

/**
 * Until a screen has all it asked for: whoever looks earlier looks at half of it. The browser's own "network idle" is
 * said once for a page, and not again when the address changes within it.
 */
export async function settled(page: Page, isEnough: () => boolean = () => false): Promise<void> {
  const open = underway.get(page)!;
  let quiet = 0;
  const quietTimes = async () => {
    if (isEnough()) return Number.POSITIVE_INFINITY;
    const isReading = await page.getByText(/^(Reading the book|Lecture du carnet) …$/).count();
    quiet = open.size === 0 && isReading === 0 ? quiet + 1 : 0;
    return quiet;
  };
  await expect.poll(quietTimes, { interval: 60 }).toBeGreaterThan(3);
}

/** A screen on a page of its own, whatever was on it before: another address alone would leave the old one for a moment. */
export async function openAnew(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.reload();
  await page.locator('#page h1').waitFor();
  await settled(page);
}
