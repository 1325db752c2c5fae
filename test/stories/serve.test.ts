/** The server as a person starts it: at its port, with its threads, on a book that other programs use as well. */

import { createHash } from 'node:crypto';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { photoShelf } from '../../src/cli/serve/photo-shelf.ts';
import { screenFiles } from '../../src/cli/serve/screen-files.ts';
import { openBook } from '../../src/store/book-folder.ts';
import type { Job } from '../../src/tasks/sheets/answer-schemas.ts';
import { killServer } from '../faults/kill-server.ts';
import { importTables } from '../faults/pieces-of-work.ts';
import { type Served, startServer, stopServer } from '../faults/served-sheets.ts';
import { bookWith, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

let book = '';
let served: Served;
let surveyId = '';
// biome-ignore lint/suspicious/noExplicitAny: tests read the answers as any program would
const get = async (path: string): Promise<any> => (await fetch(new URL(path, served.url))).json();

beforeAll(async () => {
  book = await bookWith(miniatureTables());
  served = await startServer(book);
  surveyId = (await get('/api/surveys')).surveys[0].survey.id;
});
afterAll(async () => {
  await stopServer(served);
});

describe('slateline serve', () => {
  it('refuses any address that another computer could reach, and says why', async () => {
    for (const host of ['0.0.0.0', '192.168.1.4', '::', 'reef.example', '127.0.0.2']) {
      const ran = await slateline('serve', '--book', book, '--host', host);
      expect([host, ran.exitCode]).toEqual([host, 2]);
      expect(ran.stderr).toContain('another address needs accounts, which do not exist yet');
    }
  });

  it('says in one sentence when the port is taken', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as AddressInfo;
    const ran = await slateline('serve', '--book', book, '--port', String(port));
    other.close();
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain(`another program is using port ${port}`);
  });

  it('brings in what an earlier version noted beside its photos, once', async () => {
    const old = await bookWith(miniatureTables());
    const picture = 'the bytes of a slate';
    const sha256 = createHash('sha256').update(picture).digest('hex');
    const note = { sha256, type: 'image/jpeg', bytes: picture.length, name: 'IMG_1.jpg', takenAt: null };
    mkdirSync(join(old, 'photos'), { recursive: true });
    writeFileSync(join(old, 'photos', `${sha256}.jpg`), picture);
    writeFileSync(join(old, 'photos', `${sha256}.json`), JSON.stringify(note));
    for (let time = 0; time < 2; time += 1) {
      const { rows } = await slatelineJson('serve', '--book', old, '--get', '/api/photos');
      const photos = [{ sha256, name: 'IMG_1.jpg', stationId: null }];
      expect(rows[0]).toMatchObject({ body: { photos } });
    }
    const { rows } = await slatelineJson('history', '--book', old);
    const why = 'photos kept before they had a history';
    expect(rows.filter((row) => row['table'] === 'photos')).toMatchObject([
      { what: 'entered', who: 'Slateline', why, record: { photo: 'IMG_1.jpg' } },
    ]);
    expect((await slateline('verify', '--book', old)).exitCode).toBe(0);
  });

  it('answers one address and stops with --get', async () => {
    const { rows } = await slatelineJson('serve', '--book', book, '--get', '/api/surveys');
    expect(rows[0]).toMatchObject({ status: 200, body: { surveys: [{ stations: 21 }] } });
    expect((await slateline('serve', '--book', book, '--get', '/api/nowhere')).exitCode).toBe(1);
  });

  it('says nothing when it is stopped, though it was still working something out', async () => {
    const { process: server, url } = await startServer(book, 'pipe');
    let said = '';
    server.stderr!.on('data', (part: Buffer) => {
      said += part.toString();
    });
    const asked = fetch(new URL(`/api/surveys/${surveyId}/sizes`, url)).catch(() => null);
    const gone = new Promise((resolve) => server.once('exit', resolve));
    server.kill('SIGTERM');
    expect([await gone, said]).toEqual([0, '']);
    await asked;
  });

  it('makes the demo book when it is asked to and there is none', async () => {
    const demo = join(temporaryFolder(), 'demo');
    const { rows } = await slatelineJson('serve', '--book', demo, '--demo', '--get', '/api/book');
    expect(rows[0].body).toMatchObject({ invented: true });
  });

  // Authority: the command line, which is tested against METHODS; the two must say the same.
  it('gives the numbers the command line gives', async () => {
    const options = ['--book', book, '--survey', 'S1', '--by', 'stratum'];
    const { rows } = await slatelineJson('density', ...options);
    const answer = await get(`/api/surveys/${surveyId}/densities?by=stratum`);
    expect(answer.rows.map(comparable)).toEqual(rows.map(comparable));
    const sizes = await slatelineJson('sizes', ...options);
    expect((await get(`/api/surveys/${surveyId}/sizes?by=stratum`)).rows).toHaveLength(sizes.rows.length);
    const check = await slatelineJson('check', '--book', book);
    const { problems } = await get(`/api/surveys/${surveyId}/problems`);
    expect(problems.map((one: { code: string }) => one.code)).toEqual(check.rows.map((one) => one.code));
  });

  // Invariance: the animals behind a number add up to it.
  it('opens a number down to the animals it was made of', async () => {
    const [row] = (await get(`/api/surveys/${surveyId}/densities?species=sandfish`)).rows;
    const { stations } = await get(`/api/surveys/${surveyId}/explain?species=sandfish`);
    const observed = stations.filter((one: { state: string }) => one.state === 'observed');
    const total = (key: string) =>
      observed.reduce((sum: number, one: Record<string, number>) => sum + one[key]!, 0);
    expect(total('animals')).toBe(row.animals);
    expect(total('searchedAreaM2')).toBeCloseTo(row.searchedAreaM2, 9);
  });

  it('imports in a thread of its own, tells its steps to whoever listens, and keeps the result', async () => {
    const strata = 'stratum,area_ha\nnew reef,50\n';
    const job = await startImport('strata.csv', strata);
    const steps = await eventsOf(job.id);
    expect(steps.at(-1)).toMatchObject({ state: 'done', share: 1 });
    const result = await get(`/api/jobs/${job.id}/result`);
    expect(result).toMatchObject({ written: true, totals: [{ table: 'strata', added: 1 }] });
    const words = await get(`/api/surveys/${surveyId}/words`);
    expect(words.strata.map((one: { name: string }) => one.name)).toContain('new reef');
  });

  it('gives up an import that is cancelled, and writes nothing of it', async () => {
    const rows = Array.from({ length: 60_000 }, (_, i) => `far reef ${i},${i + 1}`).join('\n');
    const job = await startImport('strata.csv', `stratum,area_ha\n${rows}\n`);
    const cancelled = await fetch(new URL(`/api/jobs/${job.id}`, served.url), { method: 'DELETE' });
    expect(await cancelled.json()).toMatchObject({ state: 'cancelled' });
    expect((await fetch(new URL(`/api/jobs/${job.id}/result`, served.url))).status).toBe(409);
    const { strata } = await get(`/api/surveys/${surveyId}/words`);
    expect(strata.filter((one: { name: string }) => one.name.startsWith('far'))).toEqual([]);
  });

  it('says a stop of an imported file as a problem, and writes nothing', async () => {
    const job = await startImport('counts.csv', importTables(1)['counts.csv']!);
    await eventsOf(job.id);
    const result = await get(`/api/jobs/${job.id}/result`);
    expect(result.written).toBe(false);
    expect(result.problems[0]).toMatchObject({ severity: 'stop' });
  });

  it('answers while another program writes, and keeps what was sent meanwhile', async () => {
    const { station } = (await sheetInBook()).sheet;
    const other = await openBook(book);
    const sheet = await sheetInBook();
    const body = { ...sheet.sheet, station: { ...station, note: 'sent while the book was taken' } };
    const saved = hold(book, 400, async () => {
      const save = put(body, sheet.revision);
      expect((await get('/api/book')).invented).toBe(false);
      return save;
    });
    expect((await (await saved).json()).changed).toBe(1);
    const kept = (await other.all('station')).find((one) => one.id === station.id);
    await other.close();
    expect(kept?.note).toBe('sent while the book was taken');
  });
});

