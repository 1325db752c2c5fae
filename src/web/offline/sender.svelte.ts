/** Sends what waits, in the order of typing, as soon as the book answers. One tab sends at a time. */

import { compareSheets } from '../../tasks/sheets/compare-sheets.ts';
import {
  type Saved,
  type StaleSheet,
  savedSchema,
  sheetInBookSchema,
  staleSheetSchema,
} from '../../tasks/sheets/sheet-schemas.ts';
import type { Answer } from '../state/api.ts';
import { asked, held, readBook } from '../state/book.svelte.ts';
import {
  addressOf,
  baseOf,
  dropFromQueue,
  putInQueue,
  queueNow,
  sheetSent,
  type WaitingSheet,
} from './queue.ts';

let sheets: readonly WaitingSheet[] = $state.raw([]);
let lastSaved: string | null = $state(null);
let persistent: boolean | null = $state(null);

export const waiting = {
  get sheets() {
    return sheets;
  },
  /** Wall-clock time of the last sheet that went into the book from here. */
  get lastSaved() {
    return lastSaved;
  },
  /** Whether the browser promised to keep what it was given; null where it does not say. */
  get persistent() {
    return persistent;
  },
};

const everyMs = 5_000;
const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('slateline-queue') : null;

/** To be called once; returns how to stop. */
export function watchQueue(): () => void {
  void readQueue().then(sendAll);
  void askToKeep();
  const timer = setInterval(sendAll, everyMs);
  const again = () => void sendAll();
  addEventListener('online', again);
  channel?.addEventListener('message', readQueue);
  return () => {
    clearInterval(timer);
    removeEventListener('online', again);
    channel?.removeEventListener('message', readQueue);
  };
}

/** Resolves when the sheet is on this disk; sending comes after. */
export async function addToQueue(
  sheet: WaitingSheet,
  instead: { readonly draft?: string | undefined; readonly request?: string | undefined } = {},
): Promise<void> {
  await putInQueue(sheet, instead);
  await told();
  void sendAll();
}

/** A person let what the book says stand. */
export async function giveUp(requestId: string): Promise<void> {
  await dropFromQueue(requestId);
  await told();
}

let again = false;
let sending = false;

/** Sheets of one station go one after another: the second is based on what the first became. */
export async function sendAll(): Promise<void> {
  again = true;
  if (sending) return;
  sending = true;
  try {
    while (again) {
      again = false;
      await withLock(sendOnce);
    }
  } finally {
    sending = false;
  }
}

async function sendOnce(): Promise<void> {
  const stuck = new Set<string>();
  let sent = 0;
  for (const sheet of await queueNow()) {
    if (sheet.state !== 'waiting' || stuck.has(sheet.stationId)) {
      stuck.add(sheet.stationId);
      continue;
    }
    const body = { ...sheet.request, base: await baseOf(sheet) };
    const answer = await asked(addressOf(sheet), savedSchema, { method: 'PUT', body });
    if (answer.state === 'unreachable' || isPassing(answer)) break;
    if (answer.state === 'ok') {
      sent += 1;
      await sheetSent(sheet, await revisionAfter(sheet, answer.value));
      lastSaved = timeNow();
    } else {
      stuck.add(sheet.stationId);
      await putInQueue({ ...sheet, ...failed(answer) });
    }
    await told();
  }
  if (sent > 0 || held.reachable === false) await readBook();
}

/**
 * A request that had been written before is answered with what stands now, which may be somebody else's work:
 * only a sheet that still says the same is followed without asking.
 */
async function revisionAfter(sheet: WaitingSheet, { repeated, revision }: Saved): Promise<string | null> {
  if (!repeated) return revision;
  const now = await asked(addressOf(sheet), sheetInBookSchema);
  if (now.state !== 'ok' || compareSheets(now.value.sheet, sheet.request.sheet).length > 0) return null;
  return now.value.revision;
}

/** A disk that is full or a book that is locked passes; what is waiting goes on waiting. */
function isPassing(answer: Answer<unknown>): boolean {
  return answer.state === 'refused' && answer.status >= 500;
}

function failed(
  answer: Extract<Answer<unknown>, { state: 'refused' }>,
): Pick<WaitingSheet, 'state' | 'message' | 'conflict'> {
  const stale = answer.status === 409 ? staleSheetSchema.safeParse(answer.body) : null;
  const conflict: StaleSheet | null = stale?.success ? stale.data : null;
  return { state: conflict === null ? 'refused' : 'conflict', message: answer.message, conflict };
}

async function readQueue(): Promise<void> {
  try {
    sheets = await queueNow();
  } catch {
    sheets = [];
  }
}

async function told(): Promise<void> {
  await readQueue();
  channel?.postMessage('changed');
}

async function withLock(work: () => Promise<void>): Promise<void> {
  if (!('locks' in navigator)) return work();
  await navigator.locks.request('slateline-sender', work);
}

async function askToKeep(): Promise<void> {
  persistent = (await navigator.storage?.persist?.()) ?? null;
}

function timeNow(): string {
  return new Date().toTimeString().slice(0, 5);
}
