/**
 * All that the numbers of a survey rest on, kept while the server answers, so that they can be worked out here when it
 * does not. Kept as it came, unread, so that it costs the thread of the screen nothing.
 */

import { database } from './database.ts';
import { type SentSheet, sentSheets } from './queue.ts';

export interface KeptRecords {
  readonly surveyId: string;
  /** The book's, when they were asked for. */
  readonly dataVersion: string;
  /** Milliseconds of this device's clock when they were asked for. */
  readonly askedAtMs: number;
  /** When the book was last seen to stand so. */
  readonly asOfMs: number;
  /** JSON, as `surveyRecordsSchema` has it. */
  readonly body: Blob;
}

/** A moment after a save, for another may follow; a large book is asked more seldom, since it costs the server time. */
const restMs = 1500;
const restPerAsking = 20;
let wanted: Omit<KeptRecords, 'askedAtMs' | 'body'> | null = null;
let notBeforeMs = 0;

/** To be called whenever the book answered; does nothing when the records kept are of that version. */
export function keepRecordsSoon(surveyId: string, dataVersion: string): void {
  const isComing = wanted !== null;
  wanted = { surveyId, dataVersion, asOfMs: Date.now() };
  if (isComing) return;
  setTimeout(keepWanted, Math.max(restMs, notBeforeMs - Date.now()));
}

async function keepWanted(): Promise<void> {
  const asked = wanted!;
  wanted = null;
  const begunMs = Date.now();
  // A browser that keeps nothing, or a server that went: what was kept before stands.
  await keepRecords(asked).catch(() => {});
  notBeforeMs = Date.now() + restPerAsking * (Date.now() - begunMs);
}

async function keepRecords({ surveyId, dataVersion, asOfMs }: NonNullable<typeof wanted>): Promise<void> {
  const book = await database();
  const look = book.transaction('records', 'readwrite');
  const kept = await look.store.get(surveyId);
  if (kept?.dataVersion === dataVersion) await look.store.put({ ...kept, asOfMs });
  await look.done;
  if (kept?.dataVersion === dataVersion) return;
  const askedAtMs = Date.now();
  const response = await fetch(`/api/surveys/${surveyId}/records`);
  if (!response.ok) return;
  const body = await response.blob();
  const work = book.transaction(['records', 'seen'], 'readwrite');
  const seen = work.objectStore('seen');
  const before = await seen.getAllKeys(within(sentSheets(surveyId)));
  const sent = await Promise.all(before.map((key) => seen.get(key)));
  // Sheets that had gone into the book before it was asked are in what it said.
  const held = before.filter((_, i) => (sent[i] as SentSheet).sentAtMs < askedAtMs);
  await Promise.all([
    work.objectStore('records').put({ surveyId, dataVersion, askedAtMs, asOfMs: askedAtMs, body }),
    ...held.map((key) => seen.delete(key)),
    work.done,
  ]);
}

/** Every key that begins so. */
export function within(beginning: string): IDBKeyRange {
  return IDBKeyRange.bound(beginning, `${beginning}\uffff`);
}
