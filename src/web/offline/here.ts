/** Asks the thread that works things out on this device; it is started when it is first asked. */

import type { HereAnswer, HereAsked } from './here-orders.ts';

let worker: Worker | null = null;
let number = 0;
const waiting = new Map<number, (answer: HereAnswer | null) => void>();

/** Null when nothing was kept of that survey, or when this browser cannot do it. */
export function workOutHere(asked: HereAsked): Promise<HereAnswer | null> {
  const thread = workerNow();
  if (thread === null) return Promise.resolve(null);
  number += 1;
  const mine = number;
  return new Promise((resolve) => {
    waiting.set(mine, resolve);
    thread.postMessage({ ...asked, number: mine });
  });
}

function workerNow(): Worker | null {
  try {
    worker ??= startWorker();
  } catch {
    worker = null;
  }
  return worker;
}

function startWorker(): Worker {
  const started = new Worker(new URL('./here-worker.ts', import.meta.url), { type: 'module' });
  started.onmessage = ({ data }: MessageEvent<{ number: number; answer: HereAnswer | null }>) => {
    waiting.get(data.number)?.(data.answer);
    waiting.delete(data.number);
  };
  // Its file could not be had: whoever waits is told, and the next question tries again.
  started.onerror = () => {
    for (const tell of waiting.values()) tell(null);
    waiting.clear();
    worker = null;
  };
  return started;
}
