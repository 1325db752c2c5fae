/**
 * Boat days on this laptop: drafts, and days that wait for the book. One waiting day for each date: the last one saved.
 * A request that was answered is forgotten; one that was not is sent again with the same identity, and written once.
 */

import * as z from 'zod';
import { savedSchema } from '../../tasks/sheets/sheet-schemas.ts';
import { dayInBookSchema, saveDaySchema, staleDaySchema } from '../../tasks/sheets/survey-schemas.ts';
import { database, writeTo } from '../offline/database.ts';
import { asked } from '../state/book.svelte.ts';
import type { TypedDay } from './day-typed.ts';

const waitingDaySchema = z.object({
  surveyId: z.string(),
  date: z.string(),
  request: saveDaySchema,
  /** Not null: the book refused it, and a person must look. */
  message: z.string().nullable(),
  theirs: dayInBookSchema.nullable(),
});
export type WaitingDay = z.infer<typeof waitingDaySchema>;
export interface DayDraft {
  readonly typed: TypedDay;
  readonly base: string | null;
  /** Wall-clock time. */
  readonly at: string;
}

let days: readonly WaitingDay[] = $state.raw([]);
let lastSaved: { readonly key: string; readonly time: string } | null = $state.raw(null);

export const waitingDays = {
  get all() {
    return days;
  },
  /** The last day that went into the book from here, and when. */
  get lastSaved() {
    return lastSaved;
  },
};

type Place = Pick<WaitingDay, 'surveyId' | 'date'>;

export function dayKey({ surveyId, date }: Place): string {
  return `${surveyId}/${date}`;
}

export function dayAddress({ surveyId, date }: Place): string {
  return `/api/surveys/${surveyId}/days/${date}`;
}

/** To be called once; returns how to stop. */
export function watchDays(): () => void {
  const again = () => void sendDays();
  void readDays().then(again);
  const timer = setInterval(again, 5_000);
  addEventListener('online', again);
  return () => {
    clearInterval(timer);
    removeEventListener('online', again);
  };
}

/** Resolves when the day is on this disk, its draft dropped; sending comes after. */
export async function addDay(day: WaitingDay): Promise<void> {
  await writeTo('seen', async (store) => {
    await store.put(day, `day-waiting/${dayKey(day)}`);
    await store.delete(`day-draft/${dayKey(day)}`);
  });
  await readDays();
  await sendDays();
}

export async function dropDay(place: Place): Promise<void> {
  await writeTo('seen', (store) => store.delete(`day-waiting/${dayKey(place)}`));
  await readDays();
}

export function keepDayDraft(place: Place, draft: DayDraft | null): Promise<void> {
  const key = `day-draft/${dayKey(place)}`;
  return writeTo('seen', (store) => (draft === null ? store.delete(key) : store.put(draft, key)));
}

export async function dayDraft(place: Place): Promise<DayDraft | null> {
  try {
    return (
      ((await (await database()).get('seen', `day-draft/${dayKey(place)}`)) as DayDraft | undefined) ?? null
    );
  } catch {
    return null;
  }
}

async function readDays(): Promise<void> {
  try {
    const range = IDBKeyRange.bound('day-waiting/', 'day-waiting/\uffff');
    const found = await (await database()).getAll('seen', range);
    days = found.flatMap((one) => waitingDaySchema.safeParse(one).data ?? []);
  } catch {
    days = [];
  }
}

let sending: Promise<void> | null = null;

function sendDays(): Promise<void> {
  sending ??= sendOnce().finally(() => {
    sending = null;
  });
  return sending;
}

async function sendOnce(): Promise<void> {
  if (!days.some((day) => day.message === null)) return;
  if (!('locks' in navigator)) return sendAll();
  await navigator.locks.request('slateline-day-sender', sendAll);
}

async function sendAll(): Promise<void> {
  await readDays();
  for (const day of days.filter((one) => one.message === null)) {
    const answer = await asked(dayAddress(day), savedSchema, { method: 'PUT', body: day.request });
    if (answer.state === 'unreachable' || (answer.state === 'refused' && answer.status >= 500)) break;
    const key = `day-waiting/${dayKey(day)}`;
    if (answer.state === 'ok') {
      await forget(key, day.request.requestId);
      lastSaved = { key: dayKey(day), time: new Date().toTimeString().slice(0, 5) };
    } else {
      const theirs = staleDaySchema.safeParse(answer.body).data?.theirs ?? null;
      await writeTo('seen', (store) => store.put({ ...day, message: answer.message, theirs }, key));
    }
  }
  await readDays();
}

/** A day saved again while it was on its way stays waiting. */
function forget(key: string, requestId: string): Promise<void> {
  return writeTo('seen', async (store) => {
    const standing = waitingDaySchema.safeParse(await store.get(key)).data;
    if (standing?.request.requestId === requestId) await store.delete(key);
  });
}
