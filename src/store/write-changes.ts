/**
 * One act: all its changes and their revisions in one transaction, or nothing.
 *
 * The changes may come in any order. References are checked at the end by the database; a row whose
 * natural key is still taken (two stations that swap their codes) waits until the others are written.
 */

import { Failure } from '../survey/failure.ts';
import type { Change, Signature } from '../survey/store.ts';
import { type RecordKind, recordSchemas } from '../survey/words.ts';
import { type BookDatabase, inTransaction } from './book-database.ts';
import { type CurrentTable, currentTable } from './current-tables.ts';
import { explainMissingReference } from './explain-reference.ts';
import type { AnyRow } from './kind-tables.ts';
import { isPlainTally } from './plain-tally.ts';
import { digestText, type RecordDigest, toggleRecord } from './record-digest.ts';
import { type RevisionWriter, revisionWriter } from './revision-writer.ts';
import { isRepeatedKey } from './sqlite-failures.ts';
import { readDigest, writeDigest } from './stored-digest.ts';

export function writeChanges(
  database: BookDatabase,
  changes: Iterable<Change>,
  signature: Signature,
  newId: () => string,
): void {
  inTransaction(
    database,
    () => writeAct(database, { changes, signature, newId }),
    (error) => explainMissingReference(database, error),
  );
}

export interface ActToWrite {
  readonly changes: Iterable<Change>;
  readonly signature: Signature;
  readonly newId: () => string;
  /** Records that must not be in the book yet. */
  readonly mustBeNew?: ReadonlySet<string>;
  /** Statements prepared for the acts before it in the same transaction. */
  readonly tables?: Map<RecordKind, CurrentTable>;
}

/** One act within the transaction that is open. */
export function writeAct(database: BookDatabase, order: ActToWrite): void {
  const act: Act = {
    database,
    tables: order.tables ?? new Map(),
    waiting: new Map(),
    digest: readDigest(database),
    revisions: revisionWriter(database, order.signature, order.newId),
    mustBeNew: order.mustBeNew ?? nothing,
  };
  for (const change of order.changes) writeChange(act, change);
  writeWaiting(act);
  act.revisions.finish();
  writeDigest(database, digestText(act.digest));
}

const nothing: ReadonlySet<string> = new Set();

interface Act {
  readonly database: BookDatabase;
  readonly tables: Map<RecordKind, CurrentTable>;
  /** Rows whose natural key was taken when they came, by identity. */
  readonly waiting: Map<string, Waiting>;
  readonly digest: RecordDigest;
  readonly revisions: RevisionWriter;
  readonly mustBeNew: ReadonlySet<string>;
}

interface Waiting {
  readonly table: CurrentTable;
  readonly row: AnyRow;
}

function writeChange(act: Act, change: Change): void {
  refuseInvalid(change);
  const { kind, recordId, after } = change;
  const table = tableOf(act, kind);
  const before = act.waiting.get(recordId)?.row ?? table.find(recordId);
  const row = after === null ? null : table.rowOf(after);
  const beforeText = before === null ? null : JSON.stringify(before);
  const afterText = row === null ? null : JSON.stringify(row);
  // What stands already is no change: the same import twice leaves no trace.
  if (beforeText === afterText) return;
  if (before !== null && act.mustBeNew.has(recordId)) {
    throw new Failure('already-there', { kind, key: recordId });
  }
  if (row === null) remove(act, table, recordId);
  else if (before === null) insert(act, table, row);
  else update(act, table, row);
  if (beforeText !== null) toggleRecord(act.digest, kind, beforeText);
  if (afterText !== null) toggleRecord(act.digest, kind, afterText);
  act.revisions.write(kind, recordId, beforeText, afterText);
}

/** The last gate before the disk: whatever the caller believed, a record that breaks its schema stays out. */
function refuseInvalid(change: Change): void {
  const { kind, recordId, after } = change;
  if (after === null) return;
  if (after.id !== recordId)
    throw new Error(`apply requires the ${kind} ${recordId} to carry its own identity`);
  if (kind === 'tally' && isPlainTally(after)) return;
  const parsed = recordSchemas[kind].safeParse(after);
  if (parsed.success) return;
  const issue = parsed.error.issues[0];
  const field = issue?.path.join('.') ?? '';
  throw new Failure('record-invalid', { kind, recordId, field, detail: issue?.message ?? '' });
}

function tableOf(act: Act, kind: RecordKind): CurrentTable {
  const known = act.tables.get(kind);
  if (known !== undefined) return known;
  const table = currentTable(act.database, kind);
  act.tables.set(kind, table);
  return table;
}

function remove(act: Act, table: CurrentTable, recordId: string): void {
  if (!act.waiting.delete(recordId)) table.remove(recordId);
}

function insert(act: Act, table: CurrentTable, row: AnyRow): void {
  if (!table.insert(row)) act.waiting.set(row.id as string, { table, row });
}

function update(act: Act, table: CurrentTable, row: AnyRow): void {
  const id = row.id as string;
  if (act.waiting.has(id)) {
    act.waiting.set(id, { table, row });
    return;
  }
  try {
    table.update(row);
  } catch (error) {
    if (!isRepeatedKey(error)) throw error;
    table.remove(id);
    act.waiting.set(id, { table, row });
  }
}

function writeWaiting(act: Act): void {
  for (const { table, row } of act.waiting.values()) {
    if (table.insert(row)) continue;
    const key = table.naturalKey.map((column) => row[column] ?? '').join(' / ');
    throw new Failure('already-there', { kind: table.kind, key });
  }
}
