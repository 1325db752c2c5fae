import { stationCheck } from './check.ts';
import { offBorderInWords, onMask, outsideOf } from './outside-areas.ts';

/** A station a few metres on the wrong side of a border, within what a receiver cannot tell: good to know, no more. */
export const check = stationCheck('station-at-border', (station, context) => {
  const near = [
    { side: 'outside stratum', off: outsideOf('stratum', station, context) },
    { side: 'outside zone', off: outsideOf('zone', station, context) },
    { side: 'inside mask', off: onMask(station, context) },
  ].flatMap(({ side, off }) => (off?.isNear ? [{ side, off }] : []));
  if (near.length === 0) return null;
  const words = near.map(({ side, off }) => {
    const { distance } = offBorderInWords(off, context);
    return `${distance} ${side} ${off.area.name}`;
  });
  return { value: offBorderInWords(near[0]!.off, context).value, parameters: { where: words.join(' and ') } };
});
