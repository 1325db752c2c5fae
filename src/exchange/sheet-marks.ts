/** What a workbook's cells carry besides their values: formulas and merged areas. */

import type { ProblemList } from './problem-list.ts';
import type { Sheet } from './sheets.ts';

/** Where data stand: from the header row on, in the columns that are read (counted from 0). */
export interface DataArea {
  readonly headerRow: number;
  readonly lastRow: number;
  readonly columns: ReadonlySet<number>;
}

/** Notes formulas whose value was read; asks about formulas without one and about merged cells. */
export function reportMarks(sheet: Sheet, area: DataArea, problems: ProblemList): void {
  const formulas = sheet.formulas.filter(({ row, column }) => isWithin(row, column, area));
  const withValue = formulas.filter(({ gives }) => gives === 'a value');
  if (withValue.length > 0) {
    problems.add('formula-values-read', () => ({
      place: sheet.place,
      value: cellName(withValue[0]!.row, withValue[0]!.column),
      parameters: { cells: withValue.length },
      suggestion: null,
    }));
  }
  for (const { row, column, gives } of formulas) {
    if (gives === 'a value') continue;
    problems.add('formula-without-value', () => ({
      place: { ...sheet.place, row },
      value: cellName(row, column),
      parameters: {},
      suggestion: null,
    }));
  }
  reportMerges(sheet, area, problems);
}

function reportMerges(sheet: Sheet, area: DataArea, problems: ProblemList): void {
  for (const merge of sheet.merges) {
    const columns = [...area.columns].some((c) => c + 1 >= merge.firstColumn && c + 1 <= merge.lastColumn);
    if (!columns || merge.lastRow < area.headerRow || merge.firstRow > area.lastRow) continue;
    const value = `${cellName(merge.firstRow, merge.firstColumn)}:${cellName(merge.lastRow, merge.lastColumn)}`;
    problems.add('merged-cells', () => ({
      place: { ...sheet.place, row: merge.firstRow },
      value,
      parameters: {},
      suggestion: null,
    }));
  }
}

function isWithin(row: number, column: number, area: DataArea): boolean {
  return row >= area.headerRow && row <= area.lastRow && area.columns.has(column - 1);
}

/** The name a spreadsheet gives a cell: B7. Rows and columns from 1. */
export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

export function columnLetters(column: number): string {
  let letters = '';
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** The same sheet with the value of each merged area standing in all its cells. */
export function withMergesRepeated(sheet: Sheet): Sheet {
  if (sheet.merges.length === 0) return sheet;
  return {
    ...sheet,
    merges: [],
    eachRow(visit, atMost) {
      const values = new Map<(typeof sheet.merges)[number], string>();
      return sheet.eachRow((cells, row) => {
        const filled = [...cells];
        for (const merge of sheet.merges) {
          if (row < merge.firstRow || row > merge.lastRow) continue;
          if (row === merge.firstRow) values.set(merge, cells[merge.firstColumn - 1] ?? '');
          for (let column = merge.firstColumn; column <= merge.lastColumn; column++) {
            while (filled.length < column) filled.push('');
            filled[column - 1] = values.get(merge) ?? '';
          }
        }
        visit(filled, row);
      }, atMost);
    },
  };
}
