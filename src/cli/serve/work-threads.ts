/**
 * Two threads that stay for reading, so that a list of stations never waits behind an estimate, and one for each piece
 * of long work, which is ended by ending its thread.
 */

import { Worker } from 'node:worker_threads';
import type { LongWork, Work } from '../../server/dependencies.ts';
import { Failure } from '../../survey/failure.ts';
import type { WorkOrder } from '../../tasks/sheets/work-orders.ts';
import type { WorkMessage } from './work-messages.ts';

/** What whoever still waits is told when a thread goes; no fault when the server was stopped. */
export class ThreadEnded extends Error {
  constructor() {
    super('the working thread ended');
    this.name = 'ThreadEnded';
  }
}

export interface WorkThreads extends Work {
  /** Starts the reading threads before anybody asks: it takes half a second to load. */
  warm(): void;
  close(): Promise<void>;
}

export function workThreads(folder: string): WorkThreads {
  const readers = new Map<ReaderName, Thread>();
  const living = new Set<Thread>();
  let closed = false;
  const start = () => {
    if (closed) throw new ThreadEnded();
    const thread = startThread(folder, () => {
      living.delete(thread);
      for (const [name, reader] of readers) if (reader === thread) readers.delete(name);
    });
    living.add(thread);
    return thread;
  };
  const reader = (name: ReaderName) => {
    const thread = readers.get(name) ?? start();
    readers.set(name, thread);
    return thread;
  };
  return {
    warm: () => {
      reader('records');
      reader('numbers');
    },
    read: async (order) => {
      const isEstimate = order.task === 'densities' || order.task === 'sizes';
      return reader(isEstimate ? 'numbers' : 'records').work(order, () => {});
    },
    long: async (order, { signal, onStep }: LongWork) => {
      signal.throwIfAborted();
      const thread = start();
      // A transaction that is cut short is rolled back when its connection goes.
      const stop = () => void thread.end();
      signal.addEventListener('abort', stop);
      try {
        return await thread.work(order, onStep);
      } finally {
        signal.removeEventListener('abort', stop);
        await thread.end();
      }
    },
    close: async () => {
      closed = true;
      await Promise.all([...living].map((thread) => thread.end()));
    },
  };
}

type ReaderName = 'records' | 'numbers';

interface Thread {
  work(order: WorkOrder, onStep: (step: string) => void): Promise<string>;
  end(): Promise<void>;
}

interface Waiting {
  readonly resolve: (text: string) => void;
  readonly reject: (error: unknown) => void;
  readonly onStep: (step: string) => void;
}

function startThread(folder: string, onGone: () => void): Thread {
  const worker = new Worker(new URL('./start-work-thread.ts', import.meta.url), { workerData: { folder } });
  const waiting = new Map<number, Waiting>();
  let number = 0;
  const giveUp = (error: unknown) => {
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  worker.on('message', (message: WorkMessage) => {
    const one = waiting.get(message.number);
    if (one === undefined) return;
    if ('step' in message) {
      one.onStep(message.step);
      return;
    }
    waiting.delete(message.number);
    if ('text' in message) one.resolve(message.text);
    else if ('failure' in message) {
      one.reject(new Failure(message.failure.code, message.failure.parameters));
    } else one.reject(new Error(message.fault));
  });
  worker.on('error', giveUp);
  worker.on('exit', () => {
    onGone();
    giveUp(new ThreadEnded());
  });
  // Waiting for work must not keep the program alive.
  worker.unref();
  return {
    work: (order, onStep) =>
      new Promise((resolve, reject) => {
        number += 1;
        waiting.set(number, { resolve, reject, onStep });
        worker.postMessage({ number, order });
      }),
    end: async () => {
      await worker.terminate();
    },
  };
}