describe('no file but the built screens and the photos', () => {
  it('can be reached, by no way of writing the address and through no link', async () => {
    const folder = join(temporaryFolder(), 'web');
    mkdirSync(join(folder, 'assets'), { recursive: true });
    writeFileSync(join(folder, 'index.html'), 'start');
    writeFileSync(join(folder, '..', 'secret.txt'), 'secret');
    symlinkSync(join(folder, '..', 'secret.txt'), join(folder, 'link.txt'));
    symlinkSync(join(folder, '..'), join(folder, 'out'));
    const find = screenFiles(folder);
    expect((await find('/index.html'))?.type).toBe('text/html; charset=utf-8');
    for (const address of [
      '/../secret.txt',
      '/..%2fsecret.txt',
      '/link.txt',
      '/out/secret.txt',
      '/assets',
      '/',
    ]) {
      expect([address, await find(address)]).toEqual([address, null]);
    }
    for (const address of [
      '/../book.sqlite',
      '/%2e%2e/book.sqlite',
      '/..%2f..%2fetc/passwd',
      '//etc/passwd',
    ]) {
      const response = await fetch(served.url.replace(/\/$/, '') + address);
      expect(response.status).toBeGreaterThanOrEqual(400);
    }
  });

  it('of a photo, a link in the folder is not followed', async () => {
    const folder = temporaryFolder();
    const sha256 = 'a'.repeat(64);
    mkdirSync(join(folder, 'photos'));
    symlinkSync('/etc/hostname', join(folder, 'photos', `${sha256}.jpg`));
    expect(await photoShelf(folder).read(sha256)).toBeNull();
  });
});

