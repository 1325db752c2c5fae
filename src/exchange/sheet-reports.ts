/** What is said about whole rows and columns of a sheet. */

import type { Parameters } from '../survey/message.ts';
import type { TableName } from '../survey/table-rows.ts';
import type { ProblemList } from './problem-list.ts';
import { columnLetters } from './sheet-marks.ts';
import type { Sheet } from './sheets.ts';

export function reportNothing(sheet: Sheet, problems: ProblemList): void {
  problems.add('nothing-to-read', () => ({
    place: sheet.place,
    value: null,
    parameters: {},
    suggestion: null,
  }));
}

export function reportTooMany(
  code: 'too-many-rows' | 'too-many-columns',
  parameters: Parameters,
  sheet: Sheet,
  problems: ProblemList,
): void {
  problems.add(code, () => ({ place: sheet.place, value: null, parameters, suggestion: null }));
}

export function reportRepeatedHeader(sheet: Sheet, row: number, problems: ProblemList): void {
  problems.add('repeated-header', () => ({
    place: { ...sheet.place, row },
    value: null,
    parameters: {},
    suggestion: null,
  }));
}

export function reportSecondTable(
  table: TableName | null,
  sheet: Sheet,
  row: number,
  problems: ProblemList,
): void {
  problems.add('second-table', () => ({
    place: { ...sheet.place, row },
    value: table,
    parameters: table === null ? {} : { table },
    suggestion: null,
  }));
}

/** Reports each column without a name once, where it first holds something; null when all have names. */
export function unnamedColumns(
  names: readonly string[],
  sheet: Sheet,
  problems: ProblemList,
): ((cells: readonly string[], row: number) => void) | null {
  const waiting = new Set([...names.keys()].filter((i) => names[i]!.trim() === ''));
  if (waiting.size === 0) return null;
  return (cells, row) => {
    for (const index of waiting) {
      const value = (cells[index] ?? '').trim();
      if (value === '') continue;
      waiting.delete(index);
      problems.add('unnamed-column', () => ({
        place: { ...sheet.place, row },
        value: value.slice(0, 200),
        parameters: { column: columnLetters(index + 1), number: index + 1 },
        suggestion: null,
      }));
    }
  };
}

export function reportTooLong(
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
