import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import { writePosition } from '../../survey/position-notation.ts';
import { stationCheck } from './check.ts';
import { misplacedStations } from './misplaced-stations.ts';
import { likelyCorrections } from './position-corrections.ts';
import { decimalsOf, distanceInWords, spotInWords, visitedSpot } from './positions.ts';

/** A station that ends more than 2 km from its start: no line of belts is so long, so one of the two is misread. */
export const check = stationCheck('end-far-from-start', (station, { inHand }) => {
  const { record } = station;
  const start = visitedSpot(record);
  const { endLatitudeDeg, endLongitudeDeg } = record;
  if (start === null || endLatitudeDeg === null || endLongitudeDeg === null) return null;
  const end = { latitudeDeg: endLatitudeDeg, longitudeDeg: endLongitudeDeg };
  const distanceM = roughDistanceM(start, end);
  // A misplaced start is asked about already, and its end would only echo it.
  if (distanceM <= longestLineM || misplacedStations(inHand).has(station)) return null;
  const decimals = decimalsOf(inHand.stations);
  const [best] = likelyCorrections(end, start, { withinM: longestLineM / 2, decimals });
  return {
    value: spotInWords(end, decimals),
    parameters: { chart: writePosition(end), distance: distanceInWords(distanceM) },
    suggestion: best?.typed ?? null,
  };
});

const longestLineM = 2000;
