/**
 * Saves wait here for a shared commit. Waiting for the disk is most of what a small save costs, so those that
 * arrive together are written together, and each is answered only after the commit that holds it.
 *
 * What a save would change is worked out again when the book has moved in between, so that two people who save
 * one sheet at one moment never overwrite each other.
 */

import type { Act, SheetStore } from '../survey/acts.ts';
import { Failure } from '../survey/failure.ts';

export interface Save<Answer> {
  /** Two saves of one thing never share a commit: the second must see the first. */
  readonly thing: string;
  /** Looks at the book as it stands and says what to write; an answer at once when there is nothing to. Writes nothing. */
  ready(): Promise<ReadySave<Answer>>;
}

export type ReadySave<Answer> =
  | { readonly act: Act; readonly answer: (dataVersion: string) => Answer }
  | { readonly act: null; readonly answer: Answer };

export interface QueueTools {
  readonly store: SheetStore;
  readonly pause: (ms: number) => Promise<void>;
}

export interface SaveQueue {
  save<Answer>(save: Save<Answer>): Promise<Answer>;
  /** Resolves when nothing waits any more. */
  idle(): Promise<void>;
}

export function saveQueue(tools: QueueTools): SaveQueue {
  let waiting: Waiting[] = [];
  let working: Promise<void> | null = null;
  const work = async () => {
    // One turn of the loop: whoever has arrived by then shares the commit.
    await tools.pause(0);
    while (waiting.length > 0) {
      const { batch, rest } = takeBatch(waiting);
      waiting = rest;
      const moved = await writeBatch(batch, tools);
      waiting = [...moved, ...waiting];
      await tools.pause(moved.length > 0 ? retryMs : 0);
    }
    working = null;
  };
  return {
    save: <Answer>(save: Save<Answer>) =>
      new Promise<Answer>((resolve, reject) => {
        waiting.push({
          save: save as Save<unknown>,
          resolve: resolve as (answer: unknown) => void,
          reject,
          tries: 0,
        });
        working ??= work();
      }),
    idle: async () => {
      await working;
    },
  };
}

interface Waiting {
  readonly save: Save<unknown>;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: unknown) => void;
  tries: number;
}

const mostTogether = 64;
const retryMs = 20;
/** An import of a whole archive writes for some seconds; a minute of waiting is a fault worth telling. */
const mostTries = 3000;

function takeBatch(waiting: readonly Waiting[]): { batch: Waiting[]; rest: Waiting[] } {
  const things = new Set<string>();
  const batch: Waiting[] = [];
  const rest: Waiting[] = [];
  for (const one of waiting) {
    const isAlone = !things.has(one.save.thing);
    things.add(one.save.thing);
    if (isAlone && batch.length < mostTogether) batch.push(one);
    else rest.push(one);
  }
  return { batch, rest };
}

/** Gives back those that must be made ready again. Nobody is left without an answer, whatever goes wrong. */
async function writeBatch(batch: readonly Waiting[], tools: QueueTools): Promise<Waiting[]> {
  try {
    return await writeReady(batch, tools);
  } catch (error) {
    for (const one of batch) one.reject(error);
    return [];
  }
}

async function writeReady(batch: readonly Waiting[], { store }: QueueTools): Promise<Waiting[]> {
  const toWrite: { one: Waiting; act: Act; answer: (dataVersion: string) => unknown }[] = [];
  const dataVersion = await store.dataVersion();
  for (const one of batch) {
    try {
      const ready = await one.save.ready();
      if (ready.act === null) one.resolve(ready.answer);
      else toWrite.push({ one, act: ready.act, answer: ready.answer });
    } catch (error) {
      one.reject(error);
    }
  }
  const outcomes = await store.applyTogether(
    toWrite.map(({ act }) => act),
    dataVersion,
  );
  const again: Waiting[] = [];
  toWrite.forEach(({ one, answer }, i) => {
    const outcome = outcomes[i]!;
    if (outcome.state === 'written') one.resolve(answer(outcome.dataVersion));
    else if (mayTryAgain(outcome, one)) again.push(one);
    else one.reject(outcome.state === 'refused' ? outcome.error : new Failure('book-locked', { folder: '' }));
  });
  return again;
}

function mayTryAgain(outcome: { readonly state: string; readonly error?: unknown }, one: Waiting): boolean {
  one.tries += 1;
  if (one.tries > mostTries) return false;
  return (
    outcome.state === 'moved' || (outcome.error instanceof Failure && outcome.error.code === 'book-locked')
  );
}
