/** Finds the header row of a sheet, below titles and notes that people write above their tables. */

import type { ProblemList } from './problem-list.ts';
import type { SheetJob } from './read-sheet.ts';
import { isBlank } from './row-kind.ts';

export interface HeaderRow {
  readonly cells: readonly string[];
  readonly row: number;
}

/** Rows looked through for a header. Our own choice: more than any title block we can think of. */
const rowsSearched = 60;

/**
 * The row the mapping names, else the first row that has the columns that are needed, else the first row
 * that is not blank (whose missing columns are then reported). Null when there is none, `unreadable` when the file
 * could not be read. Rows above it are noted.
 */
export function findHeader(job: SheetJob, problems: ProblemList): HeaderRow | 'unreadable' | null {
  const rows: HeaderRow[] = [];
  const readable = job.sheet.eachRow((cells, row) => {
    if (!isBlank(cells)) rows.push({ cells: [...cells], row });
  }, job.headerRow ?? rowsSearched);
  if (!readable) return 'unreadable';
  const header =
    job.headerRow === null
      ? (rows.find(({ cells }) => job.isHeader(cells)) ?? rows[0])
      : rows.find(({ row }) => row === job.headerRow);
  if (header === undefined) return beyondSearch(job);
  const above = rows.filter(({ row }) => row < header.row);
  if (above.length > 0 && job.headerRow === null) reportAbove(above, job, problems);
  return header;
}

/** A sheet whose first sixty rows are blank is searched to its end. */
function beyondSearch(job: SheetJob): HeaderRow | null {
  if (job.headerRow !== null) return null;
  let found: HeaderRow | null = null;
  job.sheet.eachRow((cells, row) => {
    if (found === null && !isBlank(cells)) found = { cells: [...cells], row };
  });
  return found;
}

function reportAbove(above: readonly HeaderRow[], { sheet }: SheetJob, problems: ProblemList): void {
  const text = above[0]!.cells.find((cell) => cell.trim() !== '') ?? '';
  problems.add('rows-above-header', () => ({
    place: { ...sheet.place, row: above[0]!.row },
    value: text.trim().slice(0, 200),
    parameters: { rows: above.length },
    suggestion: null,
  }));
}
