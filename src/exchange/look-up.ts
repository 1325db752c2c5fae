/** Lists of other people's words: a synonyms file, a table of passes. Files named in a mapping, read beside the data. */

import { nearestName } from '../survey/nearest-name.ts';
import type { ProblemList } from './problem-list.ts';
import { isBlank } from './row-kind.ts';
import { reportMissingColumn } from './row-plan.ts';
import { baseName, type Sheet } from './sheets.ts';

export interface ListFile {
  readonly file: string;
  readonly sheet?: string | undefined;
}

/** Finds the text in one column of a list by the texts in others; undefined when no row agrees. */
export type LookUp = (key: readonly string[]) => string | undefined;

export interface LookUpRequest {
  readonly list: ListFile;
  readonly by: readonly string[];
  readonly take: string;
  readonly ignoreCase: boolean;
}

/** Makes look-ups; null when the list or a column of it is not there, which is then reported. */
export type MakeLookUp = (request: LookUpRequest) => LookUp | null;

export function lookUpMaker(sheets: readonly Sheet[], problems: ProblemList): MakeLookUp {
  const made = new Map<string, LookUp | null>();
  return (request) => {
    const key = JSON.stringify(request);
    const known = made.get(key);
    if (known !== undefined) return known;
    const sheet = sheets.find((one) => isOf(request.list, one));
    const lookUp = sheet === undefined ? null : readList(sheet, request, problems);
    if (sheet === undefined) reportListMissing(request.list, sheets, problems);
    made.set(key, lookUp);
    return lookUp;
  };
}

export function isOf(list: ListFile, sheet: Sheet): boolean {
  const file = baseName(sheet.place.file ?? '').toLowerCase();
  return file === list.file.toLowerCase() && (list.sheet === undefined || list.sheet === sheet.place.sheet);
}

/** Of rows that agree the first counts. */
function readList(sheet: Sheet, request: LookUpRequest, problems: ProblemList): LookUp | null {
  const texts = new Map<string, string>();
  const fold = (text: string) => (request.ignoreCase ? text.trim().toLowerCase() : text.trim());
  const keyOf = (parts: readonly string[]) => parts.map(fold).join('\u0000');
  let positions: readonly number[] | null = null;
  let takeAt = -1;
  sheet.eachRow((cells) => {
    if (isBlank(cells)) return;
    if (positions === null) {
      const header = cells.map((cell) => cell.trim().toLowerCase());
      const find = (column: string) => header.indexOf(column.trim().toLowerCase());
      positions = request.by.map(find);
      takeAt = find(request.take);
      const missing = [...request.by, request.take].filter((column) => find(column) < 0);
      for (const column of missing) reportMissingColumn(column, header, sheet, problems);
      return;
    }
    const key = keyOf(positions.map((index) => cells[index] ?? ''));
    if (!texts.has(key)) texts.set(key, (cells[takeAt] ?? '').trim());
  });
  sheet.close();
  if (positions === null || takeAt < 0 || (positions as readonly number[]).includes(-1)) return null;
  return (parts) => texts.get(keyOf(parts));
}

function reportListMissing(list: ListFile, sheets: readonly Sheet[], problems: ProblemList): void {
  problems.add('mapping-file-missing', () => ({
    place: {},
    value: list.file,
    parameters: { file: list.file, sheet: list.sheet ?? '' },
    suggestion: nearestName(
      list.file,
      sheets.map((sheet) => baseName(sheet.place.file ?? '')),
    ),
  }));
}
