import type { StationWithTransects } from '../../survey/observation.ts';
import { type CheckContext, stationCheck } from './check.ts';
import { misplacedStations } from './misplaced-stations.ts';
import { holderOf, isAtHome, type OffBorder, offBorderInWords, outsideOf } from './outside-areas.ts';
import { correctionsThat } from './position-corrections.ts';
import { decimalsOf } from './positions.ts';

/**
 * A station that lies outside the polygon of its stratum by more than a receiver can be wrong. It is told in which
 * stratum it does lie. A station that a slip of the pen explains is asked about that slip instead.
 */
export const check = stationCheck('station-outside-stratum', (station, context) => {
  const outside = outsideOf('stratum', station, context);
  if (outside === null || outside.isNear) return null;
  if ((misplacedStations(context.inHand).get(station)?.corrections.length ?? 0) > 0) return null;
  const holder = holderOf(outside, context);
  const { value, chart, distance } = offBorderInWords(outside, context);
  const parameters = {
    stratum: outside.area.name,
    chart,
    distance,
    inside: holder?.name ?? '',
    none: holder === null ? 'none' : '',
    correction: holder === null ? correctionInto(station, outside, context) : '',
  };
  return { value, parameters, suggestion: holder?.name ?? null };
});

/** Nearer than this any figure exchanged could lead inside: our own choice. */
const farM = 500;

/** A position that a usual slip makes of this one and that lies in the right stratum and zone; empty when none does. */
function correctionInto(station: StationWithTransects, outside: OffBorder, context: CheckContext): string {
  if (outside.distanceM < farM) return '';
  const decimals = decimalsOf(context.inHand.stations);
  const fits = correctionsThat(outside.spot, decimals, (spot) => isAtHome(spot, station, context) === true);
  return fits.length === 1 ? fits[0]! : '';
}
