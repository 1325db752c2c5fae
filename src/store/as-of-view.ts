/** The book as it stood at a moment: current tables in memory, made again from the revisions up to then. */

import { Failure } from '../survey/failure.ts';
import type { Store } from '../survey/store.ts';
import { type ActClock, placeActs } from './act-clocks.ts';
import { type BookDatabase, withFailures } from './book-database.ts';
import { readRevisions } from './read-revisions.ts';
import { rebuildTables } from './rebuild-tables.ts';
import { rowsOf } from './rows-of.ts';

/** `memory` is an empty book in memory, `view` the store on it: its reading is the reading of any book. */
export function asOfView<View extends Store>(
  { book, memory, view }: { readonly book: BookDatabase; readonly memory: BookDatabase; readonly view: View },
  instant: string,
): View {
  const upToSeq = lastSeqAt(book, instant);
  rebuildTables({ from: book, into: memory, upToSeq });
  const refuse = async () => {
    throw new Failure('past-stays', { moment: instant });
  };
  return {
    ...view,
    revisions: (recordId, kinds) => readRevisions(book, { recordId, kinds, upToSeq }),
    apply: refuse,
    applyTogether: refuse,
    rebuild: refuse,
    asOf: refuse,
  };
}

/** The number of the last revision made by the moment. Throws a Failure when there was none. */
function lastSeqAt(book: BookDatabase, instant: string): number {
  return withFailures(book.folder, () => {
    const acts = readActClocks(book);
    const moment = Date.parse(instant);
    const last = placeActs(acts).findLast((act) => act.countsAtMs <= moment);
    if (last === undefined) throw new Failure('nothing-yet', { moment: instant, first: acts[0]?.at ?? '' });
    const query = book.kysely
      .selectFrom('revisions')
      .select((select) => select.fn.max('seq').as('last'))
      .where('act_number', '<=', last.number);
    return Number(rowsOf(book, query)[0]?.last ?? 0);
  });
}

export function readActClocks(book: BookDatabase): readonly ActClock[] {
  return rowsOf(book, book.kysely.selectFrom('acts').select(['number', 'at']).orderBy('number'));
}
