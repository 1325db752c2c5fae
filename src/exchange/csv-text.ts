/** CSV text into rows of cells and back. The one place that knows the CSV library. */

import Papa from 'papaparse';

export type VisitRow = (cells: readonly string[], row: number) => void;

/**
 * Visits every row of a CSV text, the header row being row 1, as a spreadsheet numbers them: a quoted line
 * break does not begin a row. Comma, semicolon and tab are told apart by the header row.
 * Returns the rows whose quotes are broken: what follows such a quote cannot be trusted.
 */
export function eachCsvRow(text: string, visit: VisitRow): readonly number[] {
  const brokenRows = new Set<number>();
  let row = 0;
  Papa.parse<string[]>(text, {
    delimiter: delimiterOf(text),
    step: (result) => {
      row++;
      if (result.errors.length > 0) brokenRows.add(row);
      visit(result.data, row);
    },
  });
  return [...brokenRows];
}

/** The sign that parts the header row most often; a comma when none does. */
export function delimiterOf(text: string): string {
  const header = /^\s*([^\r\n]*)/.exec(text)?.[1]?.replace(/"[^"]*"/g, '') ?? '';
  let best = ',';
  let bestTimes = header.split(',').length;
  for (const candidate of [';', '\t']) {
    const times = header.split(candidate).length;
    if (times > bestTimes) [best, bestTimes] = [candidate, times];
  }
  return best;
}

/** CSV text of rows of cells: comma, LF after every row, quotes only where RFC 4180 needs them. */
export function writeCsv(rows: Iterable<readonly string[]>): string {
  const lines: string[] = [];
  for (const cells of rows) lines.push(cells.map(quoted).join(','));
  return `${lines.join('\n')}\n`;
}

function quoted(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/**
 * Guards a text that a spreadsheet would run as a formula (it begins with = + - or @) with an apostrophe.
 * Apostrophes that already stand before such a sign get one more, so that `withoutGuard` always gives back what was written.
 */
export function withGuard(text: string): string {
  return /^'*[=+\-@]/.test(text) ? `'${text}` : text;
}

export function withoutGuard(text: string): string {
  return text.startsWith("'") && /^'+[=+\-@]/.test(text) ? text.slice(1) : text;
}
