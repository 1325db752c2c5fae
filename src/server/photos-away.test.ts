import { beforeEach, describe, expect, it } from 'vitest';
import { historyOf, type TestServer, testServer } from '../../test/server-fixture.ts';
import { photoIdOf } from '../survey/photo-words.ts';

let server: TestServer;
let sha256: string;
let revision: string;
let stationId: string;

/** A photo that hangs on a station, with a note. */
beforeEach(async () => {
  server = await testServer();
  const sheet = server.newSheet('S1');
  await server.save(sheet, null);
  stationId = sheet.station.id;
  const given = { requestId: server.newId(), who: 'Recorder A', name: 'IMG_1.jpg', stationId, note: 'wet' };
  const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
  const address = `/api/photos?${new URLSearchParams(given)}`;
  ({
    body: { sha256, revision },
  } = await server.call('POST', address, bytes, { 'content-type': 'image/jpeg' }));
});

const away = (more: object = {}) =>
  server.call('POST', `/api/photos/${sha256}/away`, {
    requestId: server.newId(),
    base: revision,
    who: 'Officer A',
    why: 'a picture of the lunch',
    ...more,
  });
const back = (more: object = {}) =>
  server.call('POST', `/api/photos/${sha256}/back`, { requestId: server.newId(), who: 'Officer A', ...more });
const say = (more: object) =>
  server.call('PUT', `/api/photos/${sha256}`, {
    requestId: server.newId(),
    base: revision,
    who: 'Officer A',
    ...more,
  });
const standing = async () => (await server.call('GET', '/api/photos')).body.photos;
const gone = async (query = '') => (await server.call('GET', `/api/photos-away${query}`)).body.photos;
const acts = async () => (await historyOf(server.store, photoIdOf(sha256))).map((one) => one.signature.why);

describe('a photo taken away', () => {
  it('is in no list, and the history tells who and why; its bytes are still there', async () => {
    expect((await away()).body).toMatchObject({ sha256, revision, repeated: false });
    expect(await standing()).toEqual([]);
    expect(await gone()).toMatchObject([
      { sha256, stationId, note: 'wet', who: 'Officer A', why: 'a picture of the lunch' },
    ]);
    expect(await acts()).toEqual(['photo added', 'a picture of the lunch']);
    const bytes = await server.app.request(new Request(`http://localhost:4180/api/photos/${sha256}`));
    expect([bytes.status, (await bytes.arrayBuffer()).byteLength]).toEqual([200, 7]);
    expect(await gone(`?surveyId=${server.survey.id}`)).toHaveLength(1);
    expect(await gone(`?surveyId=${server.newId()}`)).toEqual([]);
  });

  it('twice is taken away once, with the same request or by somebody else', async () => {
    const requestId = server.newId();
    await away({ requestId });
    expect((await away({ requestId })).body).toMatchObject({ repeated: true });
    expect((await away({ who: 'Recorder B' })).body).toMatchObject({ repeated: false });
    expect(await acts()).toEqual(['photo added', 'a picture of the lunch']);
  });

  it('of which somebody said something in between stays, and what was said is shown', async () => {
    await say({ note: 'the slate of S1' });
    const stale = await away();
    expect([stale.status, stale.body.code]).toEqual([409, 'photo-changed']);
    expect(stale.body.theirs.note).toBe('the slate of S1');
    expect(await standing()).toHaveLength(1);
    expect((await away({ base: stale.body.theirs.revision })).status).toBe(200);
  });

  it('needs a reason, and a photo that was once in the book', async () => {
    expect((await away({ why: '' })).status).toBe(400);
    const unknown = { requestId: server.newId(), base: null, who: 'Officer A', why: 'not ours' };
    const answer = await server.call('POST', `/api/photos/${'0'.repeat(64)}/away`, unknown);
    expect([answer.status, answer.body.code]).toEqual([404, 'no-such-photo']);
  });

  it('is told so to whoever says something of it, and how it comes back', async () => {
    await away();
    const { status, body } = await say({ note: 'late' });
    expect([status, body.message]).toEqual([
      404,
      'this photo is not in the book; it may have been taken away: then it can be brought back under Photos',
    ]);
  });

  it('comes back as it was, once', async () => {
    await away();
    const requestId = server.newId();
    expect((await back({ requestId })).body).toMatchObject({ revision, stationId, note: 'wet' });
    expect((await back({ requestId })).body).toMatchObject({ repeated: true });
    expect(await standing()).toHaveLength(1);
    expect(await gone()).toEqual([]);
    expect(await acts()).toEqual(['photo added', 'a picture of the lunch', 'photo brought back']);
    expect((await back()).status).toBe(200);
    expect(await acts()).toHaveLength(3);
  });

  it('comes back without its station where that was withdrawn meanwhile', async () => {
    await away();
    const [station] = (await server.store.stationRecords(stationId)).stations;
    const records = await server.store.stationRecords(stationId);
    const withdrawn = [
      ...records.tallies.map(({ id }) => ({ kind: 'tally', recordId: id, after: null }) as const),
      ...records.transects.map(({ id }) => ({ kind: 'transect', recordId: id, after: null }) as const),
      { kind: 'station', recordId: station!.id, after: null } as const,
    ];
    const signature = { who: 'Officer A', at: '2026-09-30T09:00:00.000Z', device: 'laptop', why: 'mistake' };
    await server.store.apply(withdrawn, signature, server.newId);
    expect((await back()).body).toMatchObject({ stationId: null, matchedBy: null, note: 'wet' });
  });
});
