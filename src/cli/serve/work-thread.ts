/** A thread with its own connection to the book: reads whole surveys, imports, renders, while saves go on elsewhere. */

import { parentPort, workerData } from 'node:worker_threads';
import { parseHTML } from 'linkedom';
import { openBook } from '../../store/book-folder.ts';
import { Failure } from '../../survey/failure.ts';
import type { Store } from '../../survey/store.ts';
import { doWork } from '../../tasks/sheets/work-orders.ts';
import { identityMaker } from '../identity.ts';
import { programVersion } from '../program-version.ts';
import { reportFonts } from '../write-report.ts';
import { rememberingStore } from './remembering-store.ts';
import type { WorkMessage, WorkRequest } from './work-messages.ts';

const port = parentPort;
if (port === null) throw new Error('work-thread requires a thread that started it');
const store = await openBook(workerData.folder as string, { busyTimeoutMs: 60_000 });
const remembering = rememberingStore(store);
const newId = identityMaker(Date.now);
const { identity } = await store.lastWritten();
if (identity !== null) newId.continueAfter(identity);
const send = (message: WorkMessage) => port.postMessage(message);

// One after the other: an order that waits costs less than two that share a connection.
let last: Promise<void> = Promise.resolve();
port.on('message', (request: WorkRequest) => {
  last = last.then(() => work(request));
});

async function work({ number, order }: WorkRequest): Promise<void> {
  const doOrder = (from: Store) =>
    doWork(order, {
      store: from,
      newId,
      version: programVersion(),
      fonts: reportFonts,
      document: () => parseHTML('<!doctype html><html></html>').document,
      onStep: (step) => send({ number, step }),
    });
  try {
    // An import writes: it has the book itself. Nothing can be written within a reading.
    const text =
      order.task === 'import' ? await doOrder(store) : await remembering.reading((moment) => doOrder(moment));
    send({ number, text });
  } catch (error) {
    if (error instanceof Failure) {
      send({ number, failure: { code: error.code, parameters: error.parameters } });
    } else send({ number, fault: String((error as Error).stack ?? error) });
  }
}
