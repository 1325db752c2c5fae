import { beforeEach, describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { historyOf, type TestServer, testServer } from '../../test/server-fixture.ts';
import { record } from '../../test/store-records.ts';
import { protocolPresets } from '../survey/protocol-presets.ts';
import * as answers from '../tasks/sheets/answer-schemas.ts';
import { photoListSchema } from '../tasks/sheets/photo-schemas.ts';
import { sheetInBookSchema } from '../tasks/sheets/sheet-schemas.ts';
import { surveyRecordsSchema } from '../tasks/sheets/survey-records-schemas.ts';
import * as surveys from '../tasks/sheets/survey-schemas.ts';

let server: TestServer;
let path = '';
beforeEach(async () => {
  server = await testServer();
  path = `/api/surveys/${server.survey.id}`;
});

describe('what the screens read', () => {
  it('is what the schemas say, and no key more', async () => {
    const sheet = server.newSheet('S1');
    await server.save(sheet, null);
    await server.save({ ...server.newSheet('S2'), tallies: [] }, null);
    const cases: readonly (readonly [string, z.ZodObject])[] = [
      ['/api/book', surveys.bookSchema],
      ['/api/surveys', surveys.surveyListSchema],
      [`${path}/words`, surveys.surveyWordsSchema],
      [`${path}/stations`, surveys.stationListSchema],
      [`${path}/sheets/${sheet.station.id}`, sheetInBookSchema],
      [`${path}/days`, surveys.dayListSchema],
      [`${path}/days/2026-09-30`, surveys.dayInBookSchema],
      [`${path}/problems`, answers.problemListSchema],
      [`${path}/records`, surveyRecordsSchema],
      ['/api/history', answers.historyListSchema],
      [`${path}/densities?by=station`, answers.densityListSchema],
      [`${path}/sizes?by=stratum&limitMm=150`, answers.sizesListSchema],
      [`${path}/explain?species=Holothuria%20scabra`, answers.explainSchema],
      ['/api/photos', photoListSchema],
      ['/api/jobs', answers.jobListSchema],
    ];
    for (const [address, schema] of cases) {
      const { status, body } = await server.call('GET', address);
      expect([address, status]).toEqual([address, 200]);
      const parsed = schema.safeParse(body);
      expect([address, parsed.error?.issues]).toEqual([address, undefined]);
      // Parsing leaves out what the schema does not know.
      expect(parsed.data).toEqual(body);
    }
    expect(server.faults).toEqual([]);
  });

  it('is worked out once while the book stands, and again when a sheet is saved', async () => {
    const animals = async () => {
      const { body } = await server.call('GET', `${path}/densities?species=Holothuria%20scabra`);
      return body.rows[0].animals;
    };
    await server.save(server.newSheet('S1', 3), null);
    expect([await animals(), await animals()]).toEqual([3, 3]);
    await server.save(server.newSheet('S2', 4), null);
    expect(await animals()).toBe(7);
  });

  it('of a name that is not there is 404 with the nearest name', async () => {
    const { status, body } = await server.call('GET', `${path}/densities?species=Holothuria%20scabre`);
    expect([status, body.code]).toEqual([404, 'unknown-species-name']);
    expect(body.message).toContain('did you mean Holothuria scabra?');
  });
});

describe('a new survey', () => {
  const newSurvey = () => {
    const protocol = { id: server.newId(), ...protocolPresets[0]! };
    const survey = record('survey', { id: server.newId(), name: 'South 2027', protocolId: protocol.id });
    const stratum = record('stratum', { id: server.newId(), name: 'lagoon', areaHa: 310 });
    const targets = [server.species[0]!.id];
    const sent = { protocol, survey, strata: [stratum, server.stratum], species: [], targets };
    return { requestId: server.newId(), base: null, who: 'Officer A', ...sent };
  };

  it('is one act with its protocol, strata and targets, and is not doubled when sent twice', async () => {
    const request = newSurvey();
    expect(await server.call('POST', '/api/surveys', request)).toMatchObject({
      status: 200,
      body: { repeated: false, changed: 4 },
    });
    const again = await server.call('POST', '/api/surveys', request);
    expect(again).toMatchObject({ status: 200, body: { repeated: true, changed: 0 } });
    const acts = new Set((await historyOf(server.store)).map(({ id }) => id.split('/')[0]));
    expect(acts).toHaveLength(2);
    const words = await server.call('GET', `/api/surveys/${request.survey.id}/words`);
    expect(words.body).toMatchObject({ targets: request.targets, targetsMadeFrom: 'declared' });
    expect(words.body.protocol).toEqual(request.protocol);
  });

  it('never changes a stratum that the book holds', async () => {
    const request = newSurvey();
    const changed = { ...server.stratum, areaHa: 5 };
    const answer = await server.call('POST', '/api/surveys', { ...request, strata: [changed] });
    expect(answer).toMatchObject({ status: 409, body: { code: 'already-there' } });
    expect(await server.store.all('survey')).toHaveLength(1);
  });
});

describe('a species nobody had listed', () => {
  it('is added with its target, and can be counted on the next sheet', async () => {
    const species = record('species', { id: server.newId(), name: 'Actinopyga mauritiana', code: 'AM' });
    const targets = [species.id, server.species[0]!.id];
    const sent = {
      requestId: server.newId(),
      base: null,
      who: 'Recorder A',
      strata: [],
      species: [species],
      targets,
    };
    expect((await server.call('POST', `${path}/words`, sent)).body).toMatchObject({ changed: 3 });
    const again = await server.call('POST', `${path}/words`, { ...sent, requestId: server.newId() });
    expect(again.body).toMatchObject({ repeated: false, changed: 0 });
    const sheet = server.newSheet('S1');
    const tallies = sheet.tallies.map((tally) => ({ ...tally, speciesId: species.id }));
    expect((await server.save({ ...sheet, tallies }, null)).status).toBe(200);
  });
});

describe('a boat day', () => {
  const content = {
    sea: 'slight',
    visibilityM: 12,
    habitat: null,
    notes: null,
    incidents: [],
    fuelUsedL: 40,
    dives: [
      { diver: 'Diver 1', entry: '09:00', exit: '09:45', maxDepthM: 12 },
      { diver: 'Diver 1', entry: '10:15', exit: '11:00', maxDepthM: 18.5 },
    ],
    limits: { divesPerDay: 3, minutesPerDay: 80, surfaceIntervalMin: 60, maxDepthM: 18 },
  };
  const save = (base: string | null, changed = {}) =>
    server.call('PUT', `${path}/days/2026-09-30`, {
      requestId: server.newId(),
      base,
      who: 'Officer A',
      id: server.newId(),
      content: { ...content, ...changed },
    });
  const read = async () => (await server.call('GET', `${path}/days/2026-09-30`)).body;

  it('of which nothing is written is an answer, then is kept and added up', async () => {
    expect(await read()).toMatchObject({ revision: null, content: null });
    const saved = await save(null);
    const day = await read();
    expect(day).toMatchObject({ revision: saved.body.revision, content });
    // By hand: 45 + 45 minutes; 09:45 to 10:15 is 30 minutes.
    expect(day.divers[0]).toMatchObject({ dives: 2, minutes: 90, shortestIntervalMin: 30, maxDepthM: 18.5 });
    const over = day.divers[0].over.map(({ limit }: { limit: string }) => limit);
    expect(over).toEqual(['minutesPerDay', 'surfaceIntervalMin', 'maxDepthM']);
  });

  it('saved by somebody else in between is not overwritten', async () => {
    const { revision } = (await save(null)).body;
    await save(revision, { notes: 'theirs' });
    const stale = await save(revision, { notes: 'yours' });
    expect(stale).toMatchObject({ status: 409, body: { code: 'day-changed' } });
    expect(stale.body.theirs.content.notes).toBe('theirs');
    expect(surveys.staleDaySchema.safeParse(stale.body).error).toBeUndefined();
  });
});

describe('a question', () => {
  it('about a blank belt is answered "none seen", which marks the belt, once however often it is sent', async () => {
    const sheet = { ...server.newSheet('S1'), tallies: [] };
    await server.save(sheet, null);
    const { problems } = (await server.call('GET', `${path}/problems`)).body;
    const blank = problems.find(({ code }: { code: string }) => code === 'transect-unresolved');
    expect(blank).toMatchObject({ station: 'S1', transect: '1', stationId: sheet.station.id, answer: null });
    const said = { answer: 'none seen', who: 'Recorder A', why: 'slate looked at again' };
    const request = { requestId: server.newId(), code: blank.code, station: 'S1', ...said };
    const first = await server.call('POST', `${path}/answers`, request);
    expect(first.body).toMatchObject({ answered: 1, markedNoneSeen: 1 });
    const second = await server.call('POST', `${path}/answers`, request);
    expect(second).toMatchObject({ status: 200, body: { answered: 0, markedNoneSeen: 0 } });
    const history = await server.call('GET', `/api/history?record=${sheet.transects[0]!.id}`);
    expect(history.body.rows.map(({ what }: { what: string }) => what)).toEqual(['entered', 'changed']);
    expect(history.body.rows[1].changes).toEqual([{ column: 'none_seen', before: false, after: true }]);
  });

  it('about a blank belt knows "rien vu" for the same', async () => {
    await server.save({ ...server.newSheet('S1'), tallies: [] }, null);
    const said = { answer: 'Rien vu', who: 'Recorder A', why: 'slate looked at again' };
    const request = { requestId: server.newId(), code: 'transect-unresolved', station: 'S1', ...said };
    const { body } = await server.call('POST', `${path}/answers`, request);
    expect(body).toMatchObject({ answered: 1, markedNoneSeen: 1 });
  });

  it('that somebody else answered in between is not answered over, unless it was seen', async () => {
    await server.save(server.newSheet('S1'), null);
    const asked = { code: 'selection-unknown', who: 'Recorder A', why: 'as I remember it' };
    const give = (more: object) =>
      server.call('POST', `${path}/answers`, { requestId: server.newId(), ...asked, ...more });
    const first = await give({ answer: 'at random', base: null, who: 'Officer A' });
    expect(first.status).toBe(200);
    const late = await give({ answer: 'by hand', base: null });
    expect(late).toMatchObject({ status: 409, body: { code: 'answer-changed' } });
    expect(answers.staleAnswerSchema.parse(late.body).theirs).toMatchObject({
      answer: 'at random',
      who: 'Officer A',
    });
    expect((await give({ answer: 'by hand', base: late.body.theirs.at })).status).toBe(200);
    // Whoever does not say what was in hand is not compared, as from the command line.
    expect((await give({ answer: 'at random' })).status).toBe(200);
  });
});
