/** Files into sheets: anything with a name and rows of cells, whether it came as CSV text or within a workbook. */

import type { Place, ProblemCode } from '../survey/message.ts';
import { delimiterOf, eachCsvRow, type VisitRow } from './csv-text.ts';
import { maxQuotedTextBytes, maxTextBytes, maxUnpackedBytes, maxWorkbookBytes } from './limits.ts';
import type { ProblemList } from './problem-list.ts';
import { type Encoding, encodingOf, textPieces } from './text-encoding.ts';
import { type FormulaCell, type Merge, readWorkbook, type WorkbookSheet } from './workbook.ts';

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
  readonly hidden: boolean;
  readonly merges: readonly Merge[];
  readonly formulas: readonly FormulaCell[];
  /** False where no cell can hold a comma, so that none has to be looked for. */
  mayHoldCommas(): boolean;
  /** Visits the rows, blank ones too, counted from 1; false when the file could not be read, which is then reported. */
  eachRow(visit: VisitRow, atMost?: number): boolean;
  /** Lets go of the text; it is read anew if somebody asks again. */
  close(): void;
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
  let open: OpenText | null = null;
  let reported = false;
  const text = (): OpenText => {
    open ??= openText(file.bytes);
    if (!reported) reportText(open, file, problems);
    reported = true;
    return open;
  };
  return {
    name: name.replace(/\.[^.]+$/, ''),
    place: { file: file.name },
    inWorkbook: false,
    hidden: false,
    merges: [],
    formulas: [],
    mayHoldCommas() {
      const [first] = text().pieces();
      return first !== undefined && (first.includes('"') || delimiterOf(first) !== ',');
    },
    eachRow(visit, atMost) {
      const { fault, pieces } = text();
      if (fault !== null) return false;
      const broken = eachCsvRow(pieces(), visit, atMost);
      // A part of the rows says nothing about the quotes of all.
      if (atMost === undefined) reportBrokenQuotes(broken, file.name, problems);
      return true;
    },
    close() {
      open = null;
    },
  };
}

interface OpenText {
  readonly fault: 'no text' | 'too large' | null;
  readonly encoding: Encoding | null;
  pieces(): Iterable<string>;
}

/** A short text is decoded once and kept, a long one anew, piece by piece, each time it is read. */
function openText(bytes: Uint8Array): OpenText {
  const none = { encoding: null, pieces: () => [] };
  if (bytes.length > maxTextBytes) return { ...none, fault: 'too large' };
  const encoding = encodingOf(bytes);
  if (encoding === null) return { ...none, fault: 'no text' };
  const whole = bytes.includes(0x22) || encoding.startsWith('utf-16') || !bytes.includes(0x0a);
  if (whole && bytes.length > maxQuotedTextBytes) return { ...none, fault: 'too large' };
  if (bytes.length > keptTextBytes)
    return { fault: null, encoding, pieces: () => textPieces(bytes, encoding, whole) };
  const kept = [...textPieces(bytes, encoding, true)];
  return { fault: null, encoding, pieces: () => kept };
}

const keptTextBytes = 64_000_000;

function reportText(text: OpenText, file: NamedBytes, problems: ProblemList): void {
  if (text.fault === 'no text') addFileProblem(problems, 'file-unreadable', file.name);
  if (text.fault === 'too large') reportTooLarge(file, maxQuotedTextBytes, problems);
  if (text.encoding === 'windows-1252') addFileProblem(problems, 'file-encoding-assumed', file.name);
}

function reportBrokenQuotes(rows: readonly number[], file: string, problems: ProblemList): void {
  for (const row of rows) {
    problems.add('broken-quotes', () => ({
      place: { file, row },
      value: null,
      parameters: {},
      suggestion: null,
    }));
  }
}

async function workbookSheets(file: NamedBytes, problems: ProblemList): Promise<Sheet[]> {
  const { sheets, fault } = await readWorkbook(file.bytes);
  if (fault === 'no workbook') addFileProblem(problems, 'file-unreadable', file.name);
  if (fault === 'too large') {
    const limit = file.bytes.length > maxWorkbookBytes ? maxWorkbookBytes : maxUnpackedBytes;
    reportTooLarge(file, limit, problems);
  }
  return sheets.map((sheet) => workbookSheet(file, sheet));
}

function workbookSheet(file: NamedBytes, sheet: WorkbookSheet): Sheet {
  const { name, hidden, merges, formulas } = sheet;
  return {
    name,
    place: { file: file.name, sheet: name },
    inWorkbook: true,
    hidden,
    merges,
    formulas,
    mayHoldCommas: () => true,
    eachRow(visit, atMost = sheet.rows.length) {
      sheet.rows.slice(0, atMost).forEach((cells, i) => {
        visit(cells, i + 1);
      });
      return true;
    },
    close() {},
  };
}

function reportTooLarge(file: NamedBytes, limit: number, problems: ProblemList): void {
  problems.add('file-too-large', () => ({
    place: { file: file.name },
    value: baseName(file.name),
    parameters: { name: baseName(file.name), limitMb: Math.round(limit / 1_000_000) },
    suggestion: null,
  }));
}

function addFileProblem(problems: ProblemList, code: ProblemCode, file: string): void {
  problems.add(code, () => ({
    place: { file },
    value: file,
    parameters: { name: baseName(file), file },
    suggestion: null,
  }));
}