describe('a server that is killed in the middle of saves', () => {
  it('loses no acknowledged sheet and doubles none that is sent again', async () => {
    const tally = await killServer({ folder: join(temporaryFolder(), 'book'), kills: 4, seed: 5 });
    expect(tally.wrong).toEqual([]);
    expect(tally.acknowledged).toBeGreaterThan(4);
  });
});

function comparable(row: Record<string, unknown>) {
  const { survey, species, scope, stations, animals, searchedAreaM2, densityPerHa, standardErrorPerHa } = row;
  const { intervalPerHa, totalAnimals, prevalence, reason, leftOut } = row;
  const head = {
    survey,
    species,
    scope,
    stations,
    animals,
    searchedAreaM2,
    densityPerHa,
    standardErrorPerHa,
  };
  return { ...head, intervalPerHa, totalAnimals, prevalence, reason, leftOut };
}

async function startImport(name: string, text: string): Promise<Job> {
  const response = await fetch(new URL(`/api/jobs/import?name=${name}&who=Recorder%20A`, served.url), {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body: text,
  });
  expect(response.status).toBe(202);
  return (await response.json()) as Job;
}

/** All that is told until the job has ended. */
async function eventsOf(jobId: string): Promise<Job[]> {
  const text = await (await fetch(new URL(`/api/jobs/${jobId}/events`, served.url))).text();
  return [...text.matchAll(/^data: (.*)$/gm)].map((match) => JSON.parse(match[1]!) as Job);
}

async function sheetInBook() {
  const { stations } = await get(`/api/surveys/${surveyId}/stations`);
  return get(`/api/surveys/${surveyId}/sheets/${stations[0].id}`);
}

function put(sheet: { station: { id: string } }, base: string): Promise<Response> {
  return fetch(new URL(`/api/surveys/${surveyId}/sheets/${sheet.station.id}`, served.url), {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ requestId: crypto.randomUUID(), base, who: 'Recorder A', sheet }),
  });
}

/** Does something while another program has the book. */
async function hold<Value>(folder: string, ms: number, work: () => Promise<Value>): Promise<Value> {
  const { DatabaseSync } = await import('node:sqlite');
  const database = new DatabaseSync(join(folder, 'book.sqlite'));
  database.exec('BEGIN IMMEDIATE');
  setTimeout(() => {
    database.exec('ROLLBACK');
    database.close();
  }, ms);
  return work();
}
