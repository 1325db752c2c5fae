/** Files into sheets: anything with a name and rows of cells, whether it came as CSV text or within a workbook. */

import type { Place } from '../survey/message.ts';
import { eachCsvRow, type VisitRow } from './csv-text.ts';
import type { ProblemList } from './problem-list.ts';
import { readWorkbook } from './workbook.ts';

export interface NamedBytes {
  /** File name, with or without folders before it. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface Sheet {
  /** What the table is recognised by: the file name without its ending, or the sheet name. */
  readonly name: string;
  readonly place: Place;
  readonly inWorkbook: boolean;
  /** Visits all rows, blank ones too, counted from 1; false when the file could not be read, which is then reported. */
  eachRow(visit: VisitRow): boolean;
}

/** The sheets of all files, in the order of the files. CSV text is decoded only when its rows are visited. */
export async function sheetsOf(files: readonly NamedBytes[], problems: ProblemList): Promise<Sheet[]> {
  const sheets: Sheet[] = [];
  for (const file of files) {
    const name = baseName(file.name);
    const ending = /\.([^.]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';
    if (textEndings.has(ending)) sheets.push(csvSheet(file, name, problems));
    else if (ending === 'xlsx' || ending === 'xlsm') sheets.push(...(await workbookSheets(file, problems)));
    else if (foreignWorkbooks.has(ending)) addFileProblem(problems, 'file-unreadable', file.name);
    else addFileProblem(problems, 'not-a-table', file.name);
  }
  return sheets;
}

const textEndings: ReadonlySet<string> = new Set(['csv', 'tsv', 'txt']);
const foreignWorkbooks: ReadonlySet<string> = new Set(['xls', 'xlsb', 'ods', 'numbers']);

export function baseName(path: string): string {
  return path.slice(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
}

function csvSheet(file: NamedBytes, name: string, problems: ProblemList): Sheet {
  return {
    name: name.replace(/\.[^.]+$/, ''),
    place: { file: file.name },
    inWorkbook: false,
    eachRow(visit) {
      const text = decodeUtf8(file.bytes);
      if (text === null) {
        addFileProblem(problems, 'file-not-utf8', file.name);
        return false;
      }
      for (const row of eachCsvRow(text, visit)) {
        problems.add('broken-quotes', () => ({
          place: { file: file.name, row },
          value: null,
          parameters: {},
          suggestion: null,
        }));
      }
      return true;
    },
  };
}

/** Null when the bytes are not UTF-8; other encodings are not guessed here. */
function decodeUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

async function workbookSheets(file: NamedBytes, problems: ProblemList): Promise<Sheet[]> {
  const sheets = await readWorkbook(file.bytes);
  if (sheets === null) addFileProblem(problems, 'file-unreadable', file.name);
  return (sheets ?? []).map((sheet) => ({
    name: sheet.name,
    place: { file: file.name, sheet: sheet.name },
    inWorkbook: true,
    eachRow(visit) {
      sheet.rows.forEach((cells, i) => {
        visit(cells, i + 1);
      });
      return true;
    },
  }));
}

function addFileProblem(
  problems: ProblemList,
  code: 'file-unreadable' | 'file-not-utf8' | 'not-a-table',
  file: string,
): void {
  problems.add(code, () => ({
    place: { file },
    value: file,
    parameters: { name: baseName(file), file },
    suggestion: null,
  }));
}
