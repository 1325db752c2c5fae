/** Takes one row of a file into one table, and says which of its cells were not understood. */

import type { Place } from '../survey/message.ts';
import { placeOf, type RowPosition } from './collect-rows.ts';
import type { Gathered } from './gather.ts';
import type { ProblemList } from './problem-list.ts';
import type { Fill } from './read-sheet.ts';
import { looksLikeFooter } from './row-kind.ts';
import { type RefusedCell, readRow } from './row-plan.ts';
import type { CellContent } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

/** False when the row only became part of one that is there. A row that cannot be used counts as read; its problem says why. */
export function takeRow(
  fill: Fill,
  cells: readonly string[],
  values: CellContent[],
  at: RowPosition,
  gathered: Gathered,
  problems: ProblemList,
): boolean {
  const refused = readRow(fill.plan, cells, values);
  if (refused !== null) {
    const missing = refused.filter(({ refusal }) => refusal.code === 'missing-value').length;
    if (missing > 0 && looksLikeFooter(cells)) {
      reportFooter(cells, at, problems);
      return true;
    }
    reportRefused(refused, fill, values, at, problems);
    if (refused.some(isLost)) return true;
  }
  return gathered.collectors[fill.table].add(values, at, fill.repeats);
}

function isLost({ column, refusal }: RefusedCell): boolean {
  return column.definition.required && refusal.keepsValue !== true;
}

function reportFooter(cells: readonly string[], at: RowPosition, problems: ProblemList): void {
  const value = cells.filter((cell) => cell.trim() !== '').join(' ');
  problems.add('footer-row', () => ({
    place: placeOf(at),
    value: value.trim().slice(0, 200),
    parameters: {},
    suggestion: null,
  }));
}

function reportRefused(
  refused: readonly RefusedCell[],
  fill: Fill,
  values: readonly CellContent[],
  at: RowPosition,
  problems: ProblemList,
): void {
  for (const { column, written, refusal } of refused) {
    problems.add(refusal.code, () => ({
      place: { ...placeOf(at), ...placeNames(fill, values), column: column.label },
      value: written.trim() === '' ? null : written.trim(),
      parameters: refusal.parameters,
      suggestion: refusal.suggestion,
    }));
  }
}

const namingColumns = ['survey', 'station', 'transect', 'swim', 'species'] as const;

/** Survey, station, transect and species of the row, as far as they were understood. */
export function placeNames(fill: Fill, values: readonly CellContent[]): Place {
  const names: Record<string, CellContent> = {};
  tableDefinitions[fill.table].columns.forEach(({ column }, i) => {
    const value = values[i];
    if (!(namingColumns as readonly string[]).includes(column)) return;
    if (typeof value === 'string' || typeof value === 'number') names[column] = value;
  });
  return names as Place;
}
