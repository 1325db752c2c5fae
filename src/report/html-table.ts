/** A table of the page: caption, heads with their units, a scroll box of its own on a narrow screen. */

import { escapeText } from './escape.ts';

export interface TableColumn<Row> {
  readonly head: string;
  /** Null where the cell is covered by the reason of its row. */
  readonly cell: (row: Row) => string;
  readonly number?: boolean;
}

export interface TableWords<Row> {
  readonly caption: string;
  /** Where a row has no answer, the words that stand across its last cells, and from which cell on. */
  readonly across?: (row: Row) => string | null;
  readonly acrossFrom?: number;
  /** Few and short columns: the table is as wide as they are. */
  readonly slim?: boolean;
  /** Rows that follow each other with the same words here stand together under them. */
  readonly group?: (row: Row) => string;
  /** Rows set apart, as a total. */
  readonly strong?: (row: Row) => boolean;
}

/** The first column heads each row. */
export function htmlTable<Row>(
  columns: readonly TableColumn<Row>[],
  rows: readonly Row[],
  words: TableWords<Row>,
): string {
  const heads = columns.map(
    (column) => `<th scope="col"${numberClass(column)}>${escapeText(column.head)}</th>`,
  );
  const body = rows.map((row, i) => {
    const own = `<tr${words.strong?.(row) ? ' class="total"' : ''}>${cells(columns, row, words)}</tr>`;
    return `${groupHead(rows, i, { columns: columns.length, group: words.group })}${own}`;
  });
  const caption = escapeText(words.caption);
  return (
    `<div class="${classes(rows.length, words.slim)}" role="region" tabindex="0" aria-label="${caption}"><table><caption>${caption}</caption>` +
    `<thead><tr>${heads.join('')}</tr></thead>\n${words.group === undefined || rows.length === 0 ? '<tbody>' : ''}${body.join('\n')}</tbody></table></div>`
  );
}

/** Opens a body of its own, so that a group is kept on one sheet. */
function groupHead<Row>(
  rows: readonly Row[],
  i: number,
  { columns, group }: { readonly columns: number; readonly group: ((row: Row) => string) | undefined },
): string {
  const words = group?.(rows[i]!);
  if (words === undefined || (i > 0 && group?.(rows[i - 1]!) === words)) return '';
  return `${opensBody(rows, i, words, group!)}<tr class="group"><th scope="rowgroup" colspan="${columns}">${escapeText(words)}</th></tr>`;
}

function opensBody<Row>(rows: readonly Row[], i: number, words: string, group: (row: Row) => string): string {
  const end = rows.findIndex((row, j) => j > i && group(row) !== words);
  const isLong = (end === -1 ? rows.length : end) - i > longestWhole;
  return `${i === 0 ? '' : '</tbody>\n'}<tbody class="${isLong ? 'long' : 'group'}">`;
}

/** A longer group may be parted by the end of a sheet. */
const longestWhole = 8;

/** A short table is kept on one sheet. */
function classes(rows: number, slim = false): string {
  return `scroll${rows <= 14 ? ' whole' : ''}${slim ? ' slim' : ''}`;
}

function cells<Row>(columns: readonly TableColumn<Row>[], row: Row, words: TableWords<Row>): string {
  const across = words.across?.(row) ?? null;
  const last = across === null ? columns.length : (words.acrossFrom ?? columns.length);
  const shown = columns.slice(0, last).map((column, i) => {
    const text = escapeText(column.cell(row));
    return i === 0 ? `<th scope="row">${text}</th>` : `<td${numberClass(column)}>${text}</td>`;
  });
  if (across === null) return shown.join('');
  return `${shown.join('')}<td class="reason" colspan="${columns.length - last}">${escapeText(across)}</td>`;
}

function numberClass<Row>(column: TableColumn<Row>): string {
  return column.number === true ? ' class="number"' : '';
}
