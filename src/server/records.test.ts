import { beforeAll, describe, expect, it } from 'vitest';
import { type TestServer, testServer } from '../../test/server-fixture.ts';
import { sign } from '../../test/store-records.ts';
import { defaultDensitySettings } from '../estimates/density/density-settings.ts';
import type { Survey } from '../survey/words.ts';
import { demoRows } from '../tasks/demo/demo-rows.ts';
import { importRows } from '../tasks/import/import-rows.ts';
import { readTotalsOf } from '../tasks/read-totals.ts';
import { keptStore } from '../tasks/sheets/kept-store.ts';
import { layOver } from '../tasks/sheets/lay-over.ts';
import { type ReadOrder, readRows } from '../tasks/sheets/read-orders.ts';
import type { Sheet } from '../tasks/sheets/sheet-schemas.ts';
import { type SurveyRecords, surveyRecordsSchema } from '../tasks/sheets/survey-records-schemas.ts';

const today = '2026-09-30';
let server: TestServer;
let survey: Survey;
let records: SurveyRecords;

/** The demo book: three surveys under one protocol, the last one with two years before it to learn from. */
beforeAll(async () => {
  server = await testServer();
  const rows = demoRows(1);
  const request = { rows, readTotals: readTotalsOf(rows), readProblems: [], mapping: null, dryRun: false };
  await importRows(request, { store: server.store, signature: sign('demo'), newId: server.newId });
  const { body } = await server.call('GET', '/api/surveys');
  survey = body.surveys.at(-1).survey;
  records = await recordsNow();
});

const path = (rest: string) => `/api/surveys/${survey.id}/${rest}`;

async function recordsNow(): Promise<SurveyRecords> {
  const { status, body } = await server.call('GET', path('records'));
  expect(status).toBe(200);
  return surveyRecordsSchema.parse(body);
}

/** What each room asks of the server, and the same as an order over the records kept. */
function rooms(): readonly (readonly [string, ReadOrder])[] {
  const { name, id: surveyId } = survey;
  const densities = (by: 'survey' | 'stratum' | 'station', more: object = {}): ReadOrder => {
    const settings = { ...defaultDensitySettings, by, ...more };
    return { task: 'densities', survey: name, species: null, settings };
  };
  const sizes = {
    survey: name,
    species: null,
    by: 'stratum',
    limitMm: null,
    classMm: 20,
    confidence: 0.95,
  } as const;
  const explain = { survey: name, species: 'Holothuria scabra', station: null };
  return [
    ['densities?by=survey', densities('survey')],
    ['densities?by=stratum', densities('stratum')],
    ['densities?by=station', densities('station')],
    [
      'densities?by=stratum&interval=bca&confidence=0.8',
      densities('stratum', { interval: 'bca', confidence: 0.8 }),
    ],
    ['sizes?by=stratum', { task: 'sizes', request: sizes }],
    ['problems', { task: 'problems', survey: name, surveyId, today }],
    ['stations', { task: 'stations', surveyId }],
    ['explain?species=Holothuria%20scabra', { task: 'explain', request: explain }],
  ];
}

async function fromServer(address: string): Promise<object> {
  const { status, body } = await server.call('GET', path(address));
  expect(status).toBe(200);
  return { ...body, dataVersion: '' };
}

/** As JSON, because that is how the server's answer comes. */
async function here(order: ReadOrder, store: ReturnType<typeof keptStore>): Promise<object> {
  return { ...JSON.parse(JSON.stringify(await readRows(order, 'en', store))), dataVersion: '' };
}

/** One more animal on a sheet that stands, and a new station like it with other counts. */
async function twoSheets(): Promise<{ changed: Sheet; revision: string; added: Sheet }> {
  const [row] = (await server.call('GET', path('stations'))).body.stations;
  const { revision, sheet } = (await server.call('GET', path(`sheets/${row.id}`))).body as {
    revision: string;
    sheet: Sheet;
  };
  const tallies = sheet.tallies.map((one, i) => (i === 0 ? { ...one, count: one.count + 5 } : one));
  return { revision, changed: { ...sheet, tallies }, added: likeIt(sheet) };
}

