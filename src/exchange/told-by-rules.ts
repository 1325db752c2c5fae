/** Remembers what the rules of a mapping did to cells, and tells it once the sheet is read. */

import type { TableName } from '../survey/table-rows.ts';
import type { ProblemList } from './problem-list.ts';
import type { Sheet } from './sheets.ts';

export interface ToldByRules {
  byRule(rule: string, column: string, table: TableName): void;
  notListed(word: string, list: string, column: string): void;
  /** Forgets what was told while cells were only looked at. */
  forget(): void;
  report(): void;
}

export function toldByRules(sheet: Sheet, problems: ProblemList): ToldByRules {
  const cells = new Map<string, { rule: string; column: string; table: TableName; cells: number }>();
  const words = new Map<string, { word: string; list: string; column: string }>();
  return {
    byRule(rule, column, table) {
      const key = `${rule}\u0000${column}\u0000${table}`;
      const entry = cells.get(key) ?? { rule, column, table, cells: 0 };
      entry.cells++;
      cells.set(key, entry);
    },
    // A word is asked about once, however often it stands and however many tables it fills.
    notListed(word, list, column) {
      words.set(`${word}\u0000${list}`, { word, list, column });
    },
    forget() {
      cells.clear();
      words.clear();
    },
    report() {
      for (const { rule, column, table, cells: count } of cells.values()) {
        problems.add('read-by-rule', () => ({
          place: sheet.place,
          value: null,
          parameters: { rule, column, table, cells: count },
          suggestion: null,
        }));
      }
      for (const { word, list, column } of words.values()) {
        problems.add('not-in-list', () => ({
          place: { ...sheet.place, column },
          value: word,
          parameters: { list },
          suggestion: null,
        }));
      }
    },
  };
}
