/** Sends what waits, in the order of typing, as soon as the book answers. One tab sends at a time. */

import { compareSheets } from '../../tasks/sheets/compare-sheets.ts';
import {
  type Saved,
  type StaleSheet,
  savedSchema,
  sheetInBookSchema,
  staleSheetSchema,
} from '../../tasks/sheets/sheet-schemas.ts';
import { type Answer, isPassing } from '../state/api.ts';
import { asked, held, readBook } from '../state/book.svelte.ts';
import { readAnswers, sendAnswers } from './answer-sender.svelte.ts';
import { dropAnswer, putAnswer, type WaitingAnswer } from './answers.ts';
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

/** Resolves when the answer is on this disk. */
export async function addAnswer(answer: WaitingAnswer, instead: string | null = null): Promise<void> {
  await putAnswer(answer, instead);
  await told();
}

/** A person let what somebody else answered stand. */
export async function giveUpAnswer(requestId: string): Promise<void> {
  await dropAnswer(requestId);
  await told();
}

/** A person let what the book says stand. */
export async function giveUp(requestId: string): Promise<void> {
  await dropFromQueue(requestId);
  await told();
}

let again = false;
let sending: Promise<void> | null = null;

/** Sheets of one station go one after another: the second is based on what the first became. */
export function sendAll(): Promise<void> {
  again = true;
  sending ??= sendWhileAsked().finally(() => {
    sending = null;
  });
  return sending;
}

async function sendWhileAsked(): Promise<void> {
  while (again) {
    again = false;
    await withLock(sendOnce);
  }
}

async function sendOnce(): Promise<void> {
  const stuck = new Set<string>();
  let sent = 0;
  let isGone = false;
  for (const sheet of await queueNow()) {
    if (sheet.state !== 'waiting' || stuck.has(sheet.stationId)) {
      stuck.add(sheet.stationId);
      continue;
    }
    const body = { ...sheet.request, base: await baseOf(sheet) };
    const answer = await asked(addressOf(sheet), savedSchema, { method: 'PUT', body });
    if (answer.state === 'unreachable' || isPassing(answer)) {
      isGone = true;
      break;
    }
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
  const answers = isGone ? false : await sendAnswers(told);
  if (answers !== false && answers > 0) lastSaved = timeNow();
  if (sent > 0 || answers !== 0 || held.reachable === false) await readBook();
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

function failed(
  answer: Extract<Answer<unknown>, { state: 'refused' }>,
): Pick<WaitingSheet, 'state' | 'message' | 'conflict'> {
  const stale = answer.status === 409 ? staleSheetSchema.safeParse(answer.body) : null;
  const conflict: StaleSheet | null = stale?.success ? stale.data : null;
  return { state: conflict === null ? 'refused' : 'conflict', message: answer.message, conflict };
}

async function readQueue(): Promise<void> {
  await readAnswers();
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
