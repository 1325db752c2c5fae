/**
 * The exchange room: text and bytes in, survey words and problems out, and back again.
 *
 * Here live the import tables column by column, the readers of CSV and XLSX, mapping files for other
 * people's layouts, and the export. Here must never live: the book, questions that need two tables at once
 * (they are asked where the rows are joined), files and folders themselves, sentences.
 */

import type { WithProblems } from '../survey/message.ts';
import type { TableName, TableRows } from '../survey/table-rows.ts';
import { afterReading } from './after-reading.ts';
import { mappedJobs } from './apply-mapping.ts';
import { gather, type LeftOut, type ReadTotals } from './gather.ts';
import type { Mapping } from './mapping.ts';
import { ownLayoutJobs } from './own-layout.ts';
import { problemList } from './problem-list.ts';
import { type Progress, readSheet } from './read-sheet.ts';
import { type NamedBytes, sheetsOf } from './sheets.ts';

export interface ReadTables {
  readonly rows: TableRows;
  readonly totals: Readonly<Record<TableName, ReadTotals>>;
  readonly leftOut: readonly LeftOut[];
}

/**
 * Reads the import tables from files: CSV files named like tables, workbooks with sheets named like tables,
 * or, with a mapping, files in somebody else's layout.
 *
 * Never throws on bad content: it gives back what it understood and every problem with file, row, column and
 * value. A row whose required cell cannot be read is not among the rows; its problem is a stop. A refused optional
 * cell counts as empty. At most 1000 problems of each code are kept, the others are counted.
 * Text is taken without the blanks around it. One pass over each file.
 */
export async function readTables(
  files: readonly NamedBytes[],
  mapping: Mapping | null = null,
  onProgress?: (progress: Progress) => void,
): Promise<WithProblems<ReadTables>> {
  const problems = problemList();
  const gathered = gather(problems);
  const sheets = await sheetsOf(files, problems);
  const jobs = mapping === null ? ownLayoutJobs(sheets, problems) : mappedJobs(mapping, sheets, problems);
  // Where a stop already says why nothing was read, saying that nothing was read would only be noise.
  if (jobs.length === 0 && !problems.all().some((problem) => problem.severity === 'stop')) {
    problems.add('nothing-to-read', () => ({ place: {}, value: null, parameters: {}, suggestion: null }));
  }
  for (const job of jobs) readSheet(job, gathered, problems, onProgress);
  const rows = mapping === null ? gathered.rows : afterReading(mapping, gathered);
  return { value: { rows, totals: gathered.totals, leftOut: gathered.leftOut }, problems: problems.all() };
}
