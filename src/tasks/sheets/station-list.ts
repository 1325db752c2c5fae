/** Every station of a survey with what is still missing tonight. */

import { type ScreenLanguage, serverSentence } from '../../report/catalogue/server-words.ts';
import type { StationWithTransects, SurveyInHand, TransectWithTallies } from '../../survey/observation.ts';
import type { Store } from '../../survey/store.ts';
import { readBookWords, takeInHand } from '../take-in-hand.ts';
import type { MissingCode, StationRow } from './survey-schemas.ts';

export interface StationListRequest {
  readonly surveyId: string;
  readonly language: ScreenLanguage;
}

/** In the order of their codes. Requires a survey of the book. */
export async function stationList(
  store: Store,
  { surveyId, language }: StationListRequest,
): Promise<readonly StationRow[]> {
  const words = await readBookWords(store);
  const survey = words.surveys.find((one) => one.id === surveyId);
  if (survey === undefined) throw new Error('stationList requires a survey of the book');
  const { inHand } = await takeInHand(store, words, survey, { lengths: true });
  return inHand.stations.map((station) => stationRow(station, inHand, language));
}

function stationRow(
  station: StationWithTransects,
  inHand: SurveyInHand,
  language: ScreenLanguage,
): StationRow {
  const { record, stratum, transects } = station;
  const planned = inHand.protocol?.transectsPerStation ?? null;
  const missing = missingOf(station, planned, language);
  const tallies = transects.flatMap((belt) => [...belt.tallies.values()]);
  const lengths = tallies.flatMap((tally) => tally.lengths);
  return {
    id: record.id,
    code: record.code,
    site: record.site,
    stratum: stratum.name,
    zone: record.zone,
    date: record.date,
    timeStart: record.timeStart,
    timeEnd: record.timeEnd,
    recorder: record.recorder,
    selection: record.selection,
    transects: transects.length,
    plannedTransects: planned,
    animals: sum(tallies.map((tally) => tally.count)),
    measured: sum(lengths.map((length) => length.n)),
    searchedAreaM2: sum(transects.filter(wasSearched).map((belt) => belt.areaCm2)) / 10_000,
    state: missing.length === 0 ? 'done' : 'missing',
    missing,
  };
}

function missingOf(
  { record, transects }: StationWithTransects,
  planned: number | null,
  language: ScreenLanguage,
): StationRow['missing'] {
  const missing: StationRow['missing'] = [];
  const add = (
    code: MissingCode,
    transect: string | null,
    parameters: Readonly<Record<string, string | number>> = {},
  ) => missing.push({ code, transect, message: serverSentence(language, code, parameters) });
  if (transects.length === 0) add('no-transects', null);
  else if (planned !== null && transects.length < planned) {
    add('fewer-transects', null, { transects: transects.length, planned });
  }
  for (const belt of transects) {
    const { code } = belt.record;
    if (isBlank(belt)) add('blank-transect', code, { transect: code });
    if (belt.status === 'partial' && belt.record.reason === null) {
      add('partial-without-reason', code, { transect: code });
    }
  }
  if (record.selection === null) add('selection-unknown', null);
  return missing;
}

/** Unknown is not zero: neither a tally nor the mark "none seen". */
function isBlank(belt: TransectWithTallies): boolean {
  return wasSearched(belt) && !belt.noneSeen && belt.tallies.size === 0;
}

function wasSearched({ status }: TransectWithTallies): boolean {
  return status === 'done' || status === 'partial';
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
