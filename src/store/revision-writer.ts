/** Writes the revisions of one act. The act itself is written with its first revision: no change, no act. */

import type { StatementSync } from 'node:sqlite';
import type { Signature } from '../survey/store.ts';
import type { RecordKind } from '../survey/words.ts';
import type { BookDatabase } from './book-database.ts';
import type { RevisionRow } from './book-tables.ts';

export interface RevisionWriter {
  write(kind: RecordKind, recordId: string, before: string | null, after: string | null): void;
  /** Writes those that still wait; an act is not whole without it. */
  finish(): void;
}

export function revisionWriter(
  database: BookDatabase,
  signature: Signature,
  newId: () => string,
): RevisionWriter {
  const { kysely } = database;
  const insertOne = database.prepare(kysely.insertInto('revisions').values(anyRevision));
  // Prepared only for an act that is large: a saved sheet has no use for it.
  let insertMany: StatementSync | undefined;
  const lastSeq = lastNumber(database, 'revisions', 'seq');
  const waiting: SqlValue[] = [];
  let actNumber = 0;
  let place = 0;
  return {
    write: (kind, recordId, before, after) => {
      if (place === 0) actNumber = writeAct(database, signature, newId());
      place += 1;
      waiting.push(lastSeq + place, actNumber, place, kind, recordId, before, after);
      if (waiting.length < rowsAtOnce * columns) return;
      insertMany ??= database.prepare(kysely.insertInto('revisions').values(manyRevisions));
      insertMany.run(...waiting);
      waiting.length = 0;
    },
    finish: () => {
      for (let i = 0; i < waiting.length; i += columns) insertOne.run(...waiting.slice(i, i + columns));
      waiting.length = 0;
    },
  };
}

type SqlValue = string | number | null;
/** Rows in one statement: the way into the database and back is a sixth of what a revision costs. */
const rowsAtOnce = 64;

function writeAct(database: BookDatabase, { who, at, device, why }: Signature, id: string): number {
  const number = lastNumber(database, 'acts', 'number') + 1;
  const act = { number, id, who, at, device, why };
  database.prepare(database.kysely.insertInto('acts').values(act)).run(number, id, who, at, device, why);
  return number;
}

function lastNumber(database: BookDatabase, table: 'revisions' | 'acts', column: 'seq' | 'number'): number {
  const query = database.kysely
    .selectFrom(table)
    .select((select) => select.fn.max(select.ref(column as never)).as('last'));
  return Number(database.prepare(query).get()?.last ?? 0);
}

/** Shows Kysely the columns, in the order in which they are bound. */
const anyRevision: RevisionRow = {
  seq: 0,
  act_number: 0,
  place_in_act: 0,
  kind: '',
  record_id: '',
  before_row: '',
  after_row: '',
};
const columns = Object.keys(anyRevision).length;
const manyRevisions = Array<RevisionRow>(rowsAtOnce).fill(anyRevision);
