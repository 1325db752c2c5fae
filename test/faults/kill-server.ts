/**
 * Kills the server in the middle of saves, again and again. The clients behave as the screens do: what was not
 * acknowledged is sent again under the same request, and now and then something that was, because an answer can be
 * lost on its way.
 */

import { setTimeout as sleep } from 'node:timers/promises';
import { seededRandom } from '../../src/maths/random.ts';
import { createBook, openBook } from '../../src/store/book-folder.ts';
import { verifyBook } from '../../src/store/verify-book.ts';
import type { SaveSheetRequest } from '../../src/tasks/sheets/sheet-schemas.ts';
import { identityFrom, sign } from '../store-records.ts';
import { type Frame, frameOf } from './pieces-of-work.ts';
import { type Served, sendSheet, servedSheet, startServer } from './served-sheets.ts';

export interface ServerKills {
  readonly kills: number;
  readonly acknowledged: number;
  /** Sent again, because the server died before it answered. */
  readonly sentAgain: number;
  /** Of those, the ones that were on disk already: nobody had been told. */
  readonly writtenUntold: number;
  /** What must never be: sentences; none when all is well. */
  readonly wrong: readonly string[];
}

const clients = 4;
const longestMs = 250;
const size = { belts: 6, lengthsEach: 4 };

export async function killServer(
  { folder, kills, seed }: { readonly folder: string; readonly kills: number; readonly seed: number },
  progress = (_kills: number) => {},
): Promise<ServerKills> {
  const newId = identityFrom(31);
  const at = '2026-09-01T08:00:00.000Z';
  const frame = frameOf(newId, 5);
  const book = await createBook(folder, { name: 'served', invented: true, at, bookId: newId() });
  await book.apply(frame.changes, sign('frame'), newId);
  await book.close();
  const random = seededRandom(seed);
  const state: State = { requests: [], acknowledged: new Set(), unanswered: [], sentAgain: 0, wrong: [] };
  let untold = 0;
  for (let kill = 1; kill <= kills; kill++) {
    const served = await startServer(folder);
    untold += await countWritten(folder, state.unanswered);
    await sendAgain(served, state, random.uniform());
    await saveUntilKilled(served, state, { frame, newId, ms: random.uniform() * longestMs });
    progress(kill);
  }
  const served = await startServer(folder);
  untold += await countWritten(folder, state.unanswered);
  await sendAgain(served, state, random.uniform());
  served.process.kill('SIGKILL');
  await look(folder, state);
  const { acknowledged, sentAgain, wrong } = state;
  return { kills, acknowledged: acknowledged.size, sentAgain, writtenUntold: untold, wrong };
}

interface State {
  readonly requests: SaveSheetRequest[];
  readonly acknowledged: Set<SaveSheetRequest>;
  unanswered: SaveSheetRequest[];
  sentAgain: number;
  readonly wrong: string[];
}

async function countWritten(folder: string, requests: readonly SaveSheetRequest[]): Promise<number> {
  const store = await openBook(folder);
  const written = await Promise.all(requests.map(({ requestId }) => store.actWritten(requestId)));
  await store.close();
  return written.filter(Boolean).length;
}

async function sendAgain({ url }: Served, state: State, luck: number): Promise<void> {
  const known = [...state.acknowledged];
  const repeated = known.length === 0 ? [] : [known[Math.floor(luck * known.length)]!];
  for (const request of [...state.unanswered, ...repeated]) {
    const status = await sendSheet(url, request);
    if (status === 200) state.acknowledged.add(request);
    else state.wrong.push(`a request sent again was answered with ${status}`);
    state.sentAgain += 1;
  }
  state.unanswered = [];
}

interface Round {
  readonly frame: Frame;
  readonly newId: () => string;
  readonly ms: number;
}

async function saveUntilKilled(served: Served, state: State, { frame, newId, ms }: Round): Promise<void> {
  let isKilled = false;
  const client = async () => {
    while (!isKilled) {
      const sheet = servedSheet(state.requests.length, { frame, size, newId });
      const request: SaveSheetRequest = { requestId: newId(), base: null, who: 'Recorder A', sheet };
      state.requests.push(request);
      try {
        const status = await sendSheet(served.url, request);
        if (status === 200) state.acknowledged.add(request);
        else state.wrong.push(`a save was answered with ${status}`);
      } catch {
        state.unanswered.push(request);
        return;
      }
    }
  };
  const working = Array.from({ length: clients }, client);
  await sleep(ms);
  const gone = new Promise((resolve) => served.process.once('exit', resolve));
  served.process.kill('SIGKILL');
  isKilled = true;
  await Promise.all([...working, gone]);
}

/** Every sheet is there, whole, once, from one act. */
async function look(folder: string, { requests, acknowledged, wrong }: State): Promise<void> {
  const store = await openBook(folder);
  try {
    const stations = await store.all('station');
    if (acknowledged.size !== requests.length)
      wrong.push(`${requests.length} sent, ${acknowledged.size} acknowledged`);
    if (stations.length !== requests.length)
      wrong.push(`${requests.length} sent, ${stations.length} stations`);
    for (const { requestId, sheet } of requests) {
      const { transects, tallies } = await store.stationRecords(sheet.station.id);
      const found = `${transects.length} belts, ${tallies.length} counts`;
      const isWhole = transects.length === sheet.transects.length && tallies.length === sheet.tallies.length;
      if (!isWhole) wrong.push(`${sheet.station.code} is there in part: ${found}`);
      const acts: string[] = [];
      for await (const { id } of store.revisions(sheet.station.id)) acts.push(id.split('/')[0]!);
      if (acts.join() !== requestId) wrong.push(`${sheet.station.code} was written by ${acts.length} acts`);
    }
  } finally {
    await store.close();
  }
  const { findings } = await verifyBook({ folder, backups: `${folder}-backups` });
  wrong.push(...findings.filter(({ sound }) => !sound).map(({ check, detail }) => `${check}: ${detail}`));
}
