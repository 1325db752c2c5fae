import { stationCheck } from './check.ts';
import { decimalsOf, plannedSpot, spotInWords, visitedSpot } from './positions.ts';

/**
 * The position of a station is its plan to the last digit: copied, not read off the receiver. Asked where positions
 * have five decimals, about a metre: boats do not lie still so near. Coarser ones agree by chance.
 */
export const check = stationCheck('position-same-as-plan', ({ record }, { inHand }) => {
  const visited = visitedSpot(record);
  const planned = plannedSpot(record);
  if (visited === null || planned === null) return null;
  if (visited.latitudeDeg !== planned.latitudeDeg || visited.longitudeDeg !== planned.longitudeDeg)
    return null;
  const decimals = decimalsOf(inHand.stations);
  return decimals < 5 ? null : { value: spotInWords(visited, decimals) };
});
