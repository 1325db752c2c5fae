import { resolve } from 'node:path';
import { openBook } from '../store/book-folder.ts';
import type { SqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../survey/store.ts';
import type { Io } from './io.ts';

/** Opens the book, works, and closes it whatever happens. */
export async function withBook<Result>(
  io: Io,
  book: string,
  work: (store: SqliteStore) => Promise<Result>,
): Promise<Result> {
  const store = await openBook(resolve(io.cwd, book));
  try {
    await agreeOnTime(io, store);
    return await work(store);
  } finally {
    await store.close();
  }
}

/**
 * The same with the book as it stood at a moment (ISO instant in UTC; null is now): it cannot be changed, and what
 * others write meanwhile is not seen, so that numbers and the data version beside them are of one moment.
 */
export function withBookAsOf<Result>(
  io: Io,
  { book, asOf }: { readonly book: string; readonly asOf: string | null },
  work: (store: Store) => Promise<Result>,
): Promise<Result> {
  return withBook(io, book, async (store) => {
    if (asOf === null) return store.atOneMoment(() => work(store));
    const past = await store.asOf(asOf);
    try {
      return await work(past);
    } finally {
      await past.close();
    }
  });
}

/** The order of the book does not hang on clocks, but a person should know when this one is behind. */
async function agreeOnTime(io: Io, store: SqliteStore): Promise<void> {
  const { identity, at } = await store.lastWritten();
  if (identity !== null) io.continueAfter?.(identity);
  if (at === null || io.now().getTime() >= Date.parse(at) - secondsOfGrace * 1000) return;
  io.stderr(
    `note: the clock of this device says ${io.now().toISOString()}, the last change in the book was signed at ${at}; changes keep their order, but set the clock right\n`,
  );
}

/** Two clocks that are set well still differ by a little. */
const secondsOfGrace = 60;
