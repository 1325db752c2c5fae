/** One boat day: read, and made ready to be written. */

import type { ScreenLanguage } from '../../report/catalogue/server-words.ts';
import type { Store } from '../../survey/store.ts';
import type { Day } from '../../survey/words.ts';
import { diversOf } from './dives.ts';
import type { ReadyToWrite } from './new-survey.ts';
import { plainText, type SheetTools } from './sheet-tools.ts';
import type { DayInBook, SaveDay } from './survey-schemas.ts';

export interface DayPlace {
  readonly surveyId: string;
  /** ISO day. */
  readonly date: string;
}

type Reading = Pick<SheetTools, 'digest'> & { readonly store: Store; readonly language: ScreenLanguage };

/** Of one survey, oldest first. */
export async function dayList(surveyId: string, reading: Reading): Promise<readonly DayInBook[]> {
  const days = (await reading.store.all('day')).filter((one) => one.surveyId === surveyId);
  return days.toSorted((a, b) => (a.date < b.date ? -1 : 1)).map((day) => dayInBook(day, reading));
}

/** A day of which nothing is written yet is an answer too. */
export async function readDay(place: DayPlace, reading: Reading): Promise<DayInBook> {
  const day = await findDay(place, reading.store);
  if (day !== undefined) return dayInBook(day, reading);
  return { revision: null, id: null, date: place.date, content: null, divers: [] };
}

export type DayReady = ReadyToWrite | { readonly state: 'stale' };

export async function readyDay(place: DayPlace, request: SaveDay, tools: SheetTools): Promise<DayReady> {
  const { store, digest, at, device } = tools;
  const standing = await findDay(place, store);
  const after: Day = { id: standing?.id ?? request.id, ...place, content: request.content };
  const revision = dayRevision(after, digest);
  const now = standing === undefined ? null : dayRevision(standing, digest);
  if (await store.actWritten(request.requestId)) {
    return { state: 'stands', revision: now ?? revision, repeated: true };
  }
  if (now === revision) return { state: 'stands', revision, repeated: false };
  if (now !== request.base) return { state: 'stale' };
  const signature = { who: request.who, at, device: request.device ?? device, why: request.why };
  const mustBeNew = new Set(standing === undefined ? [after.id] : []);
  const changes = [{ kind: 'day', recordId: after.id, after } as const];
  return { state: 'to write', revision, act: { id: request.requestId, signature, changes, mustBeNew } };
}

async function findDay({ surveyId, date }: DayPlace, store: Store): Promise<Day | undefined> {
  return (await store.all('day')).find((one) => one.surveyId === surveyId && one.date === date);
}

function dayInBook(day: Day, { digest, language }: Reading): DayInBook {
  const { id, date, content } = day;
  return { revision: dayRevision(day, digest), id, date, content, divers: diversOf(content, language) };
}

function dayRevision(day: Day, digest: SheetTools['digest']): string {
  return digest(plainText(day));
}
