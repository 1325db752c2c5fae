import { stationCheck } from './check.ts';
import { decimalsOf, plannedSpot, type Spot, spotInWords, visitedSpot } from './positions.ts';

/**
 * The position of a station is its plan to the last digit: copied, not read off the receiver. Asked where positions
 * have five decimals, about a metre: boats do not lie still so near. Coarser ones agree by chance.
 *
 * A plan page writes thousandths of a minute, 1.9 m: a position typed in them is a copy when it is the plan so rounded.
 */
export const check = stationCheck('position-same-as-plan', ({ record }, { inHand }) => {
  const visited = visitedSpot(record);
  const planned = plannedSpot(record);
  if (visited === null || planned === null) return null;
  if (!isSame(visited, planned) && !isSameOnPaper(visited, planned)) return null;
  const decimals = decimalsOf(inHand.stations);
  return decimals < 5 ? null : { value: spotInWords(visited, decimals) };
});

function isSame(visited: Spot, planned: Spot): boolean {
  return visited.latitudeDeg === planned.latitudeDeg && visited.longitudeDeg === planned.longitudeDeg;
}

function isSameOnPaper(visited: Spot, planned: Spot): boolean {
  return (['latitudeDeg', 'longitudeDeg'] as const).every((axis) => {
    const typed = visited[axis] * thousandthsPerDegree;
    // The book may keep six decimals of a degree, and a plan is rounded to those of its survey.
    const isTypedSo = Math.abs(typed - Math.round(typed)) < 0.04;
    // Half of a thousandth, and what those six decimals may have rounded off.
    return isTypedSo && Math.abs(typed - planned[axis] * thousandthsPerDegree) <= 0.5 + 0.04;
  });
}

const thousandthsPerDegree = 60_000;
