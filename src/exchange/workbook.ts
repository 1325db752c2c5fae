/** XLSX bytes into rows of cells and back. The one place that knows the spreadsheet library. */

import { readXlsx, writeXlsx } from 'hucre/xlsx';

export interface WorkbookSheet {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

/** The sheets of a workbook, every cell as the text a person would type; null when the bytes are no workbook. */
export async function readWorkbook(bytes: Uint8Array): Promise<readonly WorkbookSheet[] | null> {
  try {
    const workbook = await readXlsx(bytes);
    return workbook.sheets.map((sheet) => ({
      name: sheet.name,
      rows: sheet.rows.map((row) => row.map(textOfCell)),
    }));
  } catch {
    return null;
  }
}

type Cell = string | number | boolean | Date | null;

function textOfCell(cell: Cell): string {
  if (cell === null || cell === undefined) return '';
  if (cell instanceof Date) return textOfDate(cell);
  return String(cell);
}

/** Date cells carry no time zone; the library gives them as UTC. A time of day alone stands at the end of 1899. */
function textOfDate(date: Date): string {
  if (Number.isNaN(date.getTime())) return '';
  const toTheSecond = new Date(Math.round(date.getTime() / 1000) * 1000).toISOString();
  const [day, time] = [toTheSecond.slice(0, 10), toTheSecond.slice(11, 19)];
  if (date.getUTCFullYear() < 1900) return time;
  return time === '00:00:00' ? day : `${day} ${time}`;
}

export interface SheetToWrite {
  readonly name: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** One workbook, a sheet per table, the header row frozen. Texts are text cells and never formulas. */
export async function writeWorkbookBytes(sheets: readonly SheetToWrite[]): Promise<Uint8Array> {
  return writeXlsx({
    sheets: sheets.map((sheet) => ({
      name: sheet.name,
      rows: [[...sheet.header], ...sheet.rows.map((row) => row.map(escapedCell))],
      freezePane: { rows: 1 },
    })),
  });
}

/** `_x000D_` is how XLSX writes a control sign: a text that happens to read so must be escaped itself. */
function escapedCell(cell: string | number | null): string | number | null {
  return typeof cell === 'string' ? cell.replace(/_x(?=[0-9A-Fa-f]{4}_)/g, '_x005F_x') : cell;
}
