/** Files in our own layout: each sheet is recognised by its name and read column by column. */

import { nearestName } from '../survey/nearest-name.ts';
import { type TableName, tableNames } from '../survey/table-rows.ts';
import type { ProblemList } from './problem-list.ts';
import type { SheetJob } from './read-sheet.ts';
import { hasColumnsOf } from './row-kind.ts';
import { planOwnLayout } from './row-plan.ts';
import type { Sheet } from './sheets.ts';
import { tableDefinitions } from './table-definitions.ts';

/** One job per recognised sheet, in the order of the tables whatever the order of the files. */
export function ownLayoutJobs(sheets: readonly Sheet[], problems: ProblemList): SheetJob[] {
  const jobs = new Map<TableName, SheetJob[]>();
  for (const sheet of sheets) {
    if (sheet.hidden) {
      reportHidden(sheet, problems);
      continue;
    }
    const table = sheet.name.trim().toLowerCase();
    if (!isTableName(table)) reportUnknownTable(sheet, problems);
    else jobs.set(table, [...(jobs.get(table) ?? []), ownLayoutJob(table, sheet, problems)]);
  }
  return tableNames.flatMap((table) => jobs.get(table) ?? []);
}

export function ownLayoutJob(table: TableName, sheet: Sheet, problems: ProblemList): SheetJob {
  return {
    sheet,
    headerRow: null,
    lastRow: null,
    isHeader: (cells) => hasColumnsOf(table, cells),
    plan(header) {
      const plan = planOwnLayout(tableDefinitions[table], header, sheet, problems);
      if (plan === null) return null;
      const read = plan.flatMap((planned) => [planned.index, planned.second?.index ?? -1]);
      return {
        leaveOut: [],
        asks: [],
        fills: [{ table, plan, concerns: null, leaveOut: [], repeats: { are: 'refused' } }],
        columns: new Set(read.filter((index) => index >= 0)),
        afterHabits() {},
        afterRows() {},
      };
    },
  };
}

/** A hidden sheet is often an older copy: it is read only when a mapping names it. */
export function reportHidden(sheet: Sheet, problems: ProblemList): void {
  problems.add('hidden-sheet', () => ({
    place: sheet.place,
    value: sheet.name,
    parameters: {},
    suggestion: null,
  }));
}

/**
 * A file with an unknown name is a stop. A workbook may hold other sheets, which are noted, unless the name is so
 * near to a table's that leaving it out would lose data.
 */
function reportUnknownTable(sheet: Sheet, problems: ProblemList): void {
  const suggestion = nearestName(sheet.name, tableNames);
  const code = sheet.inWorkbook && suggestion === null ? 'not-a-table' : 'unknown-table';
  problems.add(code, () => ({
    place: sheet.place,
    value: sheet.name,
    parameters: { name: sheet.name, file: sheet.place.file ?? '', tables: tableNames.join(', ') },
    suggestion,
  }));
}

function isTableName(name: string): name is TableName {
  return (tableNames as readonly string[]).includes(name);
}
