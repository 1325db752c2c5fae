/** The stations, transects and tallies of one survey, in order of identity. */

import type { SurveyRows } from '../survey/store.ts';
import type { Tally } from '../survey/words.ts';
import type { BookDatabase } from './book-database.ts';
import { stationOf, tallyOf, transectOf } from './field-rows.ts';

export async function readSurvey(
  database: BookDatabase,
  surveyId: string,
  { lengths }: { readonly lengths: boolean },
): Promise<SurveyRows> {
  const { kysely } = database;
  const stations = await kysely
    .selectFrom('stations')
    .selectAll()
    .where('survey_id', '=', surveyId)
    .execute();
  const transects = await kysely
    .selectFrom('stations')
    .innerJoin('transects', 'transects.station_id', 'stations.id')
    .selectAll('transects')
    .where('survey_id', '=', surveyId)
    .execute();
  return {
    stations: inOrder(stations.map(stationOf)),
    transects: inOrder(transects.map(transectOf)),
    tallies: inOrder(readTallies(database, surveyId, lengths)),
  };
}

/** The largest table by far, read as plain arrays: a density waits for little else. */
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
  return rows.map(([id, transect_id, species_id, count, lengths = '[]']) =>
    tallyOf({ id, transect_id, species_id, count, lengths }),
  );
}

type TallyValues = [id: string, transect_id: string, species_id: string, count: number, lengths?: string];

/** Identities grow with time, so most surveys come out in order already; the database would sort them anyway. */
function inOrder<Item extends { readonly id: string }>(records: Item[]): Item[] {
  for (let i = 1; i < records.length; i++) {
    if (records[i - 1]!.id > records[i]!.id) return records.sort((a, b) => (a.id < b.id ? -1 : 1));
  }
  return records;
}
