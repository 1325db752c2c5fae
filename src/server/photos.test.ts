import { beforeEach, describe, expect, it } from 'vitest';
import { historyOf, type TestServer, testServer } from '../../test/server-fixture.ts';
import { photoIdOf } from '../survey/photo-words.ts';

let server: TestServer;
beforeEach(async () => {
  server = await testServer();
});

const jpeg = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
// printf '\xff\xd8\xff\xe0\x01\x02\x03' | sha256sum (coreutils)
const jpegSha256 = '474ebe266cd7f9ed28807fa3fdfe0c04cdb3cef9313cdda5c08b15910fcc8184';

function send(more: Record<string, string> = {}, bytes = jpeg, type = 'image/jpeg') {
  const query = new URLSearchParams({
    requestId: server.newId(),
    who: 'Recorder A',
    name: 'IMG_1.jpg',
    ...more,
  });
  return server.call('POST', `/api/photos?${query}`, bytes, { 'content-type': type });
}

function change(base: string | null, more: object) {
  const body = { requestId: server.newId(), base, who: 'Officer A', ...more };
  return server.call('PUT', `/api/photos/${jpegSha256}`, body);
}

async function savedStation(code: string): Promise<string> {
  const sheet = server.newSheet(code);
  await server.save(sheet, null);
  return sheet.station.id;
}

const photosOf = async (query: string) => (await server.call('GET', `/api/photos?${query}`)).body.photos;
const actsOn = async () => (await historyOf(server.store, photoIdOf(jpegSha256))).map((one) => one.signature);

