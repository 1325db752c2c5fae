/**
 * Photos that wait for the book, with their bytes, and what a person said of a photo meanwhile. Each has the identity
 * of its request: sent again, it is written once.
 */

import type { PhotoContent } from '../../survey/photo-words.ts';
import type { PhotoInBook } from '../../tasks/sheets/photo-schemas.ts';
import { database } from '../offline/database.ts';

export interface WaitingPhoto {
  readonly requestId: string;
  readonly sha256: string;
  readonly surveyId: string;
  /** What was found out when it was added. */
  readonly file: Pick<PhotoContent, 'name' | 'type' | 'bytes' | 'takenAt' | 'clockOffset' | 'orientation'>;
  /** Its bytes, as long as the book has them not; null where only what was said of it waits. */
  readonly picture: Blob | null;
  readonly said: PhotoSaying;
  /** For people. */
  readonly stationCode: string | null;
  /** The revision it was said of; null: of the photo that waits in front of it. */
  readonly base: string | null;
  readonly who: string;
  /** ISO instant. */
  readonly addedAt: string;
  /** `refused` and `conflict` wait for a person. */
  readonly state: 'waiting' | 'conflict' | 'refused';
  readonly message: string | null;
  /** With `conflict`: what the book says. */
  readonly theirs: PhotoInBook | null;
}

/** What is left out stays as it is. */
export interface PhotoSaying {
  /** Null takes it off its station. */
  readonly stationId?: string | null;
  readonly takenAt?: string | null;
  readonly note?: string | null;
  /** Why it is taken away; it goes behind everything else that waits of it. */
  readonly away?: string;
}

/** In the order of adding: identities of requests grow. */
export async function waitingPhotosNow(): Promise<readonly WaitingPhoto[]> {
  return (await database()).getAll('photos');
}

/** Puts some in and takes one out, together; resolves when it is on disk. Throws when the browser has no room. */
export async function changeWaiting(
  putIn: readonly WaitingPhoto[],
  { instead }: { readonly instead?: string | undefined } = {},
): Promise<void> {
  const work = (await database()).transaction('photos', 'readwrite', { durability: 'strict' });
  const out = instead === undefined ? [] : [work.store.delete(instead)];
  await Promise.all([...out, ...putIn.map((one) => work.store.put(one)), work.done]);
}

/** A photo that is away has no station and no note: what else was said of it here is not sent any more. */
export async function dropSayings(sha256: string): Promise<void> {
  const work = (await database()).transaction('photos', 'readwrite', { durability: 'strict' });
  const said = (await work.store.getAll()).filter((one) => one.sha256 === sha256 && one.picture === null);
  await Promise.all([...said.map(({ requestId }) => work.store.delete(requestId)), work.done]);
}

/** The book has it: remembers what became of the revision it was said of, for what is said of it after. */
export async function photoSent(
  { requestId, sha256 }: WaitingPhoto,
  { base, revision }: { readonly base: string | null; readonly revision: string },
): Promise<void> {
  const work = (await database()).transaction(['photos', 'seen'], 'readwrite', { durability: 'strict' });
  const seen = work.objectStore('seen');
  await Promise.all([
    work.objectStore('photos').delete(requestId),
    seen.put(revision, sentAs(sha256)),
    ...(base === null ? [] : [seen.put(revision, afterRevision(sha256, base))]),
    // Said back and forth, a photo comes to a revision it had before: that one is the newest again.
    seen.delete(afterRevision(sha256, revision)),
    work.done,
  ]);
}

/** As the book has it after what went from here: the screen may still show the revision before. */
export async function baseOf({ base, sha256 }: WaitingPhoto): Promise<string | null> {
  const book = await database();
  let revision = base ?? (await book.get('seen', sentAs(sha256)));
  let after = revision;
  while (typeof after === 'string') {
    revision = after;
    after = await book.get('seen', afterRevision(sha256, after));
  }
  return typeof revision === 'string' ? revision : null;
}

function afterRevision(sha256: string, revision: string): string {
  return `photo-after/${sha256}/${revision}`;
}

function sentAs(sha256: string): string {
  return `photo-sent/${sha256}`;
}
