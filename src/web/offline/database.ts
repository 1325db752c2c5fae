/**
 * What this browser keeps: the book as last seen, drafts, and sheets that wait for the book.
 * Writes are acknowledged only when they are on the disk (durability "strict"): a laptop whose battery dies keeps them.
 */

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { WaitingPhoto } from '../photos/waiting-photos.ts';
import type { WaitingAnswer } from './answers.ts';
import type { Draft } from './drafts.ts';
import type { WaitingSheet } from './queue.ts';
import type { KeptRecords } from './records.ts';

export interface Kept extends DBSchema {
  /** Answers of the server by their address. */
  seen: { key: string; value: unknown };
  /** By what is typed. */
  drafts: { key: string; value: Draft };
  /** In the order of typing. */
  queue: { key: string; value: WaitingSheet };
  /** Answers to questions, in the order in which they were given. */
  answers: { key: string; value: WaitingAnswer };
  /** By survey: all that its numbers rest on. */
  records: { key: string; value: KeptRecords };
  /** In the order of adding. */
  photos: { key: string; value: WaitingPhoto };
}

let opened: Promise<IDBPDatabase<Kept>> | null = null;

export function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>('slateline', 3, {
    upgrade(made, from) {
      if (from < 1) {
        made.createObjectStore('seen');
        made.createObjectStore('drafts', { keyPath: 'key' });
        made.createObjectStore('queue', { keyPath: 'requestId' });
      }
      if (from < 2) {
        made.createObjectStore('answers', { keyPath: 'requestId' });
        made.createObjectStore('records', { keyPath: 'surveyId' });
      }
      if (from < 3) made.createObjectStore('photos', { keyPath: 'requestId' });
    },
    // Another tab of a newer program wants to change the stores: this one lets go.
    blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
    terminated: () => {
      opened = null;
    },
  });
  return opened;
}

/** Resolves only when the change is on disk. */
export async function writeTo<Name extends 'seen' | 'drafts' | 'queue' | 'answers'>(
  name: Name,
  change: (store: {
    put(value: Kept[Name]['value'], key?: string): Promise<unknown>;
    delete(key: string): Promise<void>;
    get(key: string): Promise<Kept[Name]['value'] | undefined>;
  }) => Promise<unknown>,
): Promise<void> {
  const book = await database();
  const transaction = book.transaction(name, 'readwrite', { durability: 'strict' });
  // biome-ignore lint/suspicious/noExplicitAny: one name at a time is beyond what the types of the library can follow
  await Promise.all([change(transaction.store as any), transaction.done]);
}
