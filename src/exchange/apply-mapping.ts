/** Turns a mapping into jobs: which sheet is read how. */

import { nearestName } from '../survey/nearest-name.ts';
import { type TableName, tableNames } from '../survey/table-rows.ts';
import { columnsOf, type PositionOf, shiftBetween, takeFrom } from './column-source.ts';
import type { ColumnSource, Mapping, Source, TableFill } from './mapping-schema.ts';
import { ownLayoutJob } from './own-layout.ts';
import type { ProblemList } from './problem-list.ts';
import { cellReader } from './read-cell.ts';
import type { Fill, SheetJob } from './read-sheet.ts';
import { absentColumn, type PlannedColumn, positionsOf, reportMissingColumn } from './row-plan.ts';
import { allOf, leaveOutRule } from './row-rules.ts';
import { baseName, type Sheet } from './sheets.ts';
import type { ColumnDefinition } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

/** The given rows first, then the sources in the order of the mapping. Files that no source names are noted. */
export function mappedJobs(mapping: Mapping, sheets: readonly Sheet[], problems: ProblemList): SheetJob[] {
  const used = new Set<Sheet>();
  const jobs = givenJobs(mapping, problems);
  for (const source of mapping.sources) {
    const fitting = sheets.filter((sheet) => isNamedBy(source, sheet));
    if (fitting.length === 0) reportFileMissing(source, sheets, problems);
    for (const sheet of fitting) {
      used.add(sheet);
      jobs.push(sourceJob(source, sheet, problems));
    }
  }
  for (const sheet of sheets) if (!used.has(sheet)) reportUnused(sheet, problems);
  return used.size === 0 ? [] : jobs;
}

function givenJobs(mapping: Mapping, problems: ProblemList): SheetJob[] {
  return tableNames
    .filter((table) => (mapping.given[table]?.length ?? 0) > 0)
    .map((table) => ownLayoutJob(table, givenSheet(mapping, table), problems));
}

/** The rows a mapping gives, seen as a sheet: the same readers and problems as for a file. */
function givenSheet(mapping: Mapping, table: TableName): Sheet {
  const rows = mapping.given[table]!;
  const header = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    name: table,
    place: { file: mapping.name, sheet: table },
    inWorkbook: true,
    eachRow(visit) {
      visit(header, 1);
      rows.forEach((row, i) => {
        visit(
          header.map((column) => row[column] ?? ''),
          i + 2,
        );
      });
      return true;
    },
  };
}

function isNamedBy(source: Source, sheet: Sheet): boolean {
  const pattern = source.file.replace(/[.+?^${}()|[\]\\]/g, '\\$&').replaceAll('*', '.*');
  const fits = new RegExp(`^${pattern}$`, 'iu').test(baseName(sheet.place.file ?? ''));
  return fits && (source.sheet === undefined || source.sheet === sheet.place.sheet);
}

function sourceJob(source: Source, sheet: Sheet, problems: ProblemList): SheetJob {
  return {
    sheet,
    plan(header) {
      const positions = positionsOf(header, sheet, problems);
      const missing = theirColumns(source).filter((column) => !positions.has(column.trim().toLowerCase()));
      for (const column of missing) reportMissingColumn(column, header, sheet, problems);
      const positionOf: PositionOf = (column) => positions.get(column.trim().toLowerCase()) ?? -1;
      const fills = source.fill.map((fill) => planFill(fill, source, positionOf, sheet, problems));
      if (missing.length > 0 || fills.includes(null)) return null;
      const leaveOut = source.leaveOut.map((rule) => leaveOutRule(rule, source.missing, positionOf));
      return { leaveOut, fills: fills as Fill[] };
    },
  };
}

/** Every column of theirs that the source speaks of, each once. */
function theirColumns(source: Source): string[] {
  const rules = [...source.leaveOut, ...source.fill.flatMap((fill) => [...fill.leaveOut, ...fill.where])];
  const inRules = rules.flatMap((rule) => ('repeats' in rule ? rule.repeats : [rule.column]));
  const inColumns = source.fill.flatMap((fill) => Object.values(fill.columns).flatMap(columnsOf));
  return [...new Set([...inColumns, ...inRules])];
}

function planFill(
  fill: TableFill,
  source: Source,
  positionOf: PositionOf,
  sheet: Sheet,
  problems: ProblemList,
): Fill | null {
  const plan = tableDefinitions[fill.table].columns.map((definition) =>
    planMapped(definition, fill, source, positionOf, sheet, problems),
  );
  if (plan.includes(null)) return null;
  return {
    table: fill.table,
    plan: plan as PlannedColumn[],
    concerns: fill.where.length === 0 ? null : allOf(fill.where, source.missing, positionOf),
    leaveOut: fill.leaveOut.map((rule) => leaveOutRule(rule, source.missing, positionOf)),
    repeats: repeatsOf(fill),
  };
}

function repeatsOf(fill: TableFill): Fill['repeats'] {
  if (fill.distinct) return { are: 'the same', firstOf: fill.firstOf };
  return { are: fill.add ? 'added' : 'refused' };
}

function planMapped(
  definition: ColumnDefinition,
  fill: TableFill,
  source: Source,
  positionOf: PositionOf,
  sheet: Sheet,
  problems: ProblemList,
): PlannedColumn | null {
  const other = definition.alternative;
  const first = fill.columns[definition.column];
  const second = other === undefined ? undefined : fill.columns[other.column];
  const theirs = first ?? second;
  if (theirs === undefined) {
    if (!definition.required) return absentColumn(definition);
    reportMissingColumn(definition.column, Object.keys(fill.columns), sheet, problems);
    return null;
  }
  const ours = first === undefined ? other! : { column: definition.column, shift: 0 };
  const shift = shiftOf(theirs, ours.column, sheet, problems);
  if (shift === null) return null;
  const read = cellReader(
    { ...definition, column: ours.column },
    { shift: shift + ours.shift, inWorkbook: sheet.inWorkbook },
  );
  const take = takeFrom(theirs, source.missing, positionOf);
  const label = columnsOf(theirs).join(', ') || ours.column;
  return { definition, label, index: -1, take, read, fixed: null, second: null };
}

function shiftOf(theirs: ColumnSource, column: string, sheet: Sheet, problems: ProblemList): number | null {
  if (typeof theirs === 'string' || !('from' in theirs) || theirs.unit === undefined) return 0;
  const shift = shiftBetween(theirs.unit, column);
  if (shift === null) {
    const unit = theirs.unit;
    problems.add('mapping-invalid', () => ({
      place: sheet.place,
      value: unit,
      parameters: { path: `columns.${column}.unit`, expected: `a unit that fits ${column}` },
      suggestion: null,
    }));
  }
  return shift;
}

function reportFileMissing(source: Source, sheets: readonly Sheet[], problems: ProblemList): void {
  const present = sheets.map((sheet) => baseName(sheet.place.file ?? ''));
  problems.add('mapping-file-missing', () => ({
    place: {},
    value: source.file,
    parameters: { file: source.file, sheet: source.sheet ?? '' },
    suggestion: nearestName(source.file, present),
  }));
}

function reportUnused(sheet: Sheet, problems: ProblemList): void {
  problems.add('not-a-table', () => ({
    place: sheet.place,
    value: sheet.name,
    parameters: { name: sheet.name, file: sheet.place.file ?? '' },
    suggestion: null,
  }));
}
