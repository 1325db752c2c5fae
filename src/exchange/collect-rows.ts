/** Gathers the rows of one table that has one record per row, and watches that no row comes twice. */

import type { Place } from '../survey/message.ts';
import type { Placed, TableName } from '../survey/table-rows.ts';
import type { ProblemList } from './problem-list.ts';
import type { CellContent } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

export type FieldValues = Readonly<Record<string, CellContent>>;

/** What becomes of a row whose key was there before. */
export type Repeats =
  /** A stop: one of the two is wrong. */
  | { readonly are: 'refused' }
  /** The same thing seen again; columns of `firstOf` may differ, the first value stays. */
  | { readonly are: 'the same'; readonly firstOf: readonly string[] }
  /** Parts of one count. */
  | { readonly are: 'added' };

export interface RowCollector {
  /** Takes one row of values in the order of the columns; false when it became part of an earlier row. */
  add(values: readonly CellContent[], at: RowPosition, repeats: Repeats): boolean;
}

/** Where a row stands; a place is made of it only when it is kept or needed in a problem. */
export interface RowPosition {
  readonly sheet: Place;
  readonly row: number;
}

export function placeOf(at: RowPosition): Place {
  return { ...at.sheet, row: at.row };
}

/** Refuses a row that comes twice, naming both. */
export function reportRepeat(problems: ProblemList, place: Place, first: Place, key: string): void {
  problems.add('repeated-row', () => ({
    place,
    value: key,
    parameters: {
      key,
      row: place.row ?? 0,
      firstRow: first.row ?? 0,
      firstFile: first.sheet ?? first.file ?? '',
    },
    suggestion: null,
  }));
}

/** A collector that pushes onto `rows`. */
export function rowCollector(
  table: TableName,
  rows: Placed<FieldValues>[],
  problems: ProblemList,
): RowCollector {
  const { columns, key } = tableDefinitions[table];
  const fields = columns.map((column) => column.field);
  const keyIndexes = (key ?? []).map((name) => columns.findIndex((column) => column.column === name));
  const seen = new Map<string, Placed<FieldValues>>();
  const noted = new Set<string>();

  return {
    add(values, at, repeats) {
      const row: Record<string, CellContent> = {};
      for (let i = 0; i < fields.length; i++) row[fields[i]!] = values[i]!;
      const placed = { row, place: placeOf(at) };
      if (keyIndexes.length > 0) {
        const parts = keyIndexes.map((index) => String(values[index]));
        const name = parts.join('\u0000');
        const first = seen.get(name);
        if (first !== undefined) return repeated(first, placed, repeats, parts.join(', '));
        seen.set(name, placed);
      }
      rows.push(placed);
      return true;
    },
  };

  function repeated(
    first: Placed<FieldValues>,
    again: Placed<FieldValues>,
    repeats: Repeats,
    key: string,
  ): boolean {
    if (repeats.are !== 'the same') {
      reportRepeat(problems, again.place, first.place, key);
      return true;
    }
    const different = columns.filter((c) => !isEqual(first.row[c.field]!, again.row[c.field]!));
    if (different.some((column) => !repeats.firstOf.includes(column.column))) {
      reportRepeat(problems, again.place, first.place, key);
    }
    for (const column of different) {
      const what = JSON.stringify([key, column.column, again.row[column.field]]);
      // Another value is noted once, not again for every animal of the same belt.
      if (!repeats.firstOf.includes(column.column) || noted.has(what)) continue;
      noted.add(what);
      problems.add('first-of-several', () => ({
        place: { ...again.place, column: column.column },
        value: String(again.row[column.field]),
        parameters: { table, key, column: column.column, kept: String(first.row[column.field]) },
        suggestion: null,
      }));
    }
    return false;
  }
}

function isEqual(a: CellContent, b: CellContent): boolean {
  return a === b || (typeof a === 'object' && JSON.stringify(a) === JSON.stringify(b));
}
