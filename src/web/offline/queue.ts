/** Sheets that wait for the book, each with the identity of its request: sent again, it is written once. */

import type { SaveSheetRequest, Sheet, StaleSheet } from '../../tasks/sheets/sheet-schemas.ts';
import { database, writeTo } from './database.ts';

export interface WaitingSheet {
  readonly requestId: string;
  readonly surveyId: string;
  readonly stationId: string;
  readonly stationCode: string;
  /** Its `base` may be the request it follows, while that one waits as well. */
  readonly request: SaveSheetRequest & { readonly sheet: Sheet };
  /** ISO instant. */
  readonly typedAt: string;
  /** `refused` and `conflict` wait for a person. */
  readonly state: 'waiting' | 'conflict' | 'refused';
  /** Why it was refused, as the server said it. */
  readonly message: string | null;
  readonly conflict: StaleSheet | null;
}

/** A sheet that went into the book from here, kept until the records kept of its survey hold it as well. */
export interface SentSheet {
  readonly sheet: Sheet;
  readonly sentAtMs: number;
}

/** In the order of typing: identities of requests grow. */
export async function queueNow(): Promise<readonly WaitingSheet[]> {
  return (await database()).getAll('queue');
}

/** Puts a sheet in the queue and drops what it replaces, together: nothing is ever in neither place. */
export async function putInQueue(
  sheet: WaitingSheet,
  instead: { readonly draft?: string | undefined; readonly request?: string | undefined } = {},
): Promise<void> {
  const book = await database();
  const work = book.transaction(['queue', 'drafts'], 'readwrite', { durability: 'strict' });
  const drop = [
    instead.draft === undefined ? null : work.objectStore('drafts').delete(instead.draft),
    instead.request === undefined ? null : work.objectStore('queue').delete(instead.request),
  ];
  await Promise.all([work.objectStore('queue').put(sheet), ...drop, work.done]);
}

/** The book has it: remembers as which revision, for sheets that follow it. */
export async function sheetSent(sheet: WaitingSheet, revision: string | null): Promise<void> {
  const book = await database();
  const work = book.transaction(['queue', 'seen'], 'readwrite', { durability: 'strict' });
  const seen = work.objectStore('seen');
  const sent: SentSheet = { sheet: sheet.request.sheet, sentAtMs: Date.now() };
  const remember =
    revision === null
      ? []
      : [
          seen.put(revision, sentAs(sheet.requestId)),
          seen.put({ revision, sheet: sheet.request.sheet }, addressOf(sheet)),
          seen.put(sent, `${sentSheets(sheet.surveyId)}${sheet.stationId}`),
        ];
  await Promise.all([work.objectStore('queue').delete(sheet.requestId), ...remember, work.done]);
}

export async function baseOf({ request }: WaitingSheet): Promise<string | null> {
  if (request.base === null) return null;
  const revision = await (await database()).get('seen', sentAs(request.base));
  return typeof revision === 'string' ? revision : request.base;
}

export function dropFromQueue(requestId: string): Promise<void> {
  return writeTo('queue', (store) => store.delete(requestId));
}

export function addressOf({ surveyId, stationId }: Pick<WaitingSheet, 'surveyId' | 'stationId'>): string {
  return `/api/surveys/${surveyId}/sheets/${stationId}`;
}

/** Where they stand among what was seen. */
export function sentSheets(surveyId: string): string {
  return `sent-sheet/${surveyId}/`;
}

function sentAs(requestId: string): string {
  return `sent/${requestId}`;
}
