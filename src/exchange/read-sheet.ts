/** Reads one sheet, once, into all the tables it fills. */

import type { TableName } from '../survey/table-rows.ts';
import type { Repeats } from './collect-rows.ts';
import { type Gathered, type LeftOut, reportLeftOut } from './gather.ts';
import type { ProblemList } from './problem-list.ts';
import type { RowPlan } from './row-plan.ts';
import type { Sheet } from './sheets.ts';
import type { CellContent } from './table-columns.ts';
import { takeRow } from './take-row.ts';

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

interface SheetPlan {
  readonly leaveOut: readonly LeaveOutRule[];
  readonly fills: readonly Fill[];
}

export interface SheetJob {
  readonly sheet: Sheet;
  /** Made from the header row, once it is met; null when the sheet cannot be used. */
  plan(header: readonly string[]): SheetPlan | null;
}

export interface Progress {
  readonly file: string;
  readonly rows: number;
}

const rowsBetweenReports = 20_000;

/** Reads all rows of a sheet. The first row that is not blank is the header. */
export function readSheet(
  job: SheetJob,
  gathered: Gathered,
  problems: ProblemList,
  onProgress?: (progress: Progress) => void,
): void {
  const { sheet } = job;
  const file = sheet.place.file ?? sheet.name;
  let width = -1;
  let reader: SheetReader | null = null;
  let rows = 0;
  const readable = sheet.eachRow((cells, row) => {
    if (isBlank(cells)) return;
    if (width < 0) {
      width = widthOf(cells);
      const plan = job.plan(cells.slice(0, width));
      reader = plan === null ? null : sheetReader(plan, sheet, gathered, problems);
      return;
    }
    if (reader === null) return;
    if (cells.length > width && !isBlank(cells.slice(width)))
      reportTooLong(cells, width, sheet, row, problems);
    reader.take(cells, row);
    rows++;
    if (rows % rowsBetweenReports === 0) onProgress?.({ file, rows });
  });
  if (readable && width < 0) {
    problems.add('nothing-to-read', () => ({
      place: sheet.place,
      value: null,
      parameters: {},
      suggestion: null,
    }));
  }
  (reader as SheetReader | null)?.finish();
  onProgress?.({ file, rows });
}

interface SheetReader {
  take(cells: readonly string[], row: number): void;
  finish(): void;
}

function sheetReader(plan: SheetPlan, sheet: Sheet, gathered: Gathered, problems: ProblemList): SheetReader {
  const values = plan.fills.map((): CellContent[] => []);
  const leftOut = new Map<string, LeftOut>();

  function refuse(rule: string, table: TableName | null): void {
    const key = `${table}\u0000${rule}`;
    const before = leftOut.get(key)?.rows ?? 0;
    leftOut.set(key, { rule, file: sheet.place.file ?? sheet.name, table, rows: before + 1 });
  }

  function count(fill: Fill, refused: boolean): void {
    if (refused && fill.repeats.are === 'the same') return;
    const totals = gathered.totals[fill.table];
    totals.read++;
    if (refused) totals.refused++;
  }

  return {
    take(cells, row) {
      const sheetRule = ruleFor(plan.leaveOut, cells);
      if (sheetRule !== null) refuse(sheetRule, null);
      for (let i = 0; i < plan.fills.length; i++) {
        const fill = plan.fills[i]!;
        if (fill.concerns !== null && !fill.concerns(cells)) continue;
        const rule = sheetRule ?? ruleFor(fill.leaveOut, cells);
        if (rule !== null) {
          if (sheetRule === null) refuse(rule, fill.table);
          count(fill, true);
        } else if (takeRow(fill, cells, values[i]!, { sheet: sheet.place, row }, gathered, problems)) {
          count(fill, false);
        }
      }
    },
    finish() {
      for (const entry of leftOut.values()) {
        gathered.leftOut.push(entry);
        reportLeftOut(entry, sheet.place, problems);
      }
    },
  };
}

function ruleFor(rules: readonly LeaveOutRule[], cells: readonly string[]): string | null {
  for (const rule of rules) if (rule.applies(cells)) return rule.rule;
  return null;
}

/** Cells up to the last named column: trailing commas make no columns. */
function widthOf(header: readonly string[]): number {
  let width = header.length;
  while (width > 0 && header[width - 1]!.trim() === '') width--;
  return width;
}

function isBlank(cells: readonly string[]): boolean {
  for (const cell of cells) if (cell.trim() !== '') return false;
  return true;
}

function reportTooLong(
  cells: readonly string[],
  width: number,
  sheet: Sheet,
  row: number,
  problems: ProblemList,
): void {
  problems.add('row-too-long', () => ({
    place: { ...sheet.place, row },
    value: cells
      .slice(width)
      .filter((cell) => cell.trim() !== '')
      .join(', '),
    parameters: { cells: cells.length, columns: width },
    suggestion: null,
  }));
}
