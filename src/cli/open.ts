import { resolve } from 'node:path';
import { openBook } from '../store/book-folder.ts';
import type { Store } from '../survey/store.ts';
import type { Io } from './io.ts';

/** Opens the book, works, and closes it whatever happens. */
export async function withBook<Result>(
  io: Io,
  book: string,
  work: (store: Store) => Promise<Result>,
): Promise<Result> {
  const store = await openBook(resolve(io.cwd, book));
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}
