/** Turns a mapping into jobs: which sheet is read how. */

import { nearestName } from '../survey/nearest-name.ts';
import { type TableName, tableNames } from '../survey/table-rows.ts';
import { isOf, type ListFile, lookUpMaker } from './look-up.ts';
import type { Mapping, Source } from './mapping-schema.ts';
import { ownLayoutJob, reportHidden } from './own-layout.ts';
import { sourceJob } from './plan-source.ts';
import type { ProblemList } from './problem-list.ts';
import type { SheetJob } from './read-sheet.ts';
import { withMergesRepeated } from './sheet-marks.ts';
import { baseName, type Sheet } from './sheets.ts';

/** The given rows first, then the sources in the order of the mapping. Files that no source names are noted. */
export function mappedJobs(mapping: Mapping, sheets: readonly Sheet[], problems: ProblemList): SheetJob[] {
  const used = new Set<Sheet>();
  const jobs = givenJobs(mapping, problems);
  const makeLookUp = lookUpMaker(sheets, problems);
  for (const source of mapping.sources) {
    const fitting = sheets.filter((sheet) => isNamedBy(source, sheet));
    if (fitting.length === 0) reportFileMissing(source, sheets, problems);
    for (const sheet of fitting) {
      used.add(sheet);
      const asRead = source.mergedCells === 'repeat' ? withMergesRepeated(sheet) : sheet;
      jobs.push(sourceJob(source, { sheet: asRead, problems, makeLookUp }));
    }
  }
  const lists = mapping.sources.flatMap(listsOf);
  for (const sheet of sheets) {
    if (used.has(sheet) || lists.some((list) => isOf(list, sheet))) continue;
    if (sheet.hidden) reportHidden(sheet, problems);
    else reportUnused(sheet, problems);
  }
  return used.size === 0 ? [] : jobs;
}

/** The list files that the columns of a source look into. */
function listsOf(source: Source): ListFile[] {
  return source.fill
    .flatMap((fill) => Object.values(fill.columns))
    .flatMap((column) => (typeof column === 'object' && 'join' in column ? column.join : [column]))
    .flatMap((column): ListFile[] => {
      if (typeof column === 'string') return [];
      if ('lookUp' in column) return [column.lookUp];
      return 'synonyms' in column && column.synonyms !== undefined ? [column.synonyms] : [];
    });
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
    hidden: false,
    merges: [],
    formulas: [],
    mayHoldCommas: () => false,
    close() {},
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
  return fits && (source.sheet === undefined ? !sheet.hidden : source.sheet === sheet.place.sheet);
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
