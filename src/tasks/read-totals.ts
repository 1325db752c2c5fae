import type { TableRows, TableTotals } from '../survey/table-rows.ts';

/** Rows read per import table, for rows that came from no file. */
export function readTotalsOf(rows: TableRows): readonly Pick<TableTotals, 'table' | 'read' | 'refused'>[] {
  const lengths = rows.tallies.reduce((total, { row }) => total + row.lengths.length, 0);
  const counts = rows.tallies.filter(({ row }) => row.count !== null).length;
  return [
    { table: 'strata', read: rows.strata.length, refused: 0 },
    { table: 'protocols', read: rows.protocols.length, refused: 0 },
    { table: 'surveys', read: rows.surveys.length, refused: 0 },
    { table: 'stations', read: rows.stations.length, refused: 0 },
    { table: 'transects', read: rows.transects.length, refused: 0 },
    { table: 'counts', read: counts, refused: 0 },
    { table: 'lengths', read: lengths, refused: 0 },
    { table: 'species', read: rows.species.length, refused: 0 },
    { table: 'weights', read: rows.weights.length, refused: 0 },
    { table: 'targets', read: rows.targets.length, refused: 0 },
    { table: 'limits', read: rows.limits.length, refused: 0 },
  ];
}
