/** A boat day as it stands in the cells, and as the book keeps it. What cannot be read is named, never dropped. */

import type { DayContent } from '../../survey/day-words.ts';
import { readWrittenTime } from '../../tasks/sheets/written-time.ts';

type Limit = keyof DayContent['limits'];
export const limitNames: readonly Limit[] = [
  'divesPerDay',
  'minutesPerDay',
  'surfaceIntervalMin',
  'maxDepthM',
];

export interface TypedDive {
  diver: string;
  entry: string;
  exit: string;
  maxDepthM: string;
}
export interface TypedDay {
  sea: string;
  visibilityM: string;
  habitat: string;
  notes: string;
  fuelUsedL: string;
  incidents: { time: string; what: string }[];
  dives: TypedDive[];
  limits: Record<Limit, string>;
}

export type Unread =
  | {
      readonly kind: 'number';
      readonly field: 'visibilityM' | 'fuelUsedL' | 'depth' | Limit;
      readonly value: string;
    }
  | { readonly kind: 'dive' | 'incident'; readonly line: number };

/** Limits hold for more than one day: a day of which nothing is written begins with those of the day before. */
export function typedDay(content: DayContent | null, before: DayContent['limits'] | null = null): TypedDay {
  const limits = content?.limits ?? before;
  return {
    sea: content?.sea ?? '',
    visibilityM: textOf(content?.visibilityM),
    habitat: content?.habitat ?? '',
    notes: content?.notes ?? '',
    fuelUsedL: textOf(content?.fuelUsedL),
    incidents: (content?.incidents ?? []).map(({ time, what }) => ({ time: time ?? '', what })),
    dives: (content?.dives ?? []).map((dive) => ({ ...dive, maxDepthM: textOf(dive.maxDepthM) })),
    limits: {
      divesPerDay: textOf(limits?.divesPerDay),
      minutesPerDay: textOf(limits?.minutesPerDay),
      surfaceIntervalMin: textOf(limits?.surfaceIntervalMin),
      maxDepthM: textOf(limits?.maxDepthM),
    },
  };
}

/** The day for the book, with every cell that could not be read; a line left wholly empty is no line. */
export function dayOfTyped(typed: TypedDay): {
  readonly content: DayContent;
  readonly unread: readonly Unread[];
} {
  const unread: Unread[] = [];
  const number = (value: string, field: Extract<Unread, { kind: 'number' }>['field']) => {
    if (value.trim() === '') return null;
    const read = Number(value.trim().replace(',', '.'));
    if (Number.isFinite(read) && read >= 0) return read;
    unread.push({ kind: 'number', field, value });
    return null;
  };
  const dives: DayContent['dives'] = [];
  typed.dives.forEach(({ diver, entry, exit, maxDepthM }, i) => {
    if ([diver, entry, exit, maxDepthM].every((cell) => cell.trim() === '')) return;
    const times = { entry: readWrittenTime(entry), exit: readWrittenTime(exit) };
    if (diver.trim() === '' || times.entry === null || times.exit === null) {
      unread.push({ kind: 'dive', line: i + 1 });
    } else {
      const depth = number(maxDepthM, 'depth');
      dives.push({ diver: diver.trim(), entry: times.entry, exit: times.exit, maxDepthM: depth });
    }
  });
  const incidents: DayContent['incidents'] = [];
  typed.incidents.forEach(({ time, what }, i) => {
    if (time.trim() === '' && what.trim() === '') return;
    const at = readWrittenTime(time);
    if (what.trim() === '' || (time.trim() !== '' && at === null)) {
      unread.push({ kind: 'incident', line: i + 1 });
    } else incidents.push({ time: at, what: what.trim() });
  });
  const content: DayContent = {
    sea: orNull(typed.sea),
    visibilityM: number(typed.visibilityM, 'visibilityM'),
    habitat: orNull(typed.habitat),
    notes: orNull(typed.notes),
    incidents,
    fuelUsedL: number(typed.fuelUsedL, 'fuelUsedL'),
    dives,
    limits: {
      divesPerDay: number(typed.limits.divesPerDay, 'divesPerDay'),
      minutesPerDay: number(typed.limits.minutesPerDay, 'minutesPerDay'),
      surfaceIntervalMin: number(typed.limits.surfaceIntervalMin, 'surfaceIntervalMin'),
      maxDepthM: number(typed.limits.maxDepthM, 'maxDepthM'),
    },
  };
  return { content, unread };
}

function orNull(text: string): string | null {
  return text.trim() === '' ? null : text.trim();
}

function textOf(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value);
}
