/**
 * Small pictures for lists, made in this browser the first time a photo is added or seen, and kept: a list of forty
 * photos must not load two hundred megabytes whenever it is opened. In a database of their own: all of it can be made
 * again, nothing in it is anybody's work.
 */

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { drawSmall } from './draw-small.ts';
import type { ShownPhoto } from './shown-photos.ts';

export type PhotoSeen = Pick<ShownPhoto, 'sha256' | 'picture'>;

/** `unseen`: this browser cannot show such a picture; `later`: the book does not answer, or nobody looks any more. */
export type SmallPicture =
  | { readonly state: 'made'; readonly picture: Blob }
  | { readonly state: 'unseen' | 'later' };

interface Kept extends DBSchema {
  pictures: { key: string; value: Blob };
}

let opened: Promise<IDBPDatabase<Kept>> | null = null;
/** Not tried again while this page is open. */
const unseen = new Set<string>();

/** One that is not kept yet needs the whole photo, once. Whole photos are opened one at a time: each fills a hundred megabytes. */
export async function smallPicture(photo: PhotoSeen, isWanted: () => boolean): Promise<SmallPicture> {
  const kept = await keptOf(photo.sha256);
  if (kept !== undefined) return { state: 'made', picture: kept };
  if (unseen.has(photo.sha256)) return { state: 'unseen' };
  return inTurn(() => make(photo, isWanted));
}

async function make(photo: PhotoSeen, isWanted: () => boolean): Promise<SmallPicture> {
  if (!isWanted()) return { state: 'later' };
  const kept = await keptOf(photo.sha256);
  if (kept !== undefined) return { state: 'made', picture: kept };
  const whole = photo.picture ?? (await fromBook(photo.sha256));
  if (whole === null) return { state: 'later' };
  const picture = await drawSmall(whole).catch(() => null);
  if (picture === null) {
    unseen.add(photo.sha256);
    return { state: 'unseen' };
  }
  await keep(photo.sha256, picture);
  return { state: 'made', picture };
}

let last: Promise<unknown> = Promise.resolve();

function inTurn<Value>(work: () => Promise<Value>): Promise<Value> {
  const mine = last.then(work);
  last = mine.catch(() => {});
  return mine;
}

async function fromBook(sha256: string): Promise<Blob | null> {
  const response = await fetch(`/api/photos/${sha256}`).catch(() => null);
  return response?.ok ? response.blob().catch(() => null) : null;
}

function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>('slateline-small-pictures', 1, {
    upgrade: (made) => {
      made.createObjectStore('pictures');
    },
    terminated: () => {
      opened = null;
    },
  });
  return opened;
}

/** A browser that keeps nothing makes them each time. */
async function keptOf(sha256: string): Promise<Blob | undefined> {
  return database()
    .then((book) => book.get('pictures', sha256))
    .catch(() => undefined);
}

/** Without room it is made again next time. */
async function keep(sha256: string, picture: Blob): Promise<void> {
  await database()
    .then((book) => book.put('pictures', picture, sha256))
    .catch(() => {});
}
