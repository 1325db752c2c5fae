/** Takes the rows of one sheet into all the tables it fills, and counts what the rules of a mapping did with them. */

import type { TableName } from '../survey/table-rows.ts';
import { type Gathered, type LeftOut, reportLeftOut } from './gather.ts';
import type { ProblemList } from './problem-list.ts';
import type { Fill, LeaveOutRule, SheetPlan } from './read-sheet.ts';
import type { Sheet } from './sheets.ts';
import type { CellContent } from './table-columns.ts';
import { placeNames, takeRow } from './take-row.ts';

interface SheetReader {
  take(cells: readonly string[], row: number): void;
  finish(): void;
}

export function sheetReader(
  plan: SheetPlan,
  sheet: Sheet,
  gathered: Gathered,
  problems: ProblemList,
): SheetReader {
  const values = plan.fills.map((): CellContent[] => []);
  const leftOut = new Map<string, LeftOut>();
  const together = new Map<Fill, number>();

  function refuse(rule: string, table: TableName | null): void {
    const key = `${table}\u0000${rule}`;
    const before = leftOut.get(key)?.rows ?? 0;
    leftOut.set(key, { rule, file: sheet.place.file ?? sheet.name, table, rows: before + 1 });
  }

  function count(fill: Fill, refused: boolean): void {
    if (refused && fill.repeats.are === 'the same') return;
    const totals = gathered.totals[fill.table];
    totals.read++;
    if (refused) totals.refused++;
  }

  /** The row is named by the last table it fills, which knows most about it: counts rather than surveys. */
  function askAbout(cells: readonly string[], row: number): void {
    for (const { rule, asks } of plan.asks) {
      const value = asks(cells);
      if (value === null) continue;
      const last = plan.fills.findLastIndex((_, i) => values[i]!.length > 0);
      const names = last < 0 ? {} : placeNames(plan.fills[last]!, values[last]!);
      problems.add('asked-by-rule', () => ({
        place: { ...sheet.place, row, ...names },
        value,
        parameters: { rule },
        suggestion: null,
      }));
    }
  }

  return {
    take(cells, row) {
      const sheetRule = ruleFor(plan.leaveOut, cells);
      if (sheetRule !== null) refuse(sheetRule, null);
      for (let i = 0; i < plan.fills.length; i++) {
        const fill = plan.fills[i]!;
        if (fill.concerns !== null && !fill.concerns(cells)) continue;
        const rule = sheetRule ?? ruleFor(fill.leaveOut, cells);
        if (rule !== null) {
          if (sheetRule === null) refuse(rule, fill.table);
          count(fill, true);
        } else if (takeRow(fill, cells, values[i]!, { sheet: sheet.place, row }, gathered, problems)) {
          count(fill, false);
        } else if (fill.repeats.are === 'added') together.set(fill, (together.get(fill) ?? 0) + 1);
      }
      if (sheetRule === null && plan.asks.length > 0) askAbout(cells, row);
    },
    finish() {
      for (const entry of leftOut.values()) {
        gathered.leftOut.push(entry);
        reportLeftOut(entry, sheet.place, problems);
      }
      for (const [{ table }, rows] of together) {
        const parameters = { table, rows };
        problems.add('added-together', () => ({
          place: sheet.place,
          value: null,
          parameters,
          suggestion: null,
        }));
      }
    },
  };
}

function ruleFor(rules: readonly LeaveOutRule[], cells: readonly string[]): string | null {
  for (const rule of rules) if (rule.applies(cells)) return rule.rule;
  return null;
}
