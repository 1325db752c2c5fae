/** What the browser has on its disk, looked up past the program. */

import type { Page } from '@playwright/test';
import { expect } from 'vitest';

interface Shelf {
  readonly name: 'records' | 'drafts' | 'seen';
  readonly key: string;
}

/** Of which version the records kept of the survey are. */
export async function keptVersion(page: Page, surveyId: string): Promise<string | undefined> {
  const shelf: Shelf = { name: 'records', key: surveyId };
  return ((await page.evaluate(fromStore, shelf)) as { dataVersion: string } | undefined)?.dataVersion;
}

/** Until what is typed is on the disk, these words in it: it goes there in a pause, and a busy machine has few. */
export async function untilKept(page: Page, shelf: Shelf, words: string): Promise<void> {
  const kept = async () => JSON.stringify((await page.evaluate(fromStore, shelf)) ?? null);
  await expect.poll(kept).toContain(words);
}

/** Runs in the browser. */
async function fromStore({ name, key }: { name: string; key: string }): Promise<unknown> {
  const book = await new Promise<IDBDatabase>((done, failed) => {
    const opening = indexedDB.open('slateline');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const kept = await new Promise<unknown>((done, failed) => {
    const asking = book.transaction(name).objectStore(name).get(key);
    asking.onsuccess = () => done(asking.result);
    asking.onerror = () => failed(asking.error);
  });
  book.close();
  return kept;
}
