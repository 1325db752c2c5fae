import { stationCheck } from './check.ts';
import { misplacedStations } from './misplaced-stations.ts';
import { offBorderInWords, onMask } from './outside-areas.ts';

/** A station on ground that was taken off the map: land, a closed place, water too deep. */
export const check = stationCheck('station-on-mask', (station, context) => {
  const on = onMask(station, context);
  if (on === null || on.isNear) return null;
  if ((misplacedStations(context.inHand).get(station)?.corrections.length ?? 0) > 0) return null;
  const { value, chart, distance } = offBorderInWords(on, context);
  const { name, content } = on.area;
  return {
    value,
    parameters: { mask: `mask ${name}`, chart, distance, reason: content.reason ?? 'no ground' },
  };
});
