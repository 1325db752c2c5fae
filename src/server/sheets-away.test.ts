import { beforeEach, describe, expect, it } from 'vitest';
import { historyOf, type TestServer, testServer } from '../../test/server-fixture.ts';
import type { Sheet } from '../tasks/sheets/sheet-schemas.ts';

let server: TestServer;
let sheet: Sheet;
let revision: string;

beforeEach(async () => {
  server = await testServer();
  sheet = server.newSheet('S1');
  revision = (await server.save(sheet, null)).body.revision;
});

const path = () => `/api/surveys/${server.survey.id}/sheets/${sheet.station.id}`;
const away = (more: object = {}) =>
  server.call('POST', `${path()}/away`, {
    requestId: server.newId(),
    base: revision,
    who: 'Officer A',
    why: 'never visited',
    ...more,
  });
const counted = async () =>
  (await server.call('GET', `/api/surveys/${server.survey.id}/stations`)).body.stations.length;

describe('a sheet typed by mistake', () => {
  it('is withdrawn whole, with who and why, and its code is free again', async () => {
    const { status, body } = await away();
    // One station, two belts, one count.
    expect([status, body.repeated, body.changed]).toEqual([200, false, 4]);
    expect((await server.call('GET', path())).status).toBe(404);
    expect(await counted()).toBe(0);
    for (const kind of ['station', 'transect', 'tally'] as const)
      expect(await server.store.all(kind)).toEqual([]);
    const acts = (await historyOf(server.store, sheet.station.id)).map(({ signature, after }) => [
      signature.who,
      signature.why,
      after === null,
    ]);
    expect(acts).toEqual([
      ['Recorder A', 'sheet typed', false],
      ['Officer A', 'never visited', true],
    ]);
    expect((await server.save(server.newSheet('S1'), null)).status).toBe(200);
  });

  it('is withdrawn once, by the same request or by two people', async () => {
    const requestId = server.newId();
    await away({ requestId });
    expect((await away({ requestId })).body).toMatchObject({ repeated: true, changed: 0 });
    expect((await away({ who: 'Recorder B' })).body).toMatchObject({ repeated: false, changed: 0 });
    expect(await historyOf(server.store, sheet.station.id)).toHaveLength(2);
  });

  it('stays while a photo hangs on it, and the sentence says what to do', async () => {
    const given = {
      requestId: server.newId(),
      who: 'Recorder A',
      name: 'IMG_1.jpg',
      stationId: sheet.station.id,
    };
    const jpeg = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
    const address = `/api/photos?${new URLSearchParams(given)}`;
    const { body: photo } = await server.call('POST', address, jpeg, { 'content-type': 'image/jpeg' });
    const refused = await away();
    expect([refused.status, refused.body.code]).toEqual([409, 'photos-on-station']);
    expect(refused.body.message).toContain('photos hang on this station (1); nothing was withdrawn');
    expect(await counted()).toBe(1);
    const taken = {
      requestId: server.newId(),
      base: photo.revision,
      who: 'Officer A',
      why: 'not this slate',
    };
    await server.call('POST', `/api/photos/${photo.sha256}/away`, taken);
    expect((await away()).status).toBe(200);
  });

  it('that somebody changed meanwhile stays, and theirs is shown', async () => {
    const station = { ...sheet.station, note: 'visited after all' };
    await server.save({ ...sheet, station }, revision);
    const { status, body } = await away();
    expect([status, body.code, body.theirs.sheet.station.note]).toEqual([
      409,
      'sheet-not-as-seen',
      'visited after all',
    ]);
    expect(await counted()).toBe(1);
  });

  it('needs a reason, and a station that was once in this survey', async () => {
    expect((await away({ why: ' ' })).body.message).toBe(
      'the request cannot be read: why: nothing was given; right would be a text',
    );
    const nowhere = `/api/surveys/${server.survey.id}/sheets/${server.newId()}/away`;
    const body = { requestId: server.newId(), base: 'r', who: 'Officer A', why: 'never visited' };
    expect((await server.call('POST', nowhere, body)).body.code).toBe('no-such-station');
    expect(await counted()).toBe(1);
  });

  it('is not brought back by a sheet that somebody still had open: they are asked', async () => {
    await away();
    const late = await server.save({ ...sheet, station: { ...sheet.station, note: 'late' } }, revision);
    expect([late.status, late.body.theirs]).toEqual([409, null]);
    expect(await counted()).toBe(0);
  });
});
