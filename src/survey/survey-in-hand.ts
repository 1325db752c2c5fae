/** Joins the records of one survey into stations with their transects and tallies. */

import {
  type StationWithTransects,
  type SurveyInHand,
  type TransectWithTallies,
  transectAreaCm2,
} from './observation.ts';
import type { SurveyRows } from './store.ts';
import type { Protocol, Species, Stratum, Survey, Tally, Transect } from './words.ts';

export interface SurveyContext {
  readonly survey: Survey;
  readonly protocol: Protocol | null;
  readonly strata: readonly Stratum[];
  readonly targets: readonly Species[];
}

/**
 * One pass over stations, transects and tallies. Only the given swim enters (1 unless said);
 * the others are kept beside it so that they can be named as left out.
 */
export function joinSurvey(context: SurveyContext, rows: SurveyRows, swim = 1): SurveyInHand {
  return surveyOfStations(context, joinStations(context.strata, rows, swim));
}

/** A survey of stations that were joined before. */
export function surveyOfStations(
  { survey, protocol, targets }: Omit<SurveyContext, 'strata'>,
  stations: readonly StationWithTransects[],
): SurveyInHand {
  return { survey, protocol, plannedAreaCm2: plannedAreaCm2(protocol, stations), stations, targets };
}

/** In order of their codes. A station whose stratum is unknown is a mistake of ours: imports refuse it. */
export function joinStations(
  strataOfBook: readonly Stratum[],
  rows: SurveyRows,
  swim = 1,
): readonly StationWithTransects[] {
  const strata = new Map(strataOfBook.map((stratum) => [stratum.id, stratum]));
  const talliesByTransect = groupTallies(rows.tallies);
  const transectsByStation = groupBy(rows.transects, (transect) => transect.stationId);
  const stations = rows.stations.map((record): StationWithTransects => {
    const stratum = strata.get(record.stratumId);
    if (stratum === undefined) throw new Error(`joinSurvey requires the stratum of station ${record.code}`);
    const all = (transectsByStation.get(record.id) ?? [])
      .toSorted(byCodeThenSwim)
      .map((transect) => withTallies(transect, talliesByTransect));
    return {
      record,
      stratum,
      transects: all.filter((transect) => transect.record.swim === swim),
      laterSwims: all.filter((transect) => transect.record.swim !== swim),
    };
  });
  return stations.sort((a, b) => compareCodes(a.record.code, b.record.code));
}

function withTallies(
  record: Transect,
  tallies: ReadonlyMap<string, ReadonlyMap<string, Tally>>,
): TransectWithTallies {
  return {
    record,
    status: record.status,
    scope: record.scope.length === 0 ? null : new Set(record.scope.map((name) => name.toLowerCase())),
    noneSeen: record.noneSeen,
    tallies: tallies.get(record.id) ?? noTallies,
    areaCm2: transectAreaCm2(record),
  };
}

const noTallies: ReadonlyMap<string, Tally> = new Map();

/**
 * What a station was meant to search. Where the protocol does not say, it is the layout this survey
 * used most: the commonest number of transects times the commonest full belt.
 */
export function plannedAreaCm2(
  protocol: Protocol | null,
  stations: readonly Pick<StationWithTransects, 'transects'>[],
): number | null {
  const belts = stations.flatMap((station) => station.transects);
  const transects =
    protocol?.transectsPerStation ?? commonest(stations.map((s) => s.transects.length).filter((n) => n > 0));
  const belt =
    protocol?.lengthM && protocol.widthM
      ? transectAreaCm2(protocol)
      : commonest(belts.map((transect) => transect.areaCm2).filter((area) => area > 0));
  return transects === null || belt === null ? null : transects * belt;
}

/** The commonest value; of equally common ones the largest, so that short belts never set the plan. */
function commonest(values: readonly number[]): number | null {
  const times = new Map<number, number>();
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
  let best: number | null = null;
  for (const [value, n] of times) {
    const bestTimes = best === null ? 0 : times.get(best)!;
    if (n > bestTimes || (n === bestTimes && best !== null && value > best)) best = value;
  }
  return best;
}

function groupTallies(tallies: readonly Tally[]): Map<string, Map<string, Tally>> {
  const groups = new Map<string, Map<string, Tally>>();
  for (const tally of tallies) {
    const group = groups.get(tally.transectId);
    if (group === undefined) groups.set(tally.transectId, new Map([[tally.speciesId, tally]]));
    else group.set(tally.speciesId, tally);
  }
  return groups;
}

function groupBy<Value>(values: readonly Value[], key: (value: Value) => string): Map<string, Value[]> {
  const groups = new Map<string, Value[]>();
  for (const value of values) {
    const group = groups.get(key(value));
    if (group === undefined) groups.set(key(value), [value]);
    else group.push(value);
  }
  return groups;
}

function byCodeThenSwim(a: Transect, b: Transect): number {
  return compareCodes(a.code, b.code) || a.swim - b.swim;
}

/** Codes in the order people expect: S2 before S10. Plain code units otherwise, the same on every machine. */
export function compareCodes(a: string, b: string): number {
  const left = a.match(codeParts) ?? [];
  const right = b.match(codeParts) ?? [];
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const x = left[i]!;
    const y = right[i]!;
    const difference = Number(x) - Number(y);
    if (!Number.isNaN(difference) && difference !== 0) return difference;
    if (x !== y) return x < y ? -1 : 1;
  }
  return left.length - right.length;
}

const codeParts = /\d+|\D+/g;
