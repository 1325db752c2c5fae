import { stationCheck } from './check.ts';
import { misplacedStations } from './misplaced-stations.ts';
import { holderOf, offBorderInWords, outsideOf } from './outside-areas.ts';

/** A station outside the polygon of its zone: open and closed places are then compared with the wrong ones. */
export const check = stationCheck('station-outside-zone', (station, context) => {
  const outside = outsideOf('zone', station, context);
  if (outside === null || outside.isNear) return null;
  if ((misplacedStations(context.inHand).get(station)?.corrections.length ?? 0) > 0) return null;
  const holder = holderOf(outside, context);
  const { value, chart, distance } = offBorderInWords(outside, context);
  const parameters = {
    zone: outside.area.name,
    chart,
    distance,
    inside: holder === null ? '' : `zone ${holder.name}`,
  };
  return { value, parameters, suggestion: holder?.name ?? null };
});
