/** Joins store, files, threads and clock to the server. */

import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { type App, createApp } from '../../server/create-app.ts';
import { openBook } from '../../store/book-folder.ts';
import { bringInPhotoNotes } from '../../tasks/sheets/old-photo-notes.ts';
import type { Io } from '../io.ts';
import { programVersion } from '../program-version.ts';
import { today } from '../today.ts';
import { oldPhotoNotes } from './old-photo-notes.ts';
import { photoShelf } from './photo-shelf.ts';
import { screenFiles } from './screen-files.ts';
import { workInHand } from './work-in-hand.ts';
import { ThreadEnded, workThreads } from './work-threads.ts';

export interface OpenHouse {
  readonly app: App;
  /** Told when the port is known. */
  setPort(port: number): void;
  /** Makes ready what the first question would wait for. */
  warm(): Promise<void>;
  close(): Promise<void>;
}

type SurveyList = { readonly surveys: readonly { readonly survey: { readonly id: string } }[] };

/** A save that finds the book taken comes back at once and waits in the queue, where it holds up nobody. */
const busyTimeoutMs = 10;

export async function openHouse(
  io: Io,
  { folder, screens }: { readonly folder: string; readonly screens: string },
): Promise<OpenHouse> {
  await bringInOldNotes(folder, io);
  const store = await openBook(folder, { busyTimeoutMs });
  const work = workThreads(folder);
  let port = 0;
  let stopping = false;
  const { identity } = await store.lastWritten();
  if (identity !== null) io.continueAfter?.(identity);
  const app = createApp({
    store,
    work,
    photos: photoShelf(folder),
    screenFile: screenFiles(screens),
    port: () => port,
    now: io.now,
    today: () => today(io),
    newId: io.newId,
    sha256: (content) => createHash('sha256').update(content).digest('hex'),
    pause: (ms) => new Promise((resolve) => (ms === 0 ? setImmediate(resolve) : setTimeout(resolve, ms))),
    device: io.device,
    version: programVersion(),
    log: (error) => {
      // Whoever closed the server knows that what it was working out is given up.
      if (stopping && error instanceof ThreadEnded) return;
      io.stderr(`${error instanceof Error ? error.stack : String(error)}\n`);
    },
  });
  const inHand = workInHand();
  const request: App['request'] = (asked) => inHand.until(app.request(asked));
  const warm = async () => {
    work.warm();
    const ask = (path: string) => request(new Request(`http://127.0.0.1:${port}${path}`));
    const { surveys } = (await (await ask('/api/surveys')).json()) as SurveyList;
    const latest = surveys.at(-1);
    const rooms = latest === undefined ? [] : ['densities?by=survey', 'densities?by=stratum'];
    for (const room of rooms) if (!stopping) await ask(`/api/surveys/${latest!.survey.id}/${room}`);
  };
  return {
    app: { ...app, request },
    setPort: (known) => {
      port = known;
    },
    warm: () => inHand.until(warm()),
    close: async () => {
      stopping = true;
      await app.idle();
      await work.close();
      // Given up by now; whatever of it still looks at the book must find it open.
      await inHand.ended();
      await store.close();
    },
  };
}

/** With the usual patience: another program may be writing just now. */
async function bringInOldNotes(folder: string, io: Io): Promise<void> {
  const notes = oldPhotoNotes(folder);
  if (notes.length === 0) return;
  const store = await openBook(folder);
  try {
    const { identity } = await store.lastWritten();
    if (identity !== null) io.continueAfter?.(identity);
    const { device, newId } = io;
    await bringInPhotoNotes(notes, store, { who: 'Slateline', at: io.now().toISOString(), device, newId });
  } finally {
    await store.close();
  }
}

/** Where the screens are built to. */
export const builtScreens = join(import.meta.dirname, '../../../dist/web');
