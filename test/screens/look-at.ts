import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect } from 'vitest';
import { brokenRules } from './broken-rules.ts';
import { shots } from './screen-helper.ts';
import { settled } from './settled.ts';

/** A picture for people, and what a machine can see of it: no rule of accessibility broken, nothing wider than the screen. */
export async function lookAt(page: Page, name: string): Promise<void> {
  await settled(page);
  await page.screenshot({ path: join(shots, `${name}.png`), fullPage: true });
  expect(await brokenRules(page), name).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over, `${name} is wider than the screen`).toBeLessThanOrEqual(0);
}
