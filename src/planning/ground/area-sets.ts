/** Areas joined, cut and taken from each other. The result carries the error of its method with it. */

import { difference, intersection, union } from 'polyclip-ts';
import type { MapArea } from '../../survey/map-area.ts';
import { areaSize } from './area-size.ts';
import { areaOfParts, middleLongitudeDeg, type PlanePart, planeParts } from './plane.ts';

/** The ground common to both, measured on the ellipsoid; `parts` is empty when there is none. */
export function commonGround(a: MapArea, b: MapArea): MapArea {
  return combined([a, b], (first, rest) => intersection(first, ...rest));
}

/** The first area without any of the others. */
export function groundWithout(area: MapArea, others: readonly MapArea[]): MapArea {
  return combined([area, ...others], (first, rest) => difference(first, ...rest));
}

export function joinedGround(areas: readonly MapArea[]): MapArea {
  return areas.length === 0 ? { parts: [] } : combined(areas, (first, rest) => union(first, ...rest));
}

/**
 * Sets are made on the plane of longitude and latitude, where border lines are straight as in the map file, by the
 * sweep of Martinez, Rueda and Feito (2009; kept library), and only the result is measured, on the ellipsoid: there
 * is no projection whose scale could enter. What remains is `edgeErrorHa` of `areaSize`.
 */
function combined(
  areas: readonly MapArea[],
  combine: (first: PlanePart[], rest: PlanePart[][]) => PlanePart[],
): MapArea {
  const middleDeg = middleLongitudeDeg(areas);
  const [first, ...rest] = areas.map((area) => planeParts(area, middleDeg));
  return areaOfParts(combine(first ?? [], rest));
}

/** Mean width in metres of a long thin piece: twice the area over the border. */
export function meanWidthM(area: MapArea): number {
  const { areaHa, perimeterM } = areaSize(area);
  return perimeterM === 0 ? 0 : (2 * areaHa * 10_000) / perimeterM;
}
