/** XLSX bytes into rows of cells and back. The one place that knows the spreadsheet library. */

import { readXlsx, writeXlsx, type Cell as XlsxCell, type Sheet as XlsxSheet } from 'hucre/xlsx';
import { maxWorkbookBytes } from './limits.ts';
import { faultOfZip } from './zip-directory.ts';

export interface WorkbookSheet {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
  readonly hidden: boolean;
  readonly merges: readonly Merge[];
  /** Cells that hold a formula: rows and columns from 1. */
  readonly formulas: readonly FormulaCell[];
}

/** Rows and columns from 1, both ends included. */
export interface Merge {
  readonly firstRow: number;
  readonly lastRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
}

export interface FormulaCell {
  readonly row: number;
  readonly column: number;
  /** Nothing: the file was made by a program that wrote the formula and not its value. Error: `#REF!` and the like. */
  readonly gives: 'a value' | 'nothing' | 'an error';
}

export type WorkbookFault = 'no workbook' | 'too large';

/** The sheets of a workbook, every cell as the text a person would type, or why there are none. */
export async function readWorkbook(
  bytes: Uint8Array,
): Promise<{ readonly sheets: readonly WorkbookSheet[]; readonly fault: WorkbookFault | null }> {
  const fault = bytes.length > maxWorkbookBytes ? 'too large' : faultOfZip(bytes);
  if (fault !== null) return { sheets: [], fault: fault === 'not a zip' ? 'no workbook' : fault };
  try {
    const workbook = await readXlsx(bytes);
    return { sheets: workbook.sheets.map(sheetOf), fault: null };
  } catch (error) {
    const grew = /exceeds limit|possible zip bomb|cells|too large/i.test(String(error));
    return { sheets: [], fault: grew ? 'too large' : 'no workbook' };
  }
}

function sheetOf(sheet: XlsxSheet): WorkbookSheet {
  return {
    name: sheet.name,
    rows: sheet.rows.map((row) => row.map(textOfCell)),
    hidden: sheet.hidden === true || sheet.veryHidden === true,
    merges: (sheet.merges ?? []).map((merge) => ({
      firstRow: merge.startRow + 1,
      lastRow: merge.endRow + 1,
      firstColumn: merge.startCol + 1,
      lastColumn: merge.endCol + 1,
    })),
    formulas: [...(sheet.cells ?? [])].flatMap(([at, cell]) => formulaAt(at, cell)),
  };
}

function formulaAt(at: string, cell: XlsxCell): FormulaCell[] {
  const isError = cell.type === 'error';
  if (cell.formula === undefined && !isError) return [];
  const [row, column] = at.split(',').map((part) => Number(part) + 1);
  const empty = cell.value === null || cell.value === '';
  const gives = isError ? 'an error' : empty ? 'nothing' : 'a value';
  return [{ row: row!, column: column!, gives }];
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
