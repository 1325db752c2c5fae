/**
 * How long the rooms of the screens take to open on an archive of a million animals, beside the bare reading of the
 * same tables, and how long a save and a question wait while an import runs: `node bench/open-rooms.ts`.
 */

import { join } from 'node:path';
import { identityMaker } from '../src/cli/identity.ts';
import { openBook } from '../src/store/book-folder.ts';
import { sendSheet, servedSheet, startServer, stopServer } from '../test/faults/served-sheets.ts';
import { ownFolder } from '../test/own-folder.ts';
import { fullArchive, writeArchive } from './archive.ts';
import { median, timed } from './clock.ts';
import { bareScan } from './estimate-archive.ts';
import { importArchive } from './import-archive.ts';

const work = ownFolder('bench');
const book = join(work, 'book');
const newId = identityMaker(Date.now);
const size = { belts: 6, lengthsEach: 4 };
const say = (text: string) => process.stdout.write(`${text}\n`);
const ms = (value: number) => `${value.toFixed(0)} ms`;

const { animals } = writeArchive(join(work, 'csv'), fullArchive);
await importArchive(join(work, 'csv'), book);
const store = await openBook(book);
const surveys = await store.all('survey');
const survey = surveys.at(-1)!;
const [stratum, species] = [(await store.all('stratum'))[0]!, await store.all('species')];
await store.close();
say(`${animals} measured animals; ${survey.name}, the last of 20 surveys.`);
const bareTimes: number[] = [];
for (let round = 0; round < 5; round++) bareTimes.push((await timed(bare)).ms);
const bareMs = median(bareTimes);
say(
  `bare reading of stations, transects and counts of the book: ${ms(bareMs)}, median of ${bareTimes.length}`,
);

const hasty = await startServer(book);
await opened(hasty.url, 'densities?by=survey', 'before the server is ready');
await stopServer(hasty);
const served = await startServer(book);
// The server works out the latest densities by itself while a person finds the room: waited for, however busy the machine.
for (const by of ['survey', 'stratum'])
  await (await fetch(`${served.url}api/surveys/${survey.id}/densities?by=${by}`)).text();
for (const room of ['stations', 'densities?by=survey', 'sizes', 'problems']) await opened(served.url, room);
for (const by of ['stratum', 'site', 'zone']) await opened(served.url, `densities?by=${by}`, 'a new scope');
for (const by of ['survey', 'stratum']) await opened(served.url, `densities?by=${by}`, 'again');
await afterSave();
await everySurvey();
await whileImporting();
await stopServer(served);

function bare(): number {
  return bareScan(join(book, 'book.sqlite'), 'id, transect_id, species_id, count');
}

async function opened(url: string, room: string, when = 'the first time', of = survey): Promise<number> {
  const { ms: took } = await timed(async () => (await fetch(`${url}api/surveys/${of.id}/${room}`)).text());
  say(`${room}, ${when}: ${ms(took)} (ratio ${(took / bareMs).toFixed(2)})`);
  return took;
}

/** Tonight's sheet came in: the survey it belongs to is read again, and no other. */
async function afterSave(): Promise<void> {
  const rooms = ['densities?by=survey', 'densities?by=stratum', 'sizes', 'stations', 'problems'];
  for (const [n, room] of rooms.entries()) {
    const sheet = servedSheet(-1 - n, {
      frame: { survey, stratum, species: species.slice(0, 5) },
      size,
      newId,
    });
    await sendSheet(served.url, { requestId: newId(), base: null, who: 'Recorder A', sheet });
    await opened(served.url, room, 'after a sheet was saved');
  }
}

/** As somebody does who looks at the years one after the other. */
async function everySurvey(): Promise<void> {
  const times: number[] = [];
  for (const one of surveys) {
    const path = `${served.url}api/surveys/${one.id}/densities?by=stratum`;
    times.push((await timed(async () => (await fetch(path)).text())).ms);
  }
  const all = times.reduce((sum, one) => sum + one, 0);
  const [total, worst] = [all, Math.max(...times)].map(
    (one) => `${ms(one)} (ratio ${(one / bareMs).toFixed(2)})`,
  );
  say(
    `densities?by=stratum of all ${surveys.length} surveys, one after the other: ${total}, the slowest ${worst}`,
  );
}

async function whileImporting(): Promise<void> {
  const rows = Array.from({ length: 150_000 }, (_, i) => `far reef ${i},${i + 1}`).join('\n');
  const response = await fetch(`${served.url}api/jobs/import?name=strata.csv&who=bench`, {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body: `stratum,area_ha\n${rows}\n`,
  });
  const job = (await response.json()) as { readonly id: string };
  const asked: number[] = [];
  const saved: number[] = [];
  const begun = performance.now();
  for (let n = 0; ; n++) {
    asked.push((await timed(() => stateOf(job.id))).ms);
    const sheet = servedSheet(n, { frame: { survey, stratum, species: species.slice(0, 5) }, size, newId });
    const request = { requestId: newId(), base: null, who: 'Recorder A', sheet };
    const save = await timed(() => sendSheet(served.url, request));
    if (save.result !== 200) throw new Error(`a save was answered with ${save.result}`);
    saved.push(save.ms);
    const state = await stateOf(job.id);
    if (state !== 'running') {
      say(
        `import of 150 000 rows: ${state} in ${ms(performance.now() - begun)}, ${saved.length} sheets saved meanwhile`,
      );
      break;
    }
  }
  say(
    `a question waited at most ${ms(Math.max(...asked))}, a save at most ${ms(Math.max(...saved))} (one writer at a time)`,
  );
}

async function stateOf(jobId: string): Promise<string> {
  const job = (await (await fetch(`${served.url}api/jobs/${jobId}`)).json()) as { readonly state: string };
  return job.state;
}
