/**
 * A day as it stands on a slate or comes out of a tired hand. Nothing is guessed: where two readings are possible and
 * the days of the survey do not tell them apart, both are named and none is taken.
 */

import { isoDay } from '../../exchange/calendar.ts';

export interface DayReading {
  /** ISO day, or null when the text is no day or could be two. */
  readonly day: string | null;
  /** Every day the text could mean. */
  readonly readings: readonly string[];
}

export interface DaysAround {
  /** ISO day that stands in the cell now: what is not written is taken from it. */
  readonly present: string;
  /** First and last day of the survey, where it says so. */
  readonly first: string | null;
  readonly last: string | null;
}

/** Reads `2026-09-09`, `9/9/2026`, `9.9`, `9 sept`, `Sept 9 2026`, `9 septembre` and `9` alone. */
export function readWrittenDay(text: string, around: DaysAround): DayReading {
  const written = plain(text);
  const found = [...new Set([...byName(written, around), ...byFigures(written, around)])];
  const within = found.filter((day) => isWithin(day, around));
  if (found.length === 1) return { day: found[0]!, readings: found };
  return { day: within.length === 1 ? within[0]! : null, readings: found };
}

function byFigures(written: string, { present }: DaysAround): string[] {
  const [year, month] = present.split('-').map(Number) as [number, number];
  const numbers = /^\d{1,4}(?:[ ./-]\d{1,4}){0,2}$/.test(written) ? written.split(/[ ./-]/) : [];
  const [a, b, c] = numbers.map(Number);
  if (a === undefined) return [];
  if (b === undefined) return real([year, month, a]);
  if (numbers[0]!.length === 4 && c !== undefined) return real([a, b, c]);
  if (c !== undefined && numbers[2]!.length !== 4) return [];
  return real([c ?? year, b, a], [c ?? year, a, b]);
}

function byName(written: string, { present }: DaysAround): string[] {
  const year = Number(present.slice(0, 4));
  const dayFirst = /^(\d{1,2})[ .-]*([a-z]{3,9})[ .,-]*(\d{4})?$/.exec(written);
  const monthFirst = /^([a-z]{3,9})\.? (\d{1,2}),?(?: (\d{4}))?$/.exec(written);
  const name = dayFirst?.[2] ?? monthFirst?.[1];
  const day = dayFirst?.[1] ?? monthFirst?.[2];
  if (name === undefined) return [];
  return real([Number(dayFirst?.[3] ?? monthFirst?.[3] ?? year), monthOf(name), Number(day)]);
}

/** 1 to 12 for a month in English or French, whole or cut short, when no other month begins so; else 0. */
function monthOf(name: string): number {
  const found = months.flatMap((names, i) => (names.some((one) => one.startsWith(name)) ? [i + 1] : []));
  return found.length === 1 ? found[0]! : 0;
}

/** Without accents. */
const months: readonly (readonly string[])[] = [
  ['january', 'janvier'],
  ['february', 'fevrier'],
  ['march', 'mars'],
  ['april', 'avril'],
  ['may', 'mai'],
  ['june', 'juin'],
  ['july', 'juillet'],
  ['august', 'aout'],
  ['september', 'septembre'],
  ['october', 'octobre'],
  ['november', 'novembre'],
  ['december', 'decembre'],
];

function plain(text: string): string {
  return text.trim().toLowerCase().normalize('NFD').replace(/\p{M}/gu, '').replace(/\s+/g, ' ');
}

function real(...days: readonly (readonly [year: number, month: number, day: number])[]): string[] {
  return days.map(([year, month, day]) => isoDay(year, month, day)).filter((day) => day !== null);
}

function isWithin(day: string, { first, last }: DaysAround): boolean {
  return (first !== null || last !== null) && day >= (first ?? '0') && day <= (last ?? '9');
}
