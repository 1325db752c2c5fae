/** Long work: started, watched, given up. It goes on when its tab is closed, and its result is kept. */

import { type ScreenLanguage, serverSentence } from '../report/catalogue/server-words.ts';
import type { Job } from '../tasks/sheets/answer-schemas.ts';
import type { WorkOrder } from '../tasks/sheets/work-orders.ts';
import type { ServerDependencies } from './dependencies.ts';
import { Refusal, refusalAnswer } from './refusal.ts';

export interface Jobs {
  start(kind: Job['kind'], order: WorkOrder): Job;
  all(): readonly Job[];
  /** Throws a refusal when it is not known. */
  find(id: string): Job;
  result(id: string): string;
  cancel(id: string): Job;
  /** Calls at once with the job as it stands, then at every change; gives a way to stop. */
  watch(id: string, listener: (job: Job) => void): () => void;
}

interface Running {
  job: Job;
  result: string | null;
  readonly stop: AbortController;
  readonly listeners: Set<(job: Job) => void>;
}

const mostRunning = 2;
const mostKept = 20;

export function jobs(dependencies: Pick<ServerDependencies, 'work' | 'now' | 'newId' | 'log'>): Jobs {
  const known = new Map<string, Running>();
  const find = (id: string): Running => {
    const running = known.get(id);
    if (running === undefined) throw new Refusal('no-such-job');
    return running;
  };
  return {
    start: (kind, order) => {
      const count = [...known.values()].filter(({ job }) => job.state === 'running').length;
      if (count >= mostRunning) throw new Refusal('too-many-jobs', { count });
      const running = startJob(kind, order, dependencies);
      known.set(running.job.id, running);
      forgetOldest(known);
      return running.job;
    },
    all: () => [...known.values()].map(({ job }) => job),
    find: (id) => find(id).job,
    result: (id) => {
      const { job, result } = find(id);
      if (job.state === 'running') throw new Refusal('job-not-ended');
      if (result === null) throw new Refusal('job-without-result');
      return result;
    },
    cancel: (id) => {
      const running = find(id);
      if (running.job.state === 'running') {
        running.stop.abort();
        change(running, { state: 'cancelled', endedAt: dependencies.now().toISOString() });
      }
      return running.job;
    },
    watch: (id, listener) => {
      const running = find(id);
      listener(running.job);
      running.listeners.add(listener);
      return () => running.listeners.delete(listener);
    },
  };
}

type Tools = Pick<ServerDependencies, 'work' | 'now' | 'newId' | 'log'>;

function startJob(kind: Job['kind'], order: WorkOrder, tools: Tools): Running {
  const { language } = order;
  const running: Running = {
    job: {
      id: tools.newId(),
      kind,
      state: 'running',
      step: serverSentence(language, 'step-starting'),
      share: null,
      error: null,
      startedAt: tools.now().toISOString(),
      endedAt: null,
    },
    result: null,
    stop: new AbortController(),
    listeners: new Set(),
  };
  void runJob(running, order, language, tools);
  return running;
}

async function runJob(
  running: Running,
  order: WorkOrder,
  language: ScreenLanguage,
  { work, now, log }: Tools,
): Promise<void> {
  const end = (changes: Partial<Job>) => {
    // What was cancelled stays so, whatever comes back from it.
    if (running.job.state === 'running') change(running, { ...changes, endedAt: now().toISOString() });
  };
  try {
    const options = {
      signal: running.stop.signal,
      onStep: (step: string) => {
        if (running.job.state === 'running') change(running, { step });
      },
    };
    const result = await work.long(order, options);
    if (running.job.state === 'running') running.result = result;
    end({ state: 'done', share: 1, step: serverSentence(language, 'step-done') });
  } catch (error) {
    if (running.job.state !== 'running') return;
    end({ state: 'failed', error: refusalAnswer(error, language, log).body });
  }
}

function change(running: Running, changes: Partial<Job>): void {
  running.job = { ...running.job, ...changes };
  for (const listener of running.listeners) listener(running.job);
}

function forgetOldest(known: Map<string, Running>): void {
  for (const [id, { job }] of known) {
    if (known.size <= mostKept) return;
    if (job.state !== 'running') known.delete(id);
  }
}
