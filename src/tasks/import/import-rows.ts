/**
 * Brings the rows of import tables into the book: names become records, records are compared with
 * what the book holds, and everything is written in one transaction, or nothing.
 *
 * A stop anywhere means nothing is written. Running the same import twice changes nothing.
 * Records of the book that the tables do not mention stay as they are.
 */

import type { Problem } from '../../survey/message.ts';
import type { Signature, Store } from '../../survey/store.ts';
import type { TableRows, TableTotals } from '../../survey/table-rows.ts';
import { BookInHand } from './book-in-hand.ts';
import { Changes } from './changes.ts';
import { resolveMeasured } from './resolve-measured.ts';
import { resolvePlaces } from './resolve-places.ts';
import { resolveTallies } from './resolve-tallies.ts';
import { resolveWords } from './resolve-words.ts';

export interface ImportRequest {
  readonly rows: TableRows;
  /** Rows read and refused by a named rule, per table, as the reader counted them. */
  readonly readTotals: readonly Pick<TableTotals, 'table' | 'read' | 'refused'>[];
  /** Problems the reader met; a stop among them already means that nothing is written. */
  readonly readProblems: readonly Problem[];
  /** The mapping that was used, kept in the book so that the import can be repeated. */
  readonly mapping: { readonly name: string; readonly content: string } | null;
  readonly dryRun: boolean;
}

export interface ImportTools {
  readonly store: Store;
  readonly signature: Signature;
  /** Makes identities (UUIDv7). */
  readonly newId: () => string;
}

export interface ImportResult {
  readonly totals: readonly TableTotals[];
  readonly problems: readonly Problem[];
  /** True when the changes are on disk (also when there was nothing to change). */
  readonly written: boolean;
}

export async function importRows(request: ImportRequest, tools: ImportTools): Promise<ImportResult> {
  const { rows, readTotals } = request;
  // A row that could not be read is missing from the rows: comparing would only blame its neighbours.
  if (hasStop(request.readProblems)) return stoppedResult(request);
  const book = await BookInHand.load(tools.store, rows);
  const hasLengths = readTotals.some((total) => total.table === 'lengths' && total.read > 0);
  const changes = new Changes(tools.newId);
  const problems: Problem[] = [...request.readProblems];
  resolveWords(rows, book, changes, problems);
  resolvePlaces(rows, book, changes, problems);
  resolveTallies(rows, { book, changes, problems, hasLengths });
  resolveMeasured(rows, book, changes, problems);
  if (request.mapping !== null) changes.keep('mapping', book.mappings, request.mapping.name, request.mapping);
  if (hasStop(problems)) return stoppedResult({ ...request, readProblems: problems });
  if (!request.dryRun && changes.list.length > 0) {
    await tools.store.apply(changes.list, tools.signature, tools.newId);
  }
  return { totals: totalsOf(readTotals, changes), problems, written: !request.dryRun };
}

function hasStop(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'stop');
}

/** Nothing was written, so every row that was read stays outside. */
function stoppedResult({ readTotals, readProblems }: ImportRequest): ImportResult {
  const totals = readTotals.map(({ table, read }) => ({
    table,
    read,
    added: 0,
    changed: 0,
    unchanged: 0,
    refused: read,
  }));
  return { totals, problems: readProblems, written: false };
}

function totalsOf(readTotals: ImportRequest['readTotals'], changes: Changes): readonly TableTotals[] {
  return readTotals.map(({ table, read, refused }) => ({ table, read, ...changes.counted(table), refused }));
}
