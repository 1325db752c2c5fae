/** Stations and transects: where the divers were and what they searched. */

import type { Place, Problem } from '../../survey/message.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { StationRow, TableRows, TransectRow } from '../../survey/table-rows.ts';
import type { RecordOf } from '../../survey/words.ts';
import { type BookInHand, stationKey, transectKey } from './book-in-hand.ts';
import type { Changes } from './changes.ts';

export function resolvePlaces(
  rows: TableRows,
  book: BookInHand,
  changes: Changes,
  problems: Problem[],
): void {
  for (const { row, place } of rows.stations) {
    const here = { ...place, survey: row.survey, station: row.code };
    const stratum = findStratum(row, here, rows, book, changes, problems);
    const survey = book.surveys.get(row.survey);
    if (stratum === undefined || survey === undefined) continue;
    const { survey: _, stratum: __, ...fields } = row;
    const key = stationKey(survey.id, row.code);
    changes.keep('station', book.stations, key, { ...fields, surveyId: survey.id, stratumId: stratum.id });
  }
  for (const { row, place } of rows.transects) {
    const here = {
      ...place,
      survey: row.survey,
      station: row.station,
      transect: row.transect,
      swim: row.swim,
    };
    const survey = book.surveys.get(row.survey);
    const station = survey && book.stations.get(stationKey(survey.id, row.station));
    if (survey === undefined || station === undefined) {
      problems.push(missingStation(row, here, book, survey));
      continue;
    }
    askBeltSize(row, here, book, survey, problems);
    const { survey: _, station: __, transect, ...fields } = row;
    const key = transectKey(station.id, transect, row.swim);
    changes.keep('transect', book.transects, key, { ...fields, stationId: station.id, code: transect });
  }
}

/**
 * A station in no stratum stands for no area: a stop. Where nobody listed strata at all, the names
 * in the stations make them, with areas still to come.
 */
function findStratum(
  row: StationRow,
  place: Place,
  rows: TableRows,
  book: BookInHand,
  changes: Changes,
  problems: Problem[],
): RecordOf<'stratum'> | undefined {
  if (row.stratum === null) {
    problems.push(problemOf('station-without-stratum', { ...place, column: 'stratum' }));
    return undefined;
  }
  const known = book.strata.get(row.stratum);
  if (known !== undefined) return known;
  if (rows.strata.length > 0) {
    const suggestion = nearestName(row.stratum, [...book.strata.keys()]);
    problems.push(
      problemOf('unknown-stratum', { ...place, column: 'stratum' }, { value: row.stratum, suggestion }),
    );
    return undefined;
  }
  problems.push(
    problemOf('stratum-area-missing', place, { value: row.stratum, parameters: { stratum: row.stratum } }),
  );
  const bare = { name: row.stratum, habitat: null, areaHa: null, depthMinM: null, depthMaxM: null };
  return changes.keep('stratum', book.strata, row.stratum, bare, false);
}

function missingStation(
  row: TransectRow,
  place: Place,
  book: BookInHand,
  survey: RecordOf<'survey'> | undefined,
): Problem {
  if (survey === undefined) {
    const suggestion = nearestName(row.survey, [...book.surveys.keys()]);
    return problemOf('unknown-survey', place, {
      value: row.survey,
      parameters: { survey: row.survey },
      suggestion,
    });
  }
  return problemOf('unknown-station', { ...place, column: 'station' }, { value: row.station });
}

/** Only a timed search may do without a belt's length and width. */
function askBeltSize(
  row: TransectRow,
  place: Place,
  book: BookInHand,
  survey: RecordOf<'survey'>,
  problems: Problem[],
): void {
  for (const protocol of book.protocols.values()) {
    if (protocol.id === survey.protocolId && protocol.layout === 'timed') return;
  }
  if (row.lengthM === null) problems.push(missingCell(place, 'length_m'));
  if (row.widthM === null) problems.push(missingCell(place, 'width_m'));
}

function missingCell(place: Place, column: string): Problem {
  return problemOf('missing-value', { ...place, column }, { parameters: { column } });
}
