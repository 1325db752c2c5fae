/**
 * A table for the command line: columns in line, numbers to the right, a rule under the heads.
 * It wraps nothing: a line that is too long is better scrolled than torn.
 */

export interface Column<Row> {
  /** With its unit: "animals/ha". */
  readonly head: string;
  readonly cell: (row: Row) => string;
  readonly number?: boolean;
}

/** The table as lines joined by line ends, without one at the end; no rows give the heads alone. */
export function textTable<Row>(columns: readonly Column<Row>[], rows: readonly Row[]): string {
  const cells = rows.map((row) => columns.map((column) => oneLine(column.cell(row))));
  const widths = columns.map((column, i) =>
    Math.max(signs(column.head), ...cells.map((texts) => signs(texts[i]!))),
  );
  const lineOf = (texts: readonly string[]) =>
    texts
      .map((text, i) => pad(text, widths[i]!, columns[i]!.number === true))
      .join('  ')
      .trimEnd();
  const rule = widths.map((width) => '─'.repeat(width)).join('  ');
  return [lineOf(columns.map((column) => column.head)), rule, ...cells.map(lineOf)].join('\n');
}

function pad(text: string, width: number, toTheRight: boolean): string {
  const gap = ' '.repeat(Math.max(0, width - signs(text)));
  return toTheRight ? gap + text : text + gap;
}

/** Letters as seen: a letter with its macron counts once. */
function signs(text: string): number {
  return [...text.normalize('NFC')].filter((sign) => !/\p{Mark}/u.test(sign)).length;
}

/** Line ends and control characters would tear the table, or speak to the terminal. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').normalize('NFC');
}
