/** One station with its transects and tallies, in order of identity, by the indexes alone. */

import type { SurveyRows } from '../survey/store.ts';
import type { BookDatabase } from './book-database.ts';
import { stationOf, tallyOf, transectOf } from './field-rows.ts';
import { rowsOf } from './rows-of.ts';

export function readStation(database: BookDatabase, stationId: string): SurveyRows {
  const { kysely } = database;
  const stations = kysely.selectFrom('stations').selectAll().where('id', '=', stationId);
  const transects = kysely
    .selectFrom('transects')
    .selectAll()
    .where('station_id', '=', stationId)
    .orderBy('id');
  const tallies = kysely
    .selectFrom('transects')
    .innerJoin('tallies', 'tallies.transect_id', 'transects.id')
    .selectAll('tallies')
    .where('station_id', '=', stationId)
    .orderBy('tallies.id');
  return {
    stations: rowsOf(database, stations).map(stationOf),
    transects: rowsOf(database, transects).map(transectOf),
    tallies: rowsOf(database, tallies).map(tallyOf),
  };
}
