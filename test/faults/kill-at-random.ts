/** Kills a working program again and again at random moments, and looks each time at what the book holds. */

import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { seededRandom } from '../../src/maths/random.ts';
import { createBook, openBook } from '../../src/store/book-folder.ts';
import { verifyBook } from '../../src/store/verify-book.ts';
import { identityFrom, sign } from '../store-records.ts';
import { beltsOfStation, frameChanges, stationsOfImport, talliesOfStation } from './pieces-of-work.ts';

export interface KillOrder {
  readonly folder: string;
  readonly kind: 'imports' | 'saves';
  readonly kills: number;
  readonly seed: number;
}

export interface KillTally {
  readonly kills: number;
  /** Pieces that had returned before the kill, all found whole. */
  readonly acknowledged: number;
  /** Of the pieces that were cut short: written whole though nobody was told, and not at all. */
  readonly cutShortButWhole: number;
  readonly cutShortAndNothing: number;
  /** What must never be: sentences; none when all is well. */
  readonly wrong: readonly string[];
}

/** Seeded in the moments it chooses; the machine adds its own luck. */
export async function killAtRandom(order: KillOrder, progress = (_kills: number) => {}): Promise<KillTally> {
  const newId = identityFrom(order.kind === 'imports' ? 21 : 22);
  const at = '2026-09-01T08:00:00.000Z';
  const book = await createBook(order.folder, { name: order.kind, invented: true, at, bookId: newId() });
  await book.apply(frameChanges(newId), sign('frame'), newId);
  await book.close();
  const random = seededRandom(order.seed);
  const tally = {
    kills: 0,
    acknowledged: 0,
    cutShortButWhole: 0,
    cutShortAndNothing: 0,
    wrong: [] as string[],
  };
  let first = 1;
  for (; tally.kills < order.kills; tally.kills++) {
    const said = await workAndKill(order, first, random.uniform());
    await look(order, first, said, tally);
    first = said.begun + 1;
    progress(tally.kills + 1);
  }
  const { findings } = await verifyBook({ folder: order.folder, backups: join(order.folder, 'backups') });
  tally.wrong.push(
    ...findings.filter(({ sound }) => !sound).map(({ check, detail }) => `${check}: ${detail}`),
  );
  return tally;
}

interface Said {
  /** The last piece that was begun, and the last that had returned; `first - 1` when none. */
  readonly begun: number;
  readonly done: number;
}

/** The first import of a program takes about a sixth of a second, a save some milliseconds. */
const longestMs = { imports: 160, saves: 40 } as const;

function workAndKill({ folder, kind }: KillOrder, first: number, luck: number): Promise<Said> {
  const script = fileURLToPath(new URL('./work-until-killed.ts', import.meta.url));
  const child = spawn(process.execPath, [script, folder, kind, String(first)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let text = '';
  let armed = false;
  child.stdout.on('data', (part: Buffer) => {
    text += part.toString();
    if (armed) return;
    armed = true;
    setTimeout(() => child.kill('SIGKILL'), luck * longestMs[kind]);
  });
  return new Promise((resolve, reject) => {
    child.on('close', (code, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(`the worker ended by itself with ${code}`));
      else
        resolve({
          begun: lastNumber(text, 'begin') ?? first - 1,
          done: lastNumber(text, 'done') ?? first - 1,
        });
    });
  });
}

function lastNumber(text: string, word: string): number | null {
  const said = [...text.matchAll(new RegExp(`^${word} (\\d+)$`, 'gm'))].at(-1);
  return said === undefined ? null : Number(said[1]);
}

type Growing = { -readonly [Key in keyof KillTally]: KillTally[Key] } & { readonly wrong: string[] };

async function look(order: KillOrder, first: number, { begun, done }: Said, tally: Growing): Promise<void> {
  const store = await openBook(order.folder);
  try {
    for (let n = first; n <= begun; n++) {
      const found = await stateOf(store, order.kind, n);
      if (found === 'part') tally.wrong.push(`${order.kind} ${n} is there in part`);
      if (n <= done && found !== 'whole')
        tally.wrong.push(`${order.kind} ${n} had returned and is not whole`);
      if (n <= done) tally.acknowledged += 1;
      else if (found === 'whole') tally.cutShortButWhole += 1;
      else tally.cutShortAndNothing += 1;
    }
  } finally {
    await store.close();
  }
}

type Book = Awaited<ReturnType<typeof openBook>>;

async function stateOf(
  store: Book,
  kind: KillOrder['kind'],
  n: number,
): Promise<'whole' | 'nothing' | 'part'> {
  const surveys = await store.all('survey');
  const survey = surveys.find((one) => one.name === (kind === 'imports' ? `import ${n}` : 'saves'));
  if (survey === undefined) return 'nothing';
  const rows = await store.surveyRecords(survey.id, { lengths: false });
  const stations = rows.stations.filter((one) => kind === 'imports' || one.code === `save ${n}`);
  const ids = new Set(stations.map((one) => one.id));
  const belts = rows.transects.filter((one) => ids.has(one.stationId));
  const beltIds = new Set(belts.map((one) => one.id));
  const tallies = rows.tallies.filter((one) => beltIds.has(one.transectId));
  const wanted = kind === 'imports' ? stationsOfImport : 1;
  const size = [stations.length, belts.length, tallies.length].join();
  if (size === [wanted, wanted * beltsOfStation, wanted * talliesOfStation].join()) return 'whole';
  return size === '0,0,0' && kind === 'saves' ? 'nothing' : 'part';
}
