import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, placeOfStation } from './check.ts';
import { decimalsOf, spotInWords, visitedSpot } from './positions.ts';

/**
 * One position under two station codes, to the last digit: a station entered twice, or a code changed on one sheet.
 * Asked where positions have four decimals or more; coarser ones agree by chance.
 */
export const check = checkOf('stations-alike', ({ inHand }) => {
  const decimals = decimalsOf(inHand.stations);
  if (decimals < 4) return [];
  const seen = new Map<string, StationWithTransects>();
  const found: Problem[] = [];
  for (const station of inHand.stations) {
    const spot = visitedSpot(station.record);
    if (spot === null) continue;
    const written = spotInWords(spot, decimals);
    const first = seen.get(written);
    if (first === undefined) {
      seen.set(written, station);
      continue;
    }
    const { date } = first.record;
    const when = date === station.record.date ? 'the same day' : date;
    const parameters = { position: written, when };
    const place = placeOfStation(inHand, station);
    found.push(problemOf('stations-alike', place, { value: first.record.code, parameters }));
  }
  return found;
});
