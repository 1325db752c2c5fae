import { describe, expect, it } from 'vitest';
import { type TraceEvent, workOfKeys } from './key-work.ts';

const thread = { pid: 1, tid: 7 };
const ms = 1000;

function task(atMs: number, clockMs: number, processorMs: number, src_func = 'other'): TraceEvent {
  const times = { ts: atMs * ms, dur: clockMs * ms, tdur: processorMs * ms };
  return { name: 'ThreadControllerImpl::RunTask', ph: 'X', ...thread, ...times, args: { src_func } };
}

function key(atMs: number): TraceEvent {
  const name = 'EventDispatch';
  return { name, ph: 'X', ...thread, ts: atMs * ms, dur: ms, tdur: ms, args: { data: { type: 'keydown' } } };
}

const frame = 'ScheduledActionSendBeginMainFrame';

describe('the work of a key', () => {
  it('is all that the page does up to the last frame that answers it; what is put off stands between keys', () => {
    const before = [task(0, 5, 5), key(1), task(8, 4, 4, frame)];
    const letter = [task(100, 6, 3), key(101), task(108, 4, 2, frame)];
    const understood = [task(115, 9, 5), task(130, 4, 2, frame)];
    const putOff = [task(400, 20, 12), task(425, 5, 4, frame)];
    const elsewhere = { ...task(112, 50, 50), tid: 8 };
    const { keys, longestBetweenMs } = workOfKeys([
      ...before,
      ...letter,
      ...understood,
      ...putOff,
      elsewhere,
    ]);
    // By hand: 6 + 4 + 9 + 4 on the clock, 3 + 2 + 5 + 2 of the processor; the first key of a trace is left out.
    expect(keys).toEqual([{ clockMs: 23, processorMs: 12 }]);
    expect(longestBetweenMs).toBe(12);
  });

  it('counts a task within a task once', () => {
    const outer = [key(0), task(0, 1, 1), key(101), task(100, 10, 6, frame), task(102, 4, 4)];
    expect(workOfKeys(outer).keys).toEqual([{ clockMs: 10, processorMs: 6 }]);
  });
});