function likeIt({ station, transects, tallies }: Sheet): Sheet {
  const id = server.newId();
  const belts = new Map(transects.map((one) => [one.id, server.newId()]));
  return {
    station: { ...station, id, code: 'NEW1' },
    transects: transects.map((one) => ({ ...one, id: belts.get(one.id)!, stationId: id })),
    tallies: tallies.map((one, i) => ({
      ...one,
      id: server.newId(),
      transectId: belts.get(one.transectId)!,
      count: one.count + i,
    })),
  };
}

describe('the records that a screen keeps of a survey', () => {
  // A second way to the same number: the server's own, over the book itself.
  it('give every number and question as the server gives it', async () => {
    const store = keptStore(records);
    for (const [address, order] of rooms()) {
      expect(await here(order, store), address).toEqual(await fromServer(address));
    }
  });

  it('with the sheets that wait laid over them give what the server gives once it has the sheets, to the last digit', async () => {
    const { changed, revision, added } = await twoSheets();
    const store = keptStore(records);
    const before = await here(rooms()[0]![1], store);
    expect(await layOver(store, { sheets: [changed, added], answers: [], today })).toEqual({
      sheets: 2,
      answers: 0,
      leftOut: 0,
    });
    const answers = await Promise.all(rooms().map(([, order]) => here(order, store)));
    expect(answers[0]).not.toEqual(before);
    await put(changed, revision);
    await put(added, null);
    for (const [i, [address]] of rooms().entries()) {
      expect(answers[i], address).toEqual(await fromServer(address));
    }
  });

  it('hold what earlier surveys taught: without it the clumped interval is another', async () => {
    const [, order] = rooms()[0]!;
    const taught = await here(order, keptStore(records));
    expect(records.earlier.length).toBeGreaterThan(0);
    expect(await here(order, keptStore({ ...records, earlier: [] }))).not.toEqual(taught);
  });

  it('with an answer laid over them ask what the server asks once it has the answer', async () => {
    const now = await recordsNow();
    const [one] = now.stations;
    const station = { ...one!, id: server.newId(), code: 'BLANK1' };
    const [belt] = now.transects.filter((belt) => belt.status === 'done');
    const blank = { ...belt!, id: server.newId(), stationId: station.id, noneSeen: false };
    const sheet: Sheet = { station, transects: [blank], tallies: [] };
    const said = { answer: 'none seen', who: 'Recorder A', why: 'slate looked at again' };
    const asked = { code: 'transect-unresolved', station: 'BLANK1', transect: blank.code };
    const request = { ...asked, survey: survey.name, swim: null, species: null, value: null, base: null };
    const order: ReadOrder = { task: 'problems', survey: survey.name, surveyId: survey.id, today };
    const unanswered = keptStore(now);
    await layOver(unanswered, { sheets: [sheet], answers: [], today });
    expect(JSON.stringify(await here(order, unanswered))).toContain('transect-unresolved');
    const answered = keptStore(now);
    const answer = { request: { ...request, ...said }, signature: sign('answer'), id: server.newId() };
    const laid = await layOver(answered, { sheets: [sheet], answers: [answer], today });
    expect(laid).toEqual({ sheets: 1, answers: 1, leftOut: 0 });
    await put(sheet, null);
    const { status } = await server.call('POST', path('answers'), {
      requestId: server.newId(),
      ...asked,
      ...said,
    });
    expect(status).toBe(200);
    expect(await here(order, answered)).toEqual(await fromServer('problems'));
  });

  it('leave out a sheet that the book would refuse: its code is another station’s', async () => {
    const now = await recordsNow();
    const [one, other] = now.stations;
    const sheet = { station: { ...one!, code: other!.code }, transects: [], tallies: [] };
    const laid = await layOver(keptStore(now), { sheets: [sheet], answers: [], today });
    expect(laid).toEqual({ sheets: 0, answers: 0, leftOut: 1 });
  });

  it('are not to be had of a survey that is not there', async () => {
    const { status, body } = await server.call('GET', `/api/surveys/${server.newId()}/records`);
    expect([status, body.code]).toEqual([404, 'no-such-survey']);
  });
});

async function put(sheet: Sheet, base: string | null): Promise<void> {
  const request = { requestId: server.newId(), base, who: 'Recorder A', sheet };
  const { status, body } = await server.call('PUT', path(`sheets/${sheet.station.id}`), request);
  expect(status, JSON.stringify(body)).toBe(200);
}
