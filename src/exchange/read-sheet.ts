/** Reads one sheet, once, into all the tables it fills. */

import type { TableName } from '../survey/table-rows.ts';
import type { Repeats } from './collect-rows.ts';
import { findHeader, type HeaderRow } from './find-header.ts';
import { type Gathered, type LeftOut, reportLeftOut } from './gather.ts';
import { maxColumns, maxRows } from './limits.ts';
import type { ProblemList } from './problem-list.ts';
import { isBlank, rowKinds } from './row-kind.ts';
import type { RowPlan } from './row-plan.ts';
import { settleHabits } from './settle-habits.ts';
import { reportMarks } from './sheet-marks.ts';
import { sheetReader } from './sheet-reader.ts';
import {
  reportNothing,
  reportRepeatedHeader,
  reportSecondTable,
  reportTooLong,
  reportTooMany,
  unnamedColumns,
} from './sheet-reports.ts';
import type { Sheet } from './sheets.ts';

/** A named reason why a row of the file is not taken. */
export interface LeaveOutRule {
  readonly rule: string;
  applies(cells: readonly string[]): boolean;
}

/** How one table is filled from the rows of a sheet. */
export interface Fill {
  readonly table: TableName;
  readonly plan: RowPlan;
  /** Rows this table has nothing to do with; null when it takes them all. */
  readonly concerns: ((cells: readonly string[]) => boolean) | null;
  readonly leaveOut: readonly LeaveOutRule[];
  readonly repeats: Repeats;
}

export interface AskRule {
  readonly rule: string;
  /** What to show of the row that a person should look at; null when the rule is not about it. */
  asks(cells: readonly string[]): string | null;
}

export interface SheetPlan {
  readonly leaveOut: readonly LeaveOutRule[];
  readonly fills: readonly Fill[];
  readonly asks: readonly AskRule[];
  /** Positions of the columns that are read. */
  readonly columns: ReadonlySet<number>;
  /** Called once the cells were looked at and before they are read. */
  afterHabits(): void;
  /** Says what was found while reading; called once, after the last row. */
  afterRows(): void;
}

export interface SheetJob {
  readonly sheet: Sheet;
  /** Where the mapping says that header and last row are; null when it does not. */
  readonly headerRow: number | null;
  readonly lastRow: number | null;
  /** True when the row has every column that is needed. */
  isHeader(cells: readonly string[]): boolean;
  /** Made from the header row, once it is met; null when the sheet cannot be used. */
  plan(header: readonly string[], row: number): SheetPlan | null;
}

export interface Progress {
  readonly file: string;
  readonly rows: number;
}

const rowsBetweenReports = 20_000;

/** Reads all rows of a sheet below its header. */
export function readSheet(
  job: SheetJob,
  gathered: Gathered,
  problems: ProblemList,
  onProgress?: (progress: Progress) => void,
): void {
  const { sheet } = job;
  const file = sheet.place.file ?? sheet.name;
  let rows = 0;
  const header = findHeader(job, problems);
  if (header === null) reportNothing(sheet, problems);
  else if (header !== 'unreadable') {
    rows = readBelow(header, job, gathered, problems, (done) => onProgress?.({ file, rows: done }));
  }
  sheet.close();
  onProgress?.({ file, rows });
}

/** Reads the rows below the header and tells how many there were. */
function readBelow(
  header: HeaderRow,
  job: SheetJob,
  gathered: Gathered,
  problems: ProblemList,
  onRows: (rows: number) => void,
): number {
  const { sheet } = job;
  const width = widthOf(header.cells);
  const names = header.cells.slice(0, width);
  if (width > maxColumns) {
    reportTooMany('too-many-columns', { columns: width, limit: maxColumns }, sheet, problems);
    return 0;
  }
  const plan = job.plan(names, header.row);
  if (plan === null) return 0;
  const lastRow = job.lastRow ?? Number.POSITIVE_INFINITY;
  reportMarks(sheet, { headerRow: header.row, lastRow, columns: plan.columns }, problems);
  settleHabits(plan, sheet, { headerRow: header.row, lastRow }, problems);
  plan.afterHabits();
  const reader = sheetReader(plan, sheet, gathered, problems);
  const kindOf = rowKinds(names, (cells) => job.isHeader(cells));
  const unnamed = unnamedColumns(names, sheet, problems);
  const count = { rows: 0, below: 0, headers: 0, ended: false };
  sheet.eachRow((cells, row) => {
    if (row <= header.row || count.ended || isBlank(cells)) return;
    if (row > lastRow) {
      count.below++;
      return;
    }
    const kind = kindOf(cells);
    if (kind.is === 'header again') {
      reportRepeatedHeader(sheet, row, problems);
      return;
    }
    if (kind.is === 'another header') {
      reportSecondTable(kind.table, sheet, row, problems);
      count.ended = true;
      return;
    }
    if (cells.length > width && !isBlank(cells.slice(width)))
      reportTooLong(cells, width, sheet, row, problems);
    if (unnamed !== null) unnamed(cells, row);
    reader.take(cells, row);
    count.rows++;
    if (count.rows % rowsBetweenReports === 0) onRows(count.rows);
    if (count.rows > maxRows) {
      reportTooMany('too-many-rows', { limit: maxRows }, sheet, problems);
      count.ended = true;
    }
  });
  reader.finish();
  plan.afterRows();
  if (count.below > 0) reportBelow(count.below, sheet, gathered, problems);
  return count.rows;
}

/** Rows below the last one that the mapping names are left out by that very rule. */
function reportBelow(rows: number, sheet: Sheet, gathered: Gathered, problems: ProblemList): void {
  const entry: LeftOut = { rule: 'lastRow', file: sheet.place.file ?? sheet.name, table: null, rows };
  gathered.leftOut.push(entry);
  reportLeftOut(entry, sheet.place, problems);
}

/** Cells up to the last named column: trailing commas make no columns. */
function widthOf(header: readonly string[]): number {
  let width = header.length;
  while (width > 0 && header[width - 1]!.trim() === '') width--;
  return width;
}
