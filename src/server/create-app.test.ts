import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { type TestServer, testServer } from '../../test/server-fixture.ts';
import { failureParameters } from '../survey/failure.ts';
import { addresses } from './create-app.ts';
import { refusalStatus } from './refusal.ts';

let server: TestServer;
beforeEach(async () => {
  server = await testServer();
});

describe('only Slateline itself on this computer', () => {
  it('is answered, whatever other name points to this address', async () => {
    for (const host of ['localhost:4180', '127.0.0.1:4180', '[::1]:4180']) {
      expect((await server.call('GET', '/api/book', undefined, { host })).status).toBe(200);
    }
    for (const host of [
      'reef.example:4180',
      'localhost:9999',
      'localhost',
      '127.0.0.1.reef.example:4180',
      '',
    ]) {
      const { status, body } = await server.call('GET', '/api/book', undefined, { host });
      expect([host, status, body.code]).toEqual([host, 421, 'wrong-host']);
    }
  });

  it('may write: another page, another site or another port may not', async () => {
    const sheet = server.newSheet('S1');
    const path = `/api/surveys/${server.survey.id}/sheets/${sheet.station.id}`;
    const body = { requestId: server.newId(), base: null, who: 'Recorder A', sheet };
    const foreign = [
      { origin: 'http://reef.example' },
      { origin: 'http://localhost:9999' },
      { origin: 'https://localhost:4180' },
      { origin: 'null' },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
      { 'sec-fetch-site': 'none' },
    ];
    for (const headers of foreign) {
      const answer = await server.call('PUT', path, body, headers as Record<string, string>);
      expect([headers, answer.status, answer.body.code]).toEqual([headers, 403, 'foreign-origin']);
    }
    expect(await server.store.all('station')).toEqual([]);
    const own = { origin: 'http://localhost:4180', 'sec-fetch-site': 'same-origin' };
    expect((await server.call('PUT', path, body, own)).status).toBe(200);
  });

  it('may ask: another page may be a link to Slateline, but cannot make it work behind our back', async () => {
    const site = { 'sec-fetch-site': 'cross-site' };
    const image = await server.call('GET', '/api/book', undefined, { ...site, 'sec-fetch-mode': 'no-cors' });
    expect(image.status).toBe(403);
    const link = await server.call('GET', '/api/book', undefined, { ...site, 'sec-fetch-mode': 'navigate' });
    expect(link.status).toBe(200);
  });

  it('a form cannot write: what is not JSON is refused', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', '']) {
      const answer = await server.call('POST', '/api/surveys', {}, { 'content-type': type });
      expect([type, answer.status, answer.body.code]).toEqual([type, 415, 'not-json']);
    }
  });
});

