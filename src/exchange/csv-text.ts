/** CSV text into rows of cells and back. The one place that knows the CSV library. */

import Papa from 'papaparse';

/** The cells are only lent: the next row is read into the same array. */
export type VisitRow = (cells: readonly string[], row: number) => void;

/**
 * Visits every row of a CSV text, the header row being row 1, as a spreadsheet numbers them: a quoted line
 * break does not begin a row. Comma, semicolon and tab are told apart by the header row. A text too long for
 * one string comes in pieces of whole lines. `atMost` stops after so many rows.
 * Returns the rows whose quotes are broken: what follows such a quote cannot be trusted.
 */
export function eachCsvRow(
  text: string | Iterable<string>,
  visit: VisitRow,
  atMost = Number.POSITIVE_INFINITY,
): readonly number[] {
  let row = 0;
  let delimiter: string | null = null;
  for (const piece of typeof text === 'string' ? [text] : text) {
    delimiter ??= delimiterOf(piece);
    const lines = withLineFeeds(piece);
    if (lines.includes('"') || lines === '') return eachQuotedRow(lines, delimiter, visit, atMost);
    row = eachPlainRow(lines, delimiter, visit, row, atMost);
    if (row >= atMost) break;
  }
  return [];
}

/** Old and mixed line ends outside quotes become LF; CRLF alone is left to the readers. */
function withLineFeeds(text: string): string {
  if (!text.includes('\r') || !/\r(?!\n)/.test(text)) return text;
  if (!text.includes('"')) return text.replace(/\r\n?/g, '\n');
  // Even pieces stand outside quotes; a doubled quote only opens an empty piece.
  return text
    .split('"')
    .map((piece, i) => (i % 2 === 0 ? piece.replace(/\r\n?/g, '\n') : piece))
    .join('"');
}

function eachQuotedRow(text: string, delimiter: string, visit: VisitRow, atMost: number): readonly number[] {
  const brokenRows = new Set<number>();
  let row = 0;
  Papa.parse<string[]>(text, {
    delimiter,
    step: (result, parser) => {
      row++;
      if (result.errors.length > 0) brokenRows.add(row);
      visit(result.data, row);
      if (row >= atMost) parser.abort();
    },
  });
  return [...brokenRows];
}

/** A million rows, each cell cut straight from the text, at a quarter of the library's time. A test holds the two together. */
function eachPlainRow(
  text: string,
  delimiter: string,
  visit: VisitRow,
  rowsBefore: number,
  atMost: number,
): number {
  const cells: string[] = [];
  let row = rowsBefore;
  for (let start = 0; start <= text.length && row < atMost; ) {
    const newline = text.indexOf('\n', start);
    const next = newline < 0 ? text.length : newline;
    const end = next > start && text[next - 1] === '\r' ? next - 1 : next;
    cells.length = cutLine(text, start, end, delimiter, cells);
    visit(cells, ++row);
    start = next + 1;
  }
  return row;
}

/** Cuts one line into `cells` and tells how many there are. */
function cutLine(text: string, start: number, end: number, delimiter: string, cells: string[]): number {
  let from = start;
  for (let i = 0; ; i++) {
    const cut = text.indexOf(delimiter, from);
    if (cut < 0 || cut >= end) {
      cells[i] = text.slice(from, end);
      return i + 1;
    }
    cells[i] = text.slice(from, cut);
    from = cut + 1;
  }
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
