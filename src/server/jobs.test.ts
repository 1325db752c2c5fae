import { describe, expect, it } from 'vitest';
import type { Job } from '../tasks/sheets/answer-schemas.ts';
import type { WorkOrder } from '../tasks/sheets/work-orders.ts';
import type { LongWork } from './dependencies.ts';
import { jobEvents } from './job-events.ts';
import { jobs } from './jobs.ts';

const order = { task: 'stations', surveyId: 's', language: 'en' } as const satisfies WorkOrder;

/** Work that goes on when the test says so. */
function slowWork() {
  const begun: { options: LongWork; finish: (text: string) => void; fail: (error: Error) => void }[] = [];
  let n = 0;
  const faults: unknown[] = [];
  const list = jobs({
    work: {
      read: async () => '',
      long: (_, options) =>
        new Promise((finish, fail) => {
          begun.push({ options, finish, fail });
        }),
    },
    now: () => new Date('2026-09-30T08:00:00Z'),
    newId: () => `job ${++n}`,
    log: (error) => faults.push(error),
  });
  return { list, begun, faults };
}

const turn = () => new Promise((resolve) => setImmediate(resolve));

describe('long work', () => {
  it('tells each step to whoever watches, and the end; who comes later sees how it stands', async () => {
    const { list, begun } = slowWork();
    const { id } = list.start('report', order);
    const early: string[] = [];
    list.watch(id, (job) => early.push(`${job.state}: ${job.step}`));
    begun[0]!.options.onStep('reading');
    const late: string[] = [];
    list.watch(id, (job) => late.push(job.step));
    begun[0]!.finish('<html>');
    await turn();
    expect(early).toEqual(['running: starting', 'running: reading', 'done: done']);
    expect(late).toEqual(['reading', 'done']);
    expect(list.result(id)).toBe('<html>');
  });

  it('goes on when nobody watches any more', async () => {
    const { list, begun } = slowWork();
    const { id } = list.start('report', order);
    const reader = jobEvents(list, id).body!.getReader();
    await reader.read();
    await reader.cancel();
    begun[0]!.finish('kept');
    await turn();
    expect(list.result(id)).toBe('kept');
  });

  it('sends events that end with the work', async () => {
    const { list, begun } = slowWork();
    const { id } = list.start('import', order);
    const events = jobEvents(list, id).text();
    begun[0]!.finish('{}');
    const states = [...(await events).matchAll(/^data: (.*)$/gm)].map(
      (match) => JSON.parse(match[1]!) as Job,
    );
    expect(states.map(({ state }) => state)).toEqual(['running', 'done']);
    expect(await jobEvents(list, id).text()).toContain('"state":"done"');
  });

  it('that is cancelled is told to stop, and what it still brings is thrown away', async () => {
    const { list, begun } = slowWork();
    const { id } = list.start('import', order);
    expect(list.cancel(id).state).toBe('cancelled');
    expect(begun[0]!.options.signal.aborted).toBe(true);
    begun[0]!.finish('too late');
    await turn();
    expect(list.find(id).state).toBe('cancelled');
    expect(() => list.result(id)).toThrow('job-without-result');
  });

  it('that fails says so in a sentence, and the fault is kept for us', async () => {
    const { list, begun, faults } = slowWork();
    const { id } = list.start('report', order);
    begun[0]!.fail(new Error('a fault of ours'));
    await turn();
    expect(list.find(id)).toMatchObject({ state: 'failed', error: { code: 'internal-error' } });
    expect(faults).toHaveLength(1);
  });

  it('is two at a time, and the result of one that runs is not there yet', () => {
    const { list } = slowWork();
    const { id } = list.start('report', order);
    list.start('report', order);
    expect(() => list.start('report', order)).toThrow('too-many-jobs');
    expect(() => list.result(id)).toThrow('job-not-ended');
    expect(() => list.find('nobody')).toThrow('no-such-job');
  });

  it('is remembered for the last twenty', async () => {
    const { list, begun } = slowWork();
    for (let i = 0; i < 25; i++) {
      list.start('report', order);
      begun[i]!.finish('done');
      await turn();
    }
    expect(list.all().map(({ id }) => id)).toEqual(Array.from({ length: 20 }, (_, i) => `job ${i + 6}`));
  });
});
