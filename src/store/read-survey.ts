/** The stations, transects and tallies of one survey, in order of identity. */

import type { SurveyRows } from '../survey/store.ts';
import type { Tally } from '../survey/words.ts';
import type { BookDatabase } from './book-database.ts';
import { stationOf, transectOf } from './field-rows.ts';
import { lengthsOf } from './lengths-column.ts';
import { rowsOf } from './rows-of.ts';

export async function readSurvey(
  database: BookDatabase,
  surveyId: string,
  { lengths }: { readonly lengths: boolean },
): Promise<SurveyRows> {
  const { kysely } = database;
  const stations = kysely.selectFrom('stations').selectAll().where('survey_id', '=', surveyId);
  const transects = kysely
    .selectFrom('stations')
    .innerJoin('transects', 'transects.station_id', 'stations.id')
    .selectAll('transects')
    .where('survey_id', '=', surveyId);
  return {
    stations: inOrder(rowsOf(database, stations).map(stationOf)),
    transects: inOrder(rowsOf(database, transects).map(transectOf)),
    tallies: inOrder(readTallies(database, surveyId, lengths)),
  };
}

/**
 * The largest table by far, read as plain arrays: a density waits for little else.
 * Equal identities are made one value, so that whoever joins the tallies compares them at a glance.
 */
function readTallies(database: BookDatabase, surveyId: string, lengths: boolean): Tally[] {
  const counts = database.kysely
    .selectFrom('stations')
    .innerJoin('transects', 'transects.station_id', 'stations.id')
    .innerJoin('tallies', 'tallies.transect_id', 'transects.id')
    .select(['tallies.id', 'transect_id', 'species_id', 'count'])
    .where('survey_id', '=', '');
  const statement = database.prepare(lengths ? counts.select('lengths') : counts);
  statement.setReturnArrays(true);
  const rows = statement.all(surveyId) as unknown as TallyValues[];
  const species = new Map<string, string>();
  let transectId = '';
  return rows.map((row) => {
    if (row[1] !== transectId) transectId = row[1];
    let speciesId = species.get(row[2]);
    if (speciesId === undefined) {
      speciesId = row[2];
      species.set(speciesId, speciesId);
    }
    return { id: row[0], transectId, speciesId, count: row[3], lengths: lengthsOf(row[4] ?? '[]') };
  });
}

type TallyValues = [id: string, transect_id: string, species_id: string, count: number, lengths?: string];

/** Identities grow with time, so most surveys come out in order already; the database would sort them anyway. */
function inOrder<Item extends { readonly id: string }>(records: Item[]): Item[] {
  for (let i = 1; i < records.length; i++) {
    if (records[i - 1]!.id > records[i]!.id) return records.sort((a, b) => (a.id < b.id ? -1 : 1));
  }
  return records;
}
