/** The history of a book, or of one record, in the order in which it was written. */

import type { Revision } from '../survey/store.ts';
import type { RecordKind } from '../survey/words.ts';
import { type BookDatabase, withFailures } from './book-database.ts';
import { type AnyRow, kindTables } from './kind-tables.ts';
import { rowsOf } from './rows-of.ts';

export interface RevisionChoice {
  readonly recordId?: string | undefined;
  readonly kinds?: readonly RecordKind[] | undefined;
  /** The last revision to be read, by its number; all of them unless said. */
  readonly upToSeq?: number;
}

/** Page by page, so that a book can be written to while somebody reads its history. */
export async function* readRevisions(
  database: BookDatabase,
  choice: RevisionChoice = {},
): AsyncGenerator<Revision> {
  for (let lastSeq = 0; ; ) {
    const page = withFailures(database.folder, () => readPage(database, lastSeq, choice));
    for (const row of page) yield revisionOf(row);
    const last = page.at(-1);
    if (last === undefined) return;
    lastSeq = last.seq;
  }
}

const pageSize = 1000;

function readPage(database: BookDatabase, lastSeq: number, { recordId, kinds, upToSeq }: RevisionChoice) {
  let query = database.kysely
    .selectFrom('revisions')
    .innerJoin('acts', 'acts.number', 'revisions.act_number')
    .select(['seq', 'id', 'place_in_act', 'kind', 'record_id', 'before_row', 'after_row'])
    .select(['who', 'at', 'device', 'why'])
    .where('seq', '>', lastSeq)
    .orderBy('seq')
    .limit(pageSize);
  if (recordId !== undefined) query = query.where('record_id', '=', recordId);
  if (kinds !== undefined) query = query.where('kind', 'in', kinds);
  if (upToSeq !== undefined) query = query.where('seq', '<=', upToSeq);
  return rowsOf(database, query);
}

type RevisionWithAct = ReturnType<typeof readPage>[number];

function revisionOf(row: RevisionWithAct): Revision {
  const kind = row.kind as RecordKind;
  return {
    id: `${row.id}/${row.place_in_act}`,
    kind,
    recordId: row.record_id,
    before: recordOf(kind, row.before_row),
    after: recordOf(kind, row.after_row),
    signature: { who: row.who, at: row.at, device: row.device, why: row.why },
  };
}

function recordOf(kind: RecordKind, text: string | null): Revision['after'] {
  return text === null ? null : kindTables[kind].recordOf(JSON.parse(text) as AnyRow);
}
