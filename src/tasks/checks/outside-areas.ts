/** Where a station lies against the borders on the map, and how sure a receiver can be of it. */

import type { StationWithTransects } from '../../survey/observation.ts';
import { writePosition } from '../../survey/position-notation.ts';
import type { MapAreaRecord } from '../../survey/words.ts';
import type { CheckContext } from './check.ts';
import { isInArea, mappedArea, metresToBorder } from './ground.ts';
import { decimalsOf, distanceInWords, type Spot, spotInWords, visitedSpot } from './positions.ts';

export interface OffBorder {
  readonly area: MapAreaRecord;
  readonly spot: Spot;
  readonly distanceM: number;
  /** Within what a receiver, or the rounding of the positions, cannot tell. */
  readonly isNear: boolean;
}

/** A receiver in an open boat is good to some 10 m, the border as well (common practice). */
const receiverM = 20;

/** The station outside its stratum or zone; null inside, and where there is no map or no position. */
export function outsideOf(
  role: 'stratum' | 'zone',
  station: StationWithTransects,
  context: CheckContext,
): OffBorder | null {
  const name = role === 'stratum' ? station.stratum.name : station.record.zone;
  const area = mappedArea(context.ground, role, name);
  const spot = visitedSpot(station.record);
  if (area === null || spot === null || isInArea(area, spot)) return null;
  return offBorder(area, spot, context);
}

/** The mask that the station lies on, deepest first; null on none. */
export function onMask(station: StationWithTransects, context: CheckContext): OffBorder | null {
  const spot = visitedSpot(station.record);
  if (spot === null) return null;
  const masks = context.ground.maps.filter((area) => area.role === 'mask' && isInArea(area, spot));
  const found = masks.map((area) => offBorder(area, spot, context));
  return found.sort((a, b) => b.distanceM - a.distanceM)[0] ?? null;
}

function offBorder(area: MapAreaRecord, spot: Spot, { inHand }: CheckContext): OffBorder {
  const distanceM = metresKnown(area, spot);
  const roundingM = (Math.SQRT2 * 111_200 * 10 ** -decimalsOf(inHand.stations)) / 2;
  return { area, spot, distanceM, isNear: distanceM <= Math.max(receiverM, roundingM) };
}

/** The way to a border of many corners is worked out once: four checks ask for it. */
function metresKnown(area: MapAreaRecord, spot: Spot): number {
  const key = `${spot.latitudeDeg} ${spot.longitudeDeg}`;
  let known = metres.get(area);
  if (known === undefined) {
    known = new Map();
    metres.set(area, known);
  }
  let distanceM = known.get(key);
  if (distanceM === undefined) {
    distanceM = metresToBorder(area, spot);
    known.set(key, distanceM);
  }
  return distanceM;
}

const metres = new WeakMap<MapAreaRecord, Map<string, number>>();

/** Another area of the role that holds the spot; null when none does. */
export function holderOf(
  { area, spot }: OffBorder,
  { ground }: Pick<CheckContext, 'ground'>,
): MapAreaRecord | null {
  return ground.maps.find((one) => one.role === area.role && one !== area && isInArea(one, spot)) ?? null;
}

/** "outside stratum north flat", "outside stratum north flat and zone closed"; empty when inside, or unknown. */
export function outsideInWords(station: StationWithTransects, context: CheckContext): string {
  const names = (['stratum', 'zone'] as const).flatMap((role) => {
    const outside = outsideOf(role, station, context);
    return outside === null || outside.isNear ? [] : [`${role} ${outside.area.name}`];
  });
  return names.length === 0 ? '' : `outside ${names.join(' and ')}`;
}

/** Inside its stratum and its zone, as far as there are maps of them; null when there is neither. */
export function isAtHome(
  spot: Spot,
  station: StationWithTransects,
  { ground }: CheckContext,
): boolean | null {
  const areas = [
    mappedArea(ground, 'stratum', station.stratum.name),
    mappedArea(ground, 'zone', station.record.zone),
  ].filter((area) => area !== null);
  return areas.length === 0 ? null : areas.every((area) => isInArea(area, spot));
}

export function offBorderInWords({ spot, distanceM }: OffBorder, { inHand }: CheckContext) {
  return {
    value: spotInWords(spot, decimalsOf(inHand.stations)),
    chart: writePosition(spot),
    distance: distanceInWords(distanceM),
  };
}
