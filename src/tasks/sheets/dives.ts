/**
 * The dives of a day added up for each diver and compared with limits the officer typed.
 *
 * Times are added, depths compared, nothing more: no decompression is computed here or anywhere in the program.
 * The dive supervisor and the local rules prevail.
 */

import { type ScreenLanguage, serverSentence } from '../../report/catalogue/server-words.ts';
import type { DayContent } from '../../survey/day-words.ts';
import type { DiverDay } from './survey-schemas.ts';

type Dive = DayContent['dives'][number];
type Limit = DiverDay['over'][number]['limit'];

export function diversOf(day: DayContent, language: ScreenLanguage): DiverDay[] {
  const byDiver = new Map<string, Dive[]>();
  for (const dive of day.dives) byDiver.set(dive.diver, [...(byDiver.get(dive.diver) ?? []), dive]);
  return [...byDiver].map(([diver, dives]) => diverDay(diver, dives, day.limits, language));
}

function diverDay(
  diver: string,
  dives: readonly Dive[],
  limits: DayContent['limits'],
  language: ScreenLanguage,
): DiverDay {
  const timed = dives.map(timesOf).sort((a, b) => a.entry - b.entry);
  const depths = dives.map((dive) => dive.maxDepthM).filter((depth) => depth !== null);
  const intervals = timed.slice(1).map((dive, i) => dive.entry - timed[i]!.exit);
  const day = {
    diver,
    dives: dives.length,
    minutes: timed.reduce((total, { entry, exit }) => total + exit - entry, 0),
    maxDepthM: depths.length === 0 ? null : Math.max(...depths),
    shortestIntervalMin: intervals.length === 0 ? null : Math.min(...intervals),
  };
  const over: DiverDay['over'] = [];
  const compare = (limit: Limit, found: number | null, isOver: (found: number, typed: number) => boolean) => {
    const typed = limits[limit];
    if (typed === null || found === null || !isOver(found, typed)) return;
    over.push({ limit, typed, found, message: serverSentence(language, limit, { found, typed }) });
  };
  const more = (found: number, typed: number) => found > typed;
  compare('divesPerDay', day.dives, more);
  compare('minutesPerDay', day.minutes, more);
  compare('surfaceIntervalMin', day.shortestIntervalMin, (found, typed) => found < typed);
  compare('maxDepthM', day.maxDepthM, more);
  return { ...day, over };
}

/** In minutes since midnight. A dive that ends before it begins went over midnight. */
function timesOf({ entry, exit }: Dive): { readonly entry: number; readonly exit: number } {
  const begins = minutesOf(entry);
  const ends = minutesOf(exit);
  return { entry: begins, exit: ends < begins ? ends + minutesOfDay : ends };
}

const minutesOfDay = 24 * 60;

function minutesOf(time: string): number {
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
}
