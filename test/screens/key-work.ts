/** Reads a trace of Chromium: what the thread of the page did for each key. */

export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds, like `dur` and `tdur`. */
  readonly ts: number;
  readonly dur?: number;
  /** Of the processor. */
  readonly tdur?: number;
  readonly args?: { readonly src_func?: string; readonly data?: { readonly type?: string } };
}

interface KeyWork {
  readonly clockMs: number;
  readonly processorMs: number;
}

/** A frame that begins later than this after the key belongs to work that was put off. */
const sameAnswerMicroseconds = 120_000;

export function workOfKeys(events: readonly TraceEvent[]): {
  readonly keys: readonly KeyWork[];
  readonly longestBetweenMs: number;
} {
  const presses = events.filter((one) => one.name === 'EventDispatch' && one.args?.data?.type === 'keydown');
  presses.sort((a, b) => a.ts - b.ts);
  const [first] = presses;
  if (first === undefined) return { keys: [], longestBetweenMs: 0 };
  const tasks = wholeTasks(events.filter((one) => one.pid === first.pid && one.tid === first.tid));
  let longest = 0;
  // Before the first key the trace itself sets out.
  const keys = presses.slice(1).map((press, i) => {
    const nextAt = presses[i + 2]?.ts ?? Number.POSITIVE_INFINITY;
    const own = tasks.filter((task) => endOf(task) > press.ts && endOf(task) < nextAt);
    const last = own.findLastIndex((task) => isFrame(task) && task.ts < press.ts + sameAnswerMicroseconds);
    const between = own.slice(last + 1).map((task) => task.tdur ?? 0);
    longest = Math.max(longest, ...between);
    return workOf(own.slice(0, last + 1));
  });
  return { keys, longestBetweenMs: longest / 1000 };
}

function workOf(tasks: readonly TraceEvent[]): KeyWork {
  const clock = tasks.reduce((sum, task) => sum + (task.dur ?? 0), 0);
  const processor = tasks.reduce((sum, task) => sum + (task.tdur ?? 0), 0);
  return { clockMs: clock / 1000, processorMs: processor / 1000 };
}

/** Tasks within tasks are told twice. */
function wholeTasks(events: readonly TraceEvent[]): readonly TraceEvent[] {
  const tasks = events.filter((one) => one.ph === 'X' && /^(ThreadControllerImpl::)?RunTask$/.test(one.name));
  tasks.sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  let until = 0;
  return tasks.filter((task) => {
    const isWhole = task.ts >= until;
    if (isWhole) until = endOf(task);
    return isWhole;
  });
}

function endOf({ ts, dur }: TraceEvent): number {
  return ts + (dur ?? 0);
}

function isFrame({ args }: TraceEvent): boolean {
  return args?.src_func === 'ScheduledActionSendBeginMainFrame';
}
