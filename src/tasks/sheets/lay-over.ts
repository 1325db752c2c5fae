/** Lays what waits to be sent over the records kept, as the book will have it: typed sheets first, answers after them. */

import type { Signature, Store } from '../../survey/store.ts';
import { type AnswerRequest, answerProblem } from '../answer.ts';
import { sheetChanges } from './sheet-changes.ts';
import type { Sheet } from './sheet-schemas.ts';

export interface SignedAnswer {
  readonly request: AnswerRequest;
  readonly signature: Signature;
  /** Made once by the screen. */
  readonly id: string;
}

export interface ToLay {
  /** In the order in which they are sent. */
  readonly sheets: readonly Sheet[];
  readonly answers: readonly SignedAnswer[];
  /** ISO day. */
  readonly today: string;
}

export interface Laid {
  readonly sheets: number;
  readonly answers: number;
  /** What the book would not take as it stands: it is in no number. */
  readonly leftOut: number;
}

export async function layOver(store: Store, { sheets, answers, today }: ToLay): Promise<Laid> {
  let laidSheets = 0;
  let laidAnswers = 0;
  for (const sheet of sheets) if (await laySheet(store, sheet)) laidSheets += 1;
  for (const answer of answers) if (await layAnswer(store, answer, today)) laidAnswers += 1;
  const leftOut = sheets.length + answers.length - laidSheets - laidAnswers;
  return { sheets: laidSheets, answers: laidAnswers, leftOut };
}

async function laySheet(store: Store, sheet: Sheet): Promise<boolean> {
  const { station, tallies } = sheet;
  const stations = (await store.all('station')).filter((one) => one.surveyId === station.surveyId);
  const isTaken = stations.some((one) => one.code === station.code && one.id !== station.id);
  const strata = new Set((await store.all('stratum')).map((one) => one.id));
  const species = new Set((await store.all('species')).map((one) => one.id));
  const isKnown = strata.has(station.stratumId) && tallies.every((one) => species.has(one.speciesId));
  if (isTaken || !isKnown) return false;
  await store.apply(sheetChanges(await standingSheet(store, sheet), sheet).changes, unsigned, () => '');
  return true;
}

async function standingSheet(store: Store, { station }: Sheet): Promise<Sheet | null> {
  const rows = await store.surveyRecords(station.surveyId, { lengths: true });
  const standing = rows.stations.find((one) => one.id === station.id);
  if (standing === undefined) return null;
  const transects = rows.transects.filter((one) => one.stationId === station.id);
  const belts = new Set(transects.map((one) => one.id));
  return { station: standing, transects, tallies: rows.tallies.filter((one) => belts.has(one.transectId)) };
}

/** A question that is not asked any more takes no answer: the server will say so when it is sent. */
async function layAnswer(
  store: Store,
  { request, signature, id }: SignedAnswer,
  today: string,
): Promise<boolean> {
  let n = 0;
  // One answer may answer all blank belts of a station: an identity for each.
  const newId = () => `${id}/${n++}`;
  try {
    return (await answerProblem(request, { store, signature, newId, today })).theirs === null;
  } catch {
    return false;
  }
}

/** Records laid over are signed when they are sent. */
const unsigned: Signature = { who: '', at: '', device: '', why: '' };
