/**
 * Works out numbers and questions on this device, in a thread of its own: the records kept of a survey, with what
 * waits to be sent laid over them, by the same tasks that the server runs over the book.
 */

import { keptStore } from '../../tasks/sheets/kept-store.ts';
import { layOver, type SignedAnswer } from '../../tasks/sheets/lay-over.ts';
import { readRows } from '../../tasks/sheets/read-orders.ts';
import { type SurveyRecords, surveyRecordsSchema } from '../../tasks/sheets/survey-records-schemas.ts';
import { answersNow, type WaitingAnswer } from './answers.ts';
import { database } from './database.ts';
import { type HereAnswer, type HereAsked, type HereBasis, orderFor } from './here-orders.ts';
import { queueNow, type SentSheet, sentSheets } from './queue.ts';
import { type KeptRecords, within } from './records.ts';

interface Asking extends HereAsked {
  readonly number: number;
}

/** One after the other: what waits is laid over the records once and not once for every question. */
let turn: Promise<void> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<Asking>) => {
  turn = turn.then(async () => postMessage({ number: data.number, answer: await work(data) }));
});

/** Null when nothing was kept, or when what was kept cannot be read. */
async function work({ surveyId, order, language, today }: Asking): Promise<HereAnswer | null> {
  try {
    const laid = await laidStore(surveyId, today);
    const survey = laid?.records.surveys.find((one) => one.id === surveyId);
    if (laid === null || survey === undefined) return null;
    const task = orderFor(order, { survey, today });
    return { value: await readRows(task, language, laid.store), basis: laid.basis };
  } catch {
    return null;
  }
}

interface LaidStore {
  readonly key: string;
  readonly records: SurveyRecords;
  readonly store: ReturnType<typeof keptStore>;
  readonly basis: HereBasis;
}

let last: LaidStore | null = null;
let read: { readonly key: string; readonly records: SurveyRecords } | null = null;

/** Made anew only when something else was kept or waits. */
async function laidStore(surveyId: string, today: string): Promise<LaidStore | null> {
  const book = await database();
  const kept = await book.get('records', surveyId);
  if (kept === undefined) return null;
  const sent = (await book.getAll('seen', within(sentSheets(surveyId)))) as SentSheet[];
  const queue = (await queueNow()).filter((one) => one.surveyId === surveyId);
  const given = (await answersNow()).filter((one) => one.surveyId === surveyId);
  const keptKey = `${surveyId} ${kept.askedAtMs}`;
  const states = [...queue, ...given].map(({ requestId, state }) => `${requestId} ${state}`);
  const key = [keptKey, today, ...sent.map((one) => one.sentAtMs), ...states].join('\n');
  if (last?.key === key) return { ...last, basis: { ...last.basis, bookAtMs: kept.asOfMs } };
  if (read?.key !== keptKey) read = { key: keptKey, records: await readRecords(kept) };
  const { records } = read;
  const store = keptStore(records);
  const since = sent.toSorted((a, b) => a.sentAtMs - b.sentAtMs).map(({ sheet }) => sheet);
  const sentSince = await layOver(store, { sheets: since, answers: [], today });
  const waits = queue.filter(({ state }) => state === 'waiting');
  const laid = await layOver(store, {
    sheets: waits.map(({ request }) => request.sheet),
    answers: given.filter(({ state }) => state === 'waiting').map((one) => signed(one, nameOf(records))),
    today,
  });
  const stuck = [...queue, ...given].filter(({ state }) => state !== 'waiting').length;
  const basis = { ...laid, sheets: stationsOf(waits), leftOut: laid.leftOut + stuck };
  last = {
    key,
    records,
    store,
    basis: { ...basis, bookAtMs: kept.asOfMs, sentSince: sentSince.sheets },
  };
  return last;
}

/** What an older program kept and this one cannot read is dropped, so that it is asked for again. */
async function readRecords({ body, surveyId }: KeptRecords): Promise<SurveyRecords> {
  try {
    return surveyRecordsSchema.parse(JSON.parse(await body.text()));
  } catch (error) {
    await (await database()).delete('records', surveyId);
    throw error;
  }
}

/** A sheet saved twice while it waits is one sheet. */
function stationsOf(waits: readonly { readonly stationId: string }[]): number {
  return new Set(waits.map(({ stationId }) => stationId)).size;
}

function nameOf({ surveys, surveyId }: SurveyRecords): string {
  return surveys.find((one) => one.id === surveyId)?.name ?? '';
}

function signed({ request, givenAt, requestId }: WaitingAnswer, survey: string): SignedAnswer {
  const { code, answer, who, why, station = null, transect = null, swim = null } = request;
  const { species = null, value = null } = request;
  return {
    request: { code, survey, station, transect, swim, species, value, answer },
    signature: { who, why, at: givenAt, device: '' },
    id: requestId,
  };
}
