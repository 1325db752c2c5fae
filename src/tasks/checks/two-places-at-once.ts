import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, placeOfStation } from './check.ts';
import { workHours } from './work-hours.ts';

/** A recorder or navigator whose times at two stations of one day overlap. */
export const check = checkOf('two-places-at-once', ({ inHand }) => {
  const found = new Map<StationWithTransects, Problem>();
  for (const [person, visits] of visitsByPerson(inHand.stations)) {
    const inOrder = visits.sort((a, b) => a.startMin - b.startMin || a.endMin - b.endMin);
    let before: Visit | null = null;
    for (const visit of inOrder) {
      if (before !== null && visit.startMin < before.endMin && !found.has(visit.station)) {
        const other = before.station.record;
        const parameters = { person, from: other.timeStart!, to: other.timeEnd! };
        const place = placeOfStation(inHand, visit.station);
        found.set(visit.station, problemOf('two-places-at-once', place, { value: other.code, parameters }));
      }
      if (before === null || visit.endMin > before.endMin) before = visit;
    }
  }
  return [...found.values()];
});

interface Visit {
  readonly station: StationWithTransects;
  readonly startMin: number;
  readonly endMin: number;
}

/** Keyed by person and day; one person in both roles of a station is there once. */
function visitsByPerson(stations: readonly StationWithTransects[]): ReadonlyMap<string, Visit[]> {
  const visits = new Map<string, Visit[]>();
  const people = new Map<string, Map<string, Visit[]>>();
  for (const station of stations) {
    const hours = workHours(station.record);
    if (hours === null) continue;
    for (const person of new Set([station.record.recorder, station.record.navigator])) {
      if (person === null) continue;
      const days = people.get(person) ?? new Map<string, Visit[]>();
      people.set(person, days);
      const list = days.get(station.record.date) ?? [];
      days.set(station.record.date, [...list, { station, ...hours }]);
    }
  }
  for (const [person, days] of people) visits.set(person, [...days.values()].flatMap(inOneLine));
  return visits;
}

/** Days one after the other on one line of minutes, so that visits of different days never meet. */
function inOneLine(visits: readonly Visit[], dayNumber: number): Visit[] {
  const dayStartMin = 3 * 1440 * dayNumber;
  return visits.map((visit) => ({
    station: visit.station,
    startMin: dayStartMin + visit.startMin,
    endMin: dayStartMin + visit.endMin,
  }));
}