describe('every answer', () => {
  it('tells the browser what to refuse: nothing inline, no guessing of types, no framing, no referrer', async () => {
    for (const path of ['/api/book', '/', '/nowhere.js', '/api/nowhere']) {
      const { headers } = await server.call('GET', path);
      const policy = headers.get('content-security-policy')!;
      expect(policy).toContain("default-src 'none'");
      expect(policy).not.toContain('unsafe');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('x-frame-options')).toBe('DENY');
    }
  });

  it('of the report page allows its inline style and still no script', async () => {
    await server.save(server.newSheet('S1'), null);
    const { status, headers, body } = await server.call('GET', `/report/${server.survey.id}`);
    expect(status).toBe(200);
    const policy = headers.get('content-security-policy')!;
    expect(policy).toContain("style-src 'unsafe-inline'");
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('script');
    expect(body).toContain('<style');
    expect(body).not.toContain('<script');
  });

  it('that refuses is a code and one sentence, in the language asked for', async () => {
    const english = await server.call('GET', '/api/surveys/0199a000-0000-7000-8000-000000000000/words');
    expect(english).toMatchObject({ status: 404, body: { code: 'no-such-survey' } });
    const asked = [{ headers: { 'accept-language': 'fr-FR,en;q=0.5' } }, { query: '?lang=fr' }];
    for (const { headers, query } of asked) {
      const path = `/api/surveys/0199a000-0000-7000-8000-000000000000/words${query ?? ''}`;
      expect((await server.call('GET', path, undefined, headers)).body.message).toContain('campagne');
    }
    const swiss = await server.call('GET', '/api/nowhere', undefined, { 'accept-language': 'de, en;q=0.1' });
    expect(swiss.body.message).toBe('there is nothing at this address');
  });

  it('to a broken body says where it broke', async () => {
    const response = await server.app.request(
      new Request('http://localhost:4180/api/surveys', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: '{"requestId": ',
      }),
    );
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({ code: 'request-invalid' });
  });

  it('to a body beyond the limit is 413 with the limit in it, also when its length was not told', async () => {
    const large = JSON.stringify('x'.repeat(5 * 1024 * 1024));
    const send = (body: BodyInit) =>
      server.app.request(
        new Request('http://localhost:4180/api/surveys', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body,
          duplex: 'half',
        } as RequestInit),
      );
    for (const body of [large, new Blob([large]).stream()]) {
      const response = await send(body);
      expect(response.status).toBe(413);
      expect(await response.json()).toEqual({
        code: 'too-large',
        message: 'this is too large: at most 4 MB can be sent here',
      });
    }
  });

  it('to another method names those that are known', async () => {
    const answer = await server.call('DELETE', '/api/book');
    expect(answer).toMatchObject({ status: 405, body: { code: 'wrong-method' } });
    expect(answer.headers.get('allow')).toBe('GET');
  });

  it('to a fault of ours tells no secret and keeps the whole of it for us', async () => {
    const broken = await testServer({
      today: () => {
        throw new Error('secret path');
      },
    });
    const answer = await broken.call('GET', '/api/book');
    expect(answer).toMatchObject({ status: 500, body: { code: 'internal-error' } });
    expect(JSON.stringify(answer.body)).not.toContain('secret');
    expect(String(broken.faults[0])).toContain('secret path');
  });
});

describe('the screens', () => {
  it('that were not built yet say how to build them', async () => {
    const answer = await server.call('GET', '/', undefined, { accept: 'text/html' });
    expect(answer.status).toBe(503);
    expect(answer.body).toContain('npm run build');
  });

  it('are found by address; a room is the start page, a missing file is missing', async () => {
    const files: Record<string, string> = {
      '/index.html': 'start',
      '/assets/app-AbCd1234.js': 'app',
      '/sw.js': 'sw',
    };
    const built = await testServer({
      screenFile: async (path) =>
        files[path] === undefined
          ? null
          : { bytes: new TextEncoder().encode(files[path]), type: 'text/html' },
    });
    const room = await built.call('GET', '/sheets/S7');
    expect([room.status, room.body, room.headers.get('cache-control')]).toEqual([200, 'start', 'no-cache']);
    const asset = await built.call('GET', '/assets/app-AbCd1234.js');
    expect(asset.headers.get('cache-control')).toContain('immutable');
    const worker = await built.call('GET', '/sw.js');
    expect(worker.headers.get('cache-control')).toBe('no-cache');
    expect(worker.headers.get('service-worker-allowed')).toBe('/');
    expect((await built.call('GET', '/assets/gone.js')).status).toBe(404);
    expect((await built.call('POST', '/sheets', {})).status).toBe(404);
  });
});

describe('the list of routes', () => {
  const page = readFileSync(join(import.meta.dirname, '../../docs/server.md'), 'utf8');

  it('stands in the docs, each with its errors', () => {
    expect(addresses().filter((address) => !page.includes(`\`${address}\``))).toEqual([]);
    expect(Object.keys(refusalStatus).filter((code) => !page.includes(`\`${code}\``))).toEqual([]);
    expect(Object.keys(failureParameters)).toContain('book-locked');
  });

  it('is an OpenAPI 3.1 document, bodies and answers included', async () => {
    const { body } = await server.call('GET', '/api/openapi.json');
    expect(body.openapi).toBe('3.1.0');
    const listed = Object.entries(body.paths).flatMap(([path, methods]) =>
      Object.keys(methods as object).map((method) => `${method.toUpperCase()} ${path}`),
    );
    expect(listed.sort()).toEqual([...addresses()].sort());
    const save = body.paths['/api/surveys/{surveyId}/sheets/{stationId}'].put;
    expect(save.requestBody.content['application/json'].schema.required).toContain('requestId');
  });
});