describe('a photo', () => {
  it('is kept whole under its checksum, with what the camera wrote', async () => {
    const camera = {
      takenAt: '2026-09-30T16:20:05',
      timeFrom: 'EXIF',
      clockOffset: '+12:00',
      orientation: '6',
    };
    const { status, body } = await send({ ...camera, surveyId: server.survey.id });
    expect([status, body.sha256, body.bytes, body.type]).toEqual([200, jpegSha256, 7, 'image/jpeg']);
    expect(body).toMatchObject({ ...camera, orientation: 6, stationId: null, matchedBy: null });
    const bytes = await server.app.request(new Request(`http://localhost:4180/api/photos/${jpegSha256}`));
    expect(new Uint8Array(await bytes.arrayBuffer())).toEqual(jpeg);
    expect(bytes.headers.get('content-type')).toBe('image/jpeg');
    expect(bytes.headers.get('content-security-policy')).toContain('sandbox');
  });

  it('sent again with the same request is written once, and so is the same picture from somebody else', async () => {
    const requestId = server.newId();
    const first = await send({ requestId });
    const again = await send({ requestId });
    expect([first.body.repeated, again.body.repeated]).toEqual([false, true]);
    await send({ name: 'copy of IMG_1.jpg', who: 'Recorder B' });
    expect(await photosOf('')).toHaveLength(1);
    expect(await actsOn()).toHaveLength(1);
  });

  it('is added, matched, taken off and matched again as acts with their signatures', async () => {
    const stationId = await savedStation('S1');
    const { body: added } = await send({ surveyId: server.survey.id });
    const { body: matched } = await change(added.revision, { stationId });
    expect(matched).toMatchObject({ stationId, surveyId: server.survey.id, matchedBy: 'by hand' });
    expect(await photosOf(`stationId=${stationId}`)).toHaveLength(1);
    const { body: off } = await change(matched.revision, { stationId: null, why: 'the wrong slate' });
    expect(off).toMatchObject({ stationId: null, surveyId: server.survey.id, matchedBy: null });
    const { body: last } = await change(off.revision, { stationId, matchedBy: 'QR', why: 'read' });
    expect(last.matchedBy).toBe('QR');
    expect((await actsOn()).map(({ who, why }) => [who, why])).toEqual([
      ['Recorder A', 'photo added'],
      ['Officer A', 'photo matched'],
      ['Officer A', 'the wrong slate'],
      ['Officer A', 'read'],
    ]);
  });

  it('whose time a person types says so, and keeps its station', async () => {
    const stationId = await savedStation('S1');
    const { body: added } = await send({ stationId });
    const { body } = await change(added.revision, {
      takenAt: '2026-09-30T09:10',
      note: 'clock of the camera was off',
    });
    expect(body).toMatchObject({ takenAt: '2026-09-30T09:10', timeFrom: 'by hand', stationId });
    expect(body.note).toBe('clock of the camera was off');
  });

  it('matched by somebody else in between is a conflict: nothing is written and theirs is shown', async () => {
    const [one, other] = [await savedStation('S1'), await savedStation('S2')];
    const { body: added } = await send();
    await change(added.revision, { stationId: one });
    const stale = await change(added.revision, { stationId: other });
    expect([stale.status, stale.body.code, stale.body.theirs.stationId]).toEqual([409, 'photo-changed', one]);
    const resent = await send({ stationId: other });
    expect([resent.status, resent.body.theirs.stationId]).toEqual([409, one]);
    // Both want the same: no conflict, and no act.
    expect((await change(added.revision, { stationId: one })).status).toBe(200);
    expect(await actsOn()).toHaveLength(2);
  });

  it('sent with a station that it did not have takes it over; with one that is not in the book it is refused', async () => {
    const stationId = await savedStation('S1');
    await send();
    expect((await send({ stationId })).body.stationId).toBe(stationId);
    const unknown = await send({ stationId: server.newId() }, new Uint8Array([...jpeg, 9]));
    expect([unknown.status, unknown.body.code]).toEqual([404, 'no-such-station']);
    expect(await photosOf('')).toHaveLength(1);
  });

  it('of no survey yet comes along with each survey, and those of unknown time come last', async () => {
    await send({ name: 'b.jpg' });
    await send({ name: 'a.jpg', surveyId: server.survey.id }, new Uint8Array([...jpeg, 9]));
    await send({ name: 'z.jpg', takenAt: '2026-09-30T08:00' }, new Uint8Array([...jpeg, 8]));
    const names = async (query: string) => (await photosOf(query)).map(({ name }: { name: string }) => name);
    expect(await names(`surveyId=${server.survey.id}`)).toEqual(['z.jpg', 'a.jpg', 'b.jpg']);
    expect(await names(`surveyId=${server.newId()}`)).toEqual(['z.jpg', 'b.jpg']);
  });

  it('is known by its bytes and not by its name: a page called .jpg is refused', async () => {
    const page = new TextEncoder().encode('<script>alert(1)</script>');
    expect(await send({}, page)).toMatchObject({ status: 415, body: { code: 'not-a-picture' } });
    const drawing = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect((await send({ name: 'a.svg' }, drawing, 'image/svg+xml')).status).toBe(415);
    expect((await send({}, jpeg, 'text/plain')).status).toBe(415);
    expect((await server.call('GET', '/api/photos/..%2f..%2fbook.sqlite')).status).toBe(400);
  });

  it('without somebody who stands for it, or with a time that is none, is refused', async () => {
    for (const wrong of [
      { who: '' },
      { takenAt: '2026-13-01T10:00' },
      { orientation: '9' },
      { timeFrom: 'GPS' },
    ]) {
      const { status, body } = await send(wrong as Record<string, string>);
      expect([wrong, status, body.code]).toEqual([wrong, 400, 'request-invalid']);
    }
    expect(await photosOf('')).toEqual([]);
  });

  it('of more than 40 MB is refused with the limit', async () => {
    const { status, body } = await send({}, new Uint8Array(41 * 1024 * 1024));
    expect([status, body.message]).toEqual([413, 'this is too large: at most 40 MB can be sent here']);
  });
});

describe('the identity of a photo', () => {
  // RFC 9562, 5.8: version 8 in the high bits of octet 6, variant 10 in those of octet 8, the rest as the maker likes.
  it('is a UUIDv8 made of its checksum, the same on every laptop', () => {
    expect(photoIdOf(jpegSha256)).toBe('474ebe26-6cd7-89ed-a880-7fa3fdfe0c04');
  });
});
