import { beforeEach, describe, expect, it } from 'vitest';
import { historyOf, type TestServer, testServer } from '../../test/server-fixture.ts';
import { staleSheetSchema } from '../tasks/sheets/sheet-schemas.ts';

let server: TestServer;
beforeEach(async () => {
  server = await testServer();
});
const read = (stationId: string) =>
  server.call('GET', `/api/surveys/${server.survey.id}/sheets/${stationId}`);

describe('a typed sheet', () => {
  it('comes back from the book as it was typed, with the revision that its save gave', async () => {
    const sheet = server.newSheet('S1');
    const saved = await server.save(sheet, null);
    expect(saved).toMatchObject({ status: 200, body: { repeated: false, changed: 4 } });
    const { body } = await read(sheet.station.id);
    expect(body).toEqual({ revision: saved.body.revision, sheet });
  });

  it('is one act of revisions, signed by who typed it and bearing the identity of the request', async () => {
    const sheet = server.newSheet('S1');
    const requestId = server.newId();
    await server.save(sheet, null, { requestId, device: 'tablet 2' });
    const revisions = await historyOf(server.store);
    const own = revisions.filter((one) => one.id.startsWith(requestId));
    expect(own.map((one) => one.kind)).toEqual(['station', 'transect', 'transect', 'tally']);
    expect(own[0]!.signature).toMatchObject({ who: 'Recorder A', device: 'tablet 2', why: 'sheet typed' });
  });

  it('sent twice is acknowledged twice and written once', async () => {
    const sheet = server.newSheet('S1');
    const requestId = server.newId();
    const first = await server.save(sheet, null, { requestId });
    const second = await server.save(sheet, null, { requestId });
    expect(second).toMatchObject({ status: 200, body: { repeated: true, changed: 0 } });
    expect(second.body.revision).toBe(first.body.revision);
    const history = await historyOf(server.store, sheet.station.id);
    expect(history).toHaveLength(1);
  });

  it('sent again after somebody else has changed the sheet does not bring the old one back', async () => {
    const sheet = server.newSheet('S1', 3);
    const requestId = server.newId();
    const first = await server.save(sheet, null, { requestId });
    const corrected = withCount(sheet, 5);
    await server.save(corrected, first.body.revision);
    expect(await server.save(sheet, null, { requestId })).toMatchObject({
      status: 200,
      body: { repeated: true },
    });
    expect((await read(sheet.station.id)).body.sheet.tallies[0].count).toBe(5);
  });

  it('changed by somebody else in between is not overwritten: theirs, yours and what both began with come back', async () => {
    const sheet = server.newSheet('S1', 3);
    const first = await server.save(sheet, null);
    const theirs = withCount(sheet, 5);
    await server.save(theirs, first.body.revision, { who: 'Recorder B' });
    const yours = withCount(sheet, 7);
    const stale = await server.save(yours, first.body.revision);
    expect(stale.status).toBe(409);
    expect(stale.body).toMatchObject({
      code: 'sheet-changed',
      theirs: { sheet: theirs },
      yours,
      base: sheet,
    });
    expect(staleSheetSchema.safeParse(stale.body).data).toEqual(stale.body);
    const place = { transect: '1', swim: 1, speciesId: server.species[0]!.id };
    expect(stale.body.differences).toEqual([{ ...place, field: 'count', one: 5, other: 7 }]);
    expect((await read(sheet.station.id)).body.sheet).toEqual(theirs);
    const settled = await server.save(yours, stale.body.theirs.revision);
    expect(settled).toMatchObject({ status: 200, body: { changed: 1 } });
  });

  it('saved by two at one moment is kept from one of them, and the other is told', async () => {
    const sheet = server.newSheet('S1', 3);
    const { revision } = (await server.save(sheet, null)).body;
    const answers = await Promise.all([5, 7].map((count) => server.save(withCount(sheet, count), revision)));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
    const kept = answers[0]!.status === 200 ? 5 : 7;
    expect((await read(sheet.station.id)).body.sheet.tallies[0].count).toBe(kept);
  });

  it('that leaves a count out withdraws it, and the history keeps it', async () => {
    const sheet = server.newSheet('S1');
    const { revision } = (await server.save(sheet, null)).body;
    await server.save({ ...sheet, tallies: [] }, revision);
    expect((await read(sheet.station.id)).body.sheet.tallies).toEqual([]);
    const history = await historyOf(server.store, sheet.tallies[0]!.id);
    expect(history.map(({ after }) => after)).toEqual([sheet.tallies[0], null]);
  });

  it('with a blank belt is kept blank: unknown is not zero', async () => {
    const sheet = server.newSheet('S1');
    const blank = { ...sheet, tallies: [] };
    await server.save(blank, null);
    const { body } = await server.call('GET', `/api/surveys/${server.survey.id}/stations`);
    expect(body.stations[0].missing).toContainEqual({
      code: 'blank-transect',
      transect: '1',
      message: 'transect 1 is blank: enter what was seen, or mark “none seen”',
    });
    expect(body.stations[0].state).toBe('missing');
  });

  it('cannot take a belt that belongs to another station', async () => {
    const first = server.newSheet('S1');
    await server.save(first, null);
    const second = server.newSheet('S2');
    const stolen = { ...first.transects[0]!, stationId: second.station.id };
    const answer = await server.save({ ...second, transects: [stolen], tallies: [] }, null);
    expect(answer).toMatchObject({ status: 409, body: { code: 'already-there' } });
    expect((await read(first.station.id)).body.sheet).toEqual(first);
    expect((await read(second.station.id)).status).toBe(404);
  });

  it('is refused in words when its parts do not belong together, with the field', async () => {
    const sheet = server.newSheet('S1');
    const tally = { ...sheet.tallies[0]!, transectId: server.newId() };
    const answer = await server.save({ ...sheet, tallies: [tally] }, null);
    expect(answer.status).toBe(400);
    expect(answer.body.fields).toEqual([
      {
        field: 'sheet.tallies.0.transectId',
        message: `“${tally.transectId}” cannot stand here; right would be a transect of this sheet`,
      },
    ]);
  });

  it('whose code is taken in the survey, or whose stratum is unknown, is refused with a sentence', async () => {
    await server.save(server.newSheet('S1'), null);
    const taken = await server.save(server.newSheet('S1'), null);
    expect(taken).toMatchObject({ status: 409, body: { code: 'already-there' } });
    expect(taken.body.message).toContain('S1');
    const sheet = server.newSheet('S2');
    const stranger = { ...sheet, station: { ...sheet.station, stratumId: server.newId() } };
    expect(await server.save(stranger, null)).toMatchObject({
      status: 422,
      body: { code: 'refers-to-nothing' },
    });
    expect(server.faults).toEqual([]);
  });
});

function withCount<Sheet extends { tallies: { count: number }[] }>(sheet: Sheet, count: number): Sheet {
  return { ...sheet, tallies: sheet.tallies.map((tally) => ({ ...tally, count })) };
}
