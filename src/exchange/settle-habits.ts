/** Looks at every cell that could mean two things before the first one is read, and says what was decided. */

import type { ProblemList } from './problem-list.ts';
import type { SheetPlan } from './read-sheet.ts';
import { type PlannedColumn, textIn } from './row-plan.ts';
import type { Sheet } from './sheets.ts';

/** The rows of the table. */
export interface Rows {
  readonly headerRow: number;
  readonly lastRow: number;
}

export function settleHabits(
  plan: SheetPlan,
  sheet: Sheet,
  { headerRow, lastRow }: Rows,
  problems: ProblemList,
): void {
  const columns = plan.fills
    .flatMap((fill) =>
      fill.plan.flatMap((planned) => (planned.second === null ? [planned] : [planned, planned.second])),
    )
    .filter((planned) => planned.days !== null || (planned.commas !== null && planned.isNumber));
  if (columns.length === 0) return;
  sheet.eachRow((cells, row) => {
    if (row <= headerRow || row > lastRow) return;
    for (const planned of columns) {
      const text = textIn(planned, cells).trim();
      planned.days?.see(text);
      planned.commas?.see(text);
    }
  });
  reportCommas(columns, sheet, problems);
  for (const planned of columns) reportDays(planned, sheet, problems);
}

function reportCommas(columns: readonly PlannedColumn[], sheet: Sheet, problems: ProblemList): void {
  const commas = columns.find((planned) => planned.commas?.matters())?.commas;
  const habit = commas?.habit() ?? null;
  if (commas === undefined || commas === null || habit === null) return;
  problems.add('commas-decided', () => ({
    place: sheet.place,
    value: commas.proof(),
    parameters: { habit },
    suggestion: null,
  }));
}

function reportDays(planned: PlannedColumn, sheet: Sheet, problems: ProblemList): void {
  const habit = planned.days?.matters() ? planned.days.habit() : null;
  if (habit === null) return;
  problems.add('day-order-decided', () => ({
    place: { ...sheet.place, column: planned.label },
    value: planned.days!.proof(),
    parameters: { column: planned.label, habit: habit === 'D/M' ? 'day' : 'month' },
    suggestion: null,
  }));
}
