/** What a mapping says about the rows as a whole, once all are read: targets, and what blank transects mean. */

import type { Placed, TableRows, TargetRow, TransectRow } from '../survey/table-rows.ts';
import type { Gathered } from './gather.ts';
import type { Mapping } from './mapping-schema.ts';

export function afterReading(mapping: Mapping, gathered: Gathered): TableRows {
  const { rows, totals } = gathered;
  const stated = targetsOf(mapping, rows);
  totals.targets.read += stated.length;
  return {
    ...rows,
    targets: [...rows.targets, ...stated],
    transects: mapping.blankTransects === 'none seen' ? withNoneSeen(rows) : rows.transects,
  };
}

function targetsOf(mapping: Mapping, rows: TableRows): Placed<TargetRow>[] {
  const { targets } = mapping;
  if (targets === undefined) return [];
  const already = new Set(rows.targets.map(({ row }) => `${row.survey}\u0000${row.species}`));
  const place = { file: mapping.name };
  const listed =
    typeof targets === 'string' || Array.isArray(targets)
      ? pairs(surveysOf(rows), typeof targets === 'string' ? speciesOf(rows) : targets)
      : Object.entries(targets).flatMap(([survey, species]) => pairs([survey], species));
  return listed
    .filter((row) => !already.has(`${row.survey}\u0000${row.species}`))
    .map((row) => ({ row, place }));
}

function pairs(surveys: readonly string[], species: readonly string[]): TargetRow[] {
  return surveys.flatMap((survey) => species.map((name) => ({ survey, species: name })));
}

function surveysOf(rows: TableRows): string[] {
  const named = rows.surveys.map(({ row }) => row.name);
  return [...new Set([...named, ...rows.stations.map(({ row }) => row.survey)])];
}

/** Species with a row of counts or lengths, zeros included: a row of zero says that somebody looked. */
function speciesOf(rows: TableRows): string[] {
  return [...new Set(rows.tallies.map(({ row }) => row.species))];
}

/** Marks worked transects without any tally; a lost one saw nothing because nobody looked. */
function withNoneSeen(rows: TableRows): Placed<TransectRow>[] {
  const counted = new Set(rows.tallies.map(({ row }) => swimKey(row)));
  return rows.transects.map((placed) => {
    const { row } = placed;
    const worked = row.status === 'done' || row.status === 'partial';
    if (!worked || row.noneSeen || counted.has(swimKey(row))) return placed;
    return { ...placed, row: { ...row, noneSeen: true } };
  });
}

function swimKey(row: Pick<TransectRow, 'survey' | 'station' | 'transect' | 'swim'>): string {
  return `${row.survey}\u0000${row.station}\u0000${row.transect}\u0000${row.swim}`;
}
