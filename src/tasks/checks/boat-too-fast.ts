import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, placeOfStation } from './check.ts';
import { misplacedStations } from './misplaced-stations.ts';
import { distanceInWords, visitedSpot } from './positions.ts';
import { workHours } from './work-hours.ts';

/**
 * Two stations of one recorder that follow each other faster than a boat goes: more than 2 km apart at over 40 knots
 * (common practice: survey boats do 15 to 25). Stations already asked about for their place are passed over.
 */
export const check = checkOf('boat-too-fast', ({ inHand }) => {
  const misplaced = misplacedStations(inHand);
  const timed = inHand.stations
    .filter((one) => workHours(one.record) !== null && visitedSpot(one.record) !== null)
    .filter((one) => one.record.recorder !== null && !misplaced.has(one))
    .toSorted(byRecorderAndTime);
  const found: Problem[] = [];
  timed.forEach((station, i) => {
    const before = timed[i - 1];
    if (before === undefined || !isSameDay(before, station)) return;
    const minutes = workHours(station.record)!.startMin - workHours(before.record)!.endMin;
    const distanceM = roughDistanceM(visitedSpot(before.record)!, visitedSpot(station.record)!);
    if (minutes < 0 || distanceM <= 2000 || distanceM <= fastestMPerMinute * minutes) return;
    const parameters = { distance: distanceInWords(distanceM), minutes };
    const place = placeOfStation(inHand, station);
    found.push(problemOf('boat-too-fast', place, { value: before.record.code, parameters }));
  });
  return found;
});

/** 40 knots. */
const fastestMPerMinute = (40 * 1852) / 60;

function isSameDay(a: StationWithTransects, b: StationWithTransects): boolean {
  return a.record.recorder === b.record.recorder && a.record.date === b.record.date;
}

function byRecorderAndTime({ record: a }: StationWithTransects, { record: b }: StationWithTransects): number {
  return compare(a.recorder!, b.recorder!) || compare(a.date, b.date) || compare(a.timeStart!, b.timeStart!);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
