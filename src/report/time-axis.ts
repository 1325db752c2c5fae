/** Where a day stands on an axis of time, and which moments are written under it. */

export interface TimeAxis {
  /** From 0 at the first day to 1 at the last. */
  readonly at: (day: string) => number;
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
}

const dayMs = 86_400_000;
/** Below two years the months are written, else the years. */
const yearsFromDays = 2 * 365;

/** A true axis: two surveys twice as far apart in time stand twice as far apart. Days are ISO days. */
export function timeAxis(days: readonly string[], most: { readonly ticks: number }): TimeAxis {
  const times = days.map((day) => Date.parse(`${day}T00:00:00Z`));
  const first = Math.min(...times);
  const last = Math.max(...times);
  const span = last - first;
  const shareOf = (time: number) => (span === 0 ? 0.5 : (time - first) / span);
  const inside = (time: number) => time >= first && time <= last;
  const starts = span / dayMs >= yearsFromDays ? yearStarts(first, last) : monthStarts(first, last);
  const shown = thinned(
    starts.filter(({ time }) => inside(time)),
    most.ticks,
  );
  return {
    at: (day) => shareOf(Date.parse(`${day}T00:00:00Z`)),
    ticks: shown.map(({ time, label }) => ({ at: shareOf(time), label })),
  };
}

interface Start {
  readonly time: number;
  readonly label: string;
}

function yearStarts(first: number, last: number): Start[] {
  const [from, to] = [first, last].map((time) => new Date(time).getUTCFullYear());
  return Array.from({ length: to! - from! + 2 }, (_, i) => ({
    time: Date.UTC(from! + i, 0, 1),
    label: `${from! + i}`,
  }));
}

/** "09/2026", which is read alike in both languages. */
function monthStarts(first: number, last: number): Start[] {
  const from = new Date(first);
  const months = Math.ceil((last - first) / dayMs / 28) + 2;
  return Array.from({ length: months }, (_, i) => {
    const time = Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + i, 1);
    const date = new Date(time);
    return { time, label: `${String(date.getUTCMonth() + 1).padStart(2, '0')}/${date.getUTCFullYear()}` };
  });
}

/** Every second, third … one, so that no more than this many are left. */
function thinned(starts: readonly Start[], most: number): readonly Start[] {
  const step = Math.ceil(starts.length / Math.max(1, most));
  return starts.filter((_, i) => i % step === 0);
}
