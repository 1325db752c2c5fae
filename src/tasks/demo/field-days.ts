/**
 * Which station was worked on which day and when: one boat, one team of two who take turns with the slate,
 * so that no two stations overlap. Snorkel stations come first, 4 or 5 a day; scuba stations 3 or 4, deepest first.
 */

import type { SeededRandom } from '../../maths/random.ts';
import type { StationRow } from '../../survey/table-rows.ts';
import type { SurveyYear } from './animal.ts';
import { between } from './chance.ts';
import type { ChosenPlace } from './chosen-places.ts';

/** The first Monday used, a day of September: the dry season of the demo. */
const firstMonday: Readonly<Record<SurveyYear, number>> = { 2022: 5, 2024: 2, 2026: 7 };
const mostPerDay = { snorkel: 5, scuba: 4 } as const;
/** Animals at a station from which the work counts as dense. */
const denseFrom = 60;

export interface StationToVisit {
  readonly place: ChosenPlace;
  readonly animals: number;
  readonly aborted: boolean;
}

export type Visit = Pick<
  StationRow,
  'date' | 'timeStart' | 'timeEnd' | 'tide' | 'recorder' | 'navigator' | 'waypoint'
>;

/** The visit of each station, by its code. */
export function planVisits(
  year: SurveyYear,
  stations: readonly StationToVisit[],
  random: SeededRandom,
): ReadonlyMap<string, Visit> {
  const visits = new Map<string, Visit>();
  workDays(stations).forEach((stationsOfDay, dayNumber) => {
    const date = dateOf(year, dayNumber);
    let minutes = 7 * 60 + 30 + between(0, 25, random);
    for (const station of stationsOfDay) {
      const start = minutes;
      minutes += minutesAt(station, random);
      const first = visits.size % 2 === 0;
      visits.set(station.place.code, {
        date,
        timeStart: clock(start),
        timeEnd: clock(minutes),
        tide: tideAt(start, dayNumber),
        recorder: first ? 'Recorder A' : 'Recorder B',
        navigator: first ? 'Navigator B' : 'Navigator A',
        waypoint: `W${String(visits.size + 1).padStart(3, '0')}`,
      });
      minutes += between(12, 22, random);
    }
  });
  return visits;
}

function workDays(stations: readonly StationToVisit[]): StationToVisit[][] {
  const days = (['snorkel', 'scuba'] as const).map((mode) => {
    const route = stations.filter((one) => one.place.patch.mode === mode).toSorted(byRoute);
    const all = spreadEvenly(route, Math.ceil(route.length / mostPerDay[mode]));
    return mode === 'snorkel'
      ? all
      : all.map((day) => day.toSorted((a, b) => b.place.depthM - a.place.depthM));
  });
  return days.flat();
}

/** Patch by patch, each from west to east. */
function byRoute(a: StationToVisit, b: StationToVisit): number {
  const patch = a.place.patch.name < b.place.patch.name ? -1 : 1;
  return a.place.patch === b.place.patch ? a.place.planned.eastM - b.place.planned.eastM : patch;
}

function spreadEvenly<Value>(values: readonly Value[], parts: number): Value[][] {
  return Array.from({ length: parts }, (_, i) =>
    values.slice(Math.round((i * values.length) / parts), Math.round(((i + 1) * values.length) / parts)),
  );
}

function minutesAt({ animals, aborted }: StationToVisit, random: SeededRandom): number {
  if (aborted) return between(20, 25, random);
  return animals < denseFrom ? between(40, 60, random) : between(60, 90, random);
}

/** Monday to Friday, then the next week. */
function dateOf(year: SurveyYear, dayNumber: number): string {
  const day = firstMonday[year] + dayNumber + 2 * Math.floor(dayNumber / 5);
  return `${year}-09-${String(day).padStart(2, '0')}`;
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** Two invented tides a day, 50 minutes later every day. */
function tideAt(minutes: number, dayNumber: number): string {
  const sinceLow = (minutes + 745 - 300 - ((50 * dayNumber) % 745)) % 745;
  return ['low', 'rising', 'high', 'falling'][Math.round(sinceLow / 186.25) % 4]!;
}
