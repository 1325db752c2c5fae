/** What can be wrong with a file, a table or a cell: the offending value first, then what would be right. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsReading = {
  'nothing-to-read': 'there is nothing to read[ in {path}]; give the folder or the files with the tables',
  'no-such-file': 'there is no such file or folder; check the path',
  'file-unreadable':
    'this file cannot be read[: {why}]; save it as CSV in UTF-8 or as XLSX, and read it again',
  'file-not-utf8':
    'this text is not written in UTF-8, so its special letters would be misread; save it as CSV in UTF-8',
  'broken-quotes':
    'the quotes in this row do not close; every text in quotes needs one at its start and one at its end',
  'unknown-table':
    '“{value}” is not the name of a table[; did you mean {suggestion}?][; the tables are {tables}]',
  'not-a-table': '“{value}” is not one of the tables and was not read',
  'missing-column':
    'the column {column} is missing, and every row of this table needs it[; is it “{suggestion}”?]',
  'unknown-column':
    'the column “{value}” is not one this table knows, and it was not read[; did you mean {suggestion}?]',
  'repeated-column': 'the column “{value}” stands here twice; keep one of them',
  'row-too-long':
    'this row has {cells} cells and the table {columns} columns (beyond them: “{value}”); is there a comma in a text without quotes?',
  'missing-value': '{column} is empty, and this row needs it',
  'not-a-number': '{column} is “{value}”, which is not a number[; did you mean {suggestion}?]',
  'number-out-of-range': '{column} is {value}; it should be {range}[; did you mean {suggestion}?]',
  'not-a-whole-number': '{column} is {value}; it should be a whole number[; did you mean {suggestion}?]',
  'not-a-date':
    '{column} is “{value}”, which is not a date; write year-month-day, as 2026-03-09[; did you mean {suggestion}?]',
  'not-a-time':
    '{column} is “{value}”, which is not a time; write hours and minutes, as 07:45[; did you mean {suggestion}?]',
  'not-one-of': '{column} is “{value}”; it should be one of: {options}[; did you mean {suggestion}?]',
  'cover-not-understood':
    '{column} has “{part}”; write each cover as name:percent, with ; between them, as sand:40; rubble:60',
  'more-of-the-same': '{count} more of the kind “{code}” are not listed',
} as const satisfies Partial<Record<ProblemCode, string>>;
