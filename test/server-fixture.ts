/** A server without a port on a book in memory: one survey, one stratum, three species, no station yet. */

import { createHash } from 'node:crypto';
import { parseHTML } from 'linkedom';
import { identityMaker } from '../src/cli/identity.ts';
import { type App, createApp } from '../src/server/create-app.ts';
import type { Picture, ServerDependencies } from '../src/server/dependencies.ts';
import { openMemoryBook } from '../src/store/book-folder.ts';
import type { SqliteStore } from '../src/store/sqlite-store.ts';
import type { Revision } from '../src/survey/store.ts';
import type { Species, Stratum, Survey } from '../src/survey/words.ts';
import type { Sheet } from '../src/tasks/sheets/sheet-schemas.ts';
import { doWork } from '../src/tasks/sheets/work-orders.ts';
import { record, sign } from './store-records.ts';

export const port = 4180;
const at = '2026-09-30T08:00:00.000Z';

export interface TestServer {
  readonly app: App;
  readonly store: SqliteStore;
  readonly survey: Survey;
  readonly stratum: Stratum;
  readonly species: readonly Species[];
  readonly newId: () => string;
  /** Faults of ours that were logged; none in a good test. */
  readonly faults: unknown[];
  call(method: string, path: string, body?: unknown, headers?: Record<string, string>): Promise<Answer>;
  /** A new station with two belts: sandfish counted on the first, none seen on the second. */
  newSheet(code: string, count?: number): Sheet;
  save(sheet: Sheet, base: string | null, more?: object): Promise<Answer>;
}

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  // biome-ignore lint/suspicious/noExplicitAny: tests read the answer as any program would
  readonly body: any;
}

export async function testServer(changed: Partial<ServerDependencies> = {}): Promise<TestServer> {
  const newId = identityMaker(Date.now);
  const store = await openMemoryBook({ name: 'Test reefs', invented: true, at, bookId: newId() });
  const survey = record('survey', { id: newId(), name: 'North 2026' });
  const stratum = record('stratum', { id: newId(), name: 'reef', areaHa: 100 });
  const names = ['Holothuria scabra', 'Holothuria atra', 'Stichopus herrmanni'];
  const species = names.map((name) => record('species', { id: newId(), name }));
  await store.apply(
    [
      { kind: 'survey', recordId: survey.id, after: survey },
      { kind: 'stratum', recordId: stratum.id, after: stratum },
      ...species.map((after) => ({ kind: 'species', recordId: after.id, after }) as const),
    ],
    sign('frame'),
    newId,
  );
  const faults: unknown[] = [];
  const app = createApp({
    ...dependencies(store, newId, faults),
    ...changed,
  });
  const call: TestServer['call'] = async (method, path, body, headers = {}) => {
    const isBytes = body instanceof Uint8Array;
    const response = await app.request(
      new Request(`http://localhost:${port}${path}`, {
        method,
        headers: {
          ...(body === undefined || isBytes ? {} : { 'content-type': 'application/json' }),
          ...headers,
        },
        ...(body === undefined ? {} : { body: isBytes ? new Uint8Array(body) : JSON.stringify(body) }),
      }),
    );
    const text = await response.text();
    const isJson = response.headers.get('content-type')?.startsWith('application/json');
    return { status: response.status, headers: response.headers, body: isJson ? JSON.parse(text) : text };
  };
  const save: TestServer['save'] = (sheet, base, more = {}) =>
    call('PUT', `/api/surveys/${survey.id}/sheets/${sheet.station.id}`, {
      requestId: newId(),
      base,
      who: 'Recorder A',
      sheet,
      ...more,
    });
  const newSheet: TestServer['newSheet'] = (code, count = 3) => {
    const station = record('station', { id: newId(), surveyId: survey.id, stratumId: stratum.id, code });
    const first = record('transect', { id: newId(), stationId: station.id, code: '1', noneSeen: false });
    const second = record('transect', { id: newId(), stationId: station.id, code: '2', noneSeen: true });
    const lengths = [{ lengthMm: 180, n: 1, measure: null, photo: null }];
    const given = { id: newId(), transectId: first.id, speciesId: species[0]!.id };
    return { station, transects: [first, second], tallies: [record('tally', { ...given, count, lengths })] };
  };
  return { app, store, survey, stratum, species, newId, faults, call, newSheet, save };
}

function dependencies(store: SqliteStore, newId: () => string, faults: unknown[]): ServerDependencies {
  const shelf = new Map<string, Picture>();
  const tools = {
    store,
    newId,
    version: '0',
    fonts: () => [],
    document: () => parseHTML('<!doctype html><html></html>').document,
  };
  return {
    store,
    work: {
      read: (order) => doWork(order, { ...tools, onStep: () => {} }),
      long: (order, { onStep }) => doWork(order, { ...tools, onStep }),
    },
    photos: {
      read: async (sha256) => shelf.get(sha256) ?? null,
      keep: async ({ sha256, type }, bytes) => {
        shelf.set(sha256, { type, bytes: new Uint8Array(bytes) });
      },
    },
    screenFile: async () => null,
    port: () => port,
    now: () => new Date(at),
    today: () => '2026-09-30',
    newId,
    sha256: (content) => createHash('sha256').update(content).digest('hex'),
    pause: (ms) => new Promise((resolve) => (ms === 0 ? setImmediate(resolve) : setTimeout(resolve, ms))),
    device: 'test laptop',
    version: '0',
    log: (error) => faults.push(error),
  };
}

/** The history, of one record when its identity is given. */
export async function historyOf(store: SqliteStore, recordId?: string): Promise<Revision[]> {
  const revisions: Revision[] = [];
  for await (const one of store.revisions(recordId)) revisions.push(one);
  return revisions;
}
