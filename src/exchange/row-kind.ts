/** Tells rows of data from rows that only look like them: headers that come again, another table's header, footers. */

import { type TableName, tableNames } from '../survey/table-rows.ts';
import { namesRead } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

export type RowKind =
  | { readonly is: 'data' }
  | { readonly is: 'header again' }
  | { readonly is: 'another header'; readonly table: TableName | null };

/**
 * Looks at the cell under the first named column: only where it is the name of a column can the row be a
 * header. Equal cells down the column are looked at once, so that a million rows cost a comparison each.
 */
export function rowKinds(
  header: readonly string[],
  isHeader: (cells: readonly string[]) => boolean,
): (cells: readonly string[]) => RowKind {
  const own = header.map(plain);
  const probe = Math.max(
    own.findIndex((name) => name !== ''),
    0,
  );
  let last = '';
  let suspicious = false;
  return (cells) => {
    const cell = cells[probe] ?? '';
    if (cell !== last) {
      last = cell;
      const name = plain(cell);
      suspicious = name !== '' && (knownColumns.has(name) || own.includes(name));
    }
    return suspicious ? kindOf(cells, own, isHeader) : data;
  };
}

const data: RowKind = { is: 'data' };

function kindOf(
  cells: readonly string[],
  own: readonly string[],
  isHeader: (cells: readonly string[]) => boolean,
): RowKind {
  const names = cells.map(plain);
  // More names beside the own ones make it the header of a wider table.
  const beyond = names.slice(own.length).some((name) => name !== '');
  if (!beyond && own.every((name, i) => name === (names[i] ?? ''))) return { is: 'header again' };
  const table = tableHeadedBy(names);
  if (table !== null) return { is: 'another header', table };
  return isMostly(names, own) && isHeader(cells) ? { is: 'another header', table: null } : data;
}

/** The table with the most needed columns among those whose columns all stand here; a row of data may hold one such word. */
function tableHeadedBy(names: readonly string[]): TableName | null {
  const tables = tableNames.filter((one) => hasColumnsOf(one, names) && isMostly(names, columnNamesOf(one)));
  const needed = (one: TableName) => tableDefinitions[one].columns.filter((c) => c.required).length;
  return tables.sort((a, b) => needed(b) - needed(a))[0] ?? null;
}

function isMostly(names: readonly string[], columns: readonly string[]): boolean {
  const filled = names.filter((name) => name !== '');
  return filled.filter((name) => columns.includes(name)).length * 2 > filled.length;
}

/** True when every column that the table needs stands in the row. */
export function hasColumnsOf(table: TableName, cells: readonly string[]): boolean {
  const names = new Set(cells.map(plain));
  return tableDefinitions[table].columns.every(
    (definition) =>
      !definition.required ||
      names.has(definition.column) ||
      (definition.alternative !== undefined && names.has(definition.alternative.column)),
  );
}

function columnNamesOf(table: TableName): string[] {
  return namesRead(tableDefinitions[table]);
}

const knownColumns: ReadonlySet<string> = new Set(tableNames.flatMap(columnNamesOf));

function plain(cell: string): string {
  return cell.trim().toLowerCase();
}

/** A sum, a remark, a legend below the table: a lone text, or a row that begins with such a word. Data have more. */
export function looksLikeFooter(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell.trim() !== '');
  if (filled.length === 1) return true;
  const first = filled[0]?.trim() ?? '';
  return /^(grand |sub-?)?(totals?|sum|mean|average|notes?|remarks?|source|legend|comments?)\b/i.test(first);
}

export function isBlank(cells: readonly string[]): boolean {
  for (const cell of cells) if (cell.trim() !== '') return false;
  return true;
}
