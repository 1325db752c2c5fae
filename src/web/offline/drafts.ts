/** Sheets being typed, kept at every change. A draft goes when its sheet waits for the book or is thrown away. */

import type { Sheet } from '../../tasks/sheets/sheet-schemas.ts';
import type { TypedSheet } from '../../tasks/sheets/typed-sheet.ts';
import { database, writeTo } from './database.ts';

export interface Draft {
  /** The station; with "/again" behind it for a second typing. */
  readonly key: string;
  readonly surveyId: string;
  readonly stationId: string;
  /** The revision it began from, or the request it follows; null for a new station. */
  readonly base: string | null;
  /** The sheet it began from. */
  readonly before: Sheet | null;
  /** Cells as typed: what cannot be read yet is kept as well. */
  readonly typed: TypedSheet;
  /** ISO instant. */
  readonly changedAt: string;
}

/** Resolves when it is on the disk. */
export async function keepDraft(draft: Draft): Promise<void> {
  const work = (await database()).transaction('drafts', 'readwrite', { durability: 'strict' });
  const put = work.store.put(draft);
  // Said now: a page that is being closed will not be there when the browser asks whether more is to come.
  work.commit();
  await Promise.all([put, work.done]);
}

export async function draftOf(key: string): Promise<Draft | undefined> {
  return (await database()).get('drafts', key);
}

export async function draftsOf(surveyId: string): Promise<readonly Draft[]> {
  return (await (await database()).getAll('drafts')).filter((one) => one.surveyId === surveyId);
}

export function dropDraft(key: string): Promise<void> {
  return writeTo('drafts', (store) => store.delete(key));
}
