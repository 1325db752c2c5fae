/** What can be wrong with a file, a table or a cell: the offending value first, then what would be right. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsReading = {
  'nothing-to-read': 'there is nothing to read[ in {path}]; give the folder or the files with the tables',
  'no-such-file': 'there is no such file or folder; check the path',
  'file-unreadable':
    'this file cannot be read[: {why}]; save it as CSV in UTF-8 or as XLSX, and read it again',
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
    'this row has {cells} cells and the table {columns} {columns:column|columns} (beyond them: “{value}”); is there a comma in a text without quotes?',
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
  'file-too-large':
    '“{name}” is larger than this program opens, packed or unpacked (the limit is {limitMb} MB); save the tables as CSV files, or in parts',
  'too-many-rows': 'this file has more than {limit} rows; read it in parts',
  'too-many-columns': 'this table has {columns} columns, and the limit is {limit}; is this the right file?',
  'cell-too-long':
    '{column} holds {letters} letters, and a cell holds at most {limit}; is a quote open somewhere above?',
  'file-encoding-assumed':
    'this text is not written in UTF-8; it was read as Windows-1252 (Western European), so look at the letters with accents, or save it as CSV in UTF-8',
  'rows-above-header': '{rows} {rows:row|rows} above the header (“{value}”) {rows:was|were} not read',
  'repeated-header': 'the header row stands here again; it was not read as data',
  'second-table':
    'this row looks like the header of another table[ ({table})]; give each table a sheet or file of its own, or let a mapping name both with headerRow and lastRow',
  'footer-row':
    '“{value}” looks like a line below the table and not like data; take it out, or let a mapping leave it out with lastRow or leaveOut',
  'unnamed-column':
    'column {column} has no name in the header and was not read (it holds “{value}”); give it a name, or call it “#{number}” in a mapping',
  'hidden-sheet':
    'the sheet “{value}” is hidden and was not read; show it in the spreadsheet, or name it in a mapping',
  'merged-cells':
    'the cells {value} are merged, and only the first of them holds the value; part them and fill each, or let a mapping say mergedCells: "repeat"',
  'formula-values-read':
    '{cells} cells hold formulas; the values they showed when the file was saved were read',
  'formula-without-value':
    'the formula in {value} has no usable value; open the file in a spreadsheet, look at the cell and save it again',
  'comma-unclear':
    '{column} is “{value}”: {asDecimal} or {asThousands}? Write it without a comma, or let a mapping say decimal: "comma" or decimal: "point"',
  'commas-decided': 'commas in numbers were read as {habit} marks, because “{value}” stands in this file',
  'day-or-month-first':
    '{column} is “{value}”[: {dayFirst} if the day comes first][, {monthFirst} if the month comes first]; write year-month-day, or let a mapping say dateForms: "D/M/YYYY" or "M/D/YYYY"',
  'day-order-decided':
    'the days in {column} were read with the {habit} first, because of “{value}”; nothing in the column speaks against it',
  'day-range':
    '{column} is “{value}”, from {first} to {last}; write the day that counts, or let a mapping say dateRange: "first" or "last"',
  'number-approximate':
    '{column} is “{value}”, which is not one number[; did you mean {suggestion}?]; write the number that counts, or let a mapping say how such numbers are read (approximate)',
  'looks-like-missing':
    '{column} is {value}; was it measured, or does it stand for “not known”? A mapping can name such numbers under missing',
  'coordinates-differ':
    '{degrees} degrees stand here and “{written}” in {position}; which is right? The degrees were taken',
  'more-of-the-same': '{count} more of the kind “{code}” {count:is|are} not listed',
} as const satisfies Partial<Record<ProblemCode, string>>;
