import geographiclib from 'geographiclib-geodesic';
import type { MapArea, Ring } from '../../survey/map-area.ts';
import { openRing, shorterWayDeg } from './plane.ts';

export interface AreaSize {
  readonly areaHa: number;
  /** Of all rings, holes included. */
  readonly perimeterM: number;
  /**
   * At most so much more or less if the border is followed straight in degrees (as map files define it) and not
   * along geodesics (as the area is computed). Nothing for borders drawn with short steps.
   */
  readonly edgeErrorHa: number;
}

/**
 * Area of a mapped piece of ground in hectares, on the WGS84 ellipsoid.
 *
 * Outer rings count, holes are taken off, parts are added; the sense in which a ring was drawn does not matter, and
 * the date line is a meridian like any other. Assumes that rings neither cross themselves nor each other
 * (`checkArea` and `checkAreas` look) and that no ring goes round a pole. A ring of fewer than three points has no area.
 * Source: Karney 2013, Journal of Geodesy 87:43, section 6. One pass over the points.
 */
export function areaSize(area: MapArea): AreaSize {
  let areaM2 = 0;
  let perimeterM = 0;
  let edgeErrorM2 = 0;
  for (const part of area.parts) {
    for (const ring of [part.outer, ...part.holes]) {
      const size = ringSize(ring);
      areaM2 += ring === part.outer ? size.areaM2 : -size.areaM2;
      perimeterM += size.perimeterM;
      edgeErrorM2 += edgeErrorOfM2(ring);
    }
  }
  return { areaHa: areaM2 / 10_000, perimeterM, edgeErrorHa: edgeErrorM2 / 10_000 };
}

/** Area in hectares; see `areaSize`. */
export function areaHaOf(area: MapArea): number {
  return areaSize(area).areaHa;
}

export function ringSize(ring: Ring): { readonly areaM2: number; readonly perimeterM: number } {
  const polygon = geographiclib.Geodesic.WGS84.Polygon(false);
  for (const position of openRing(ring)) polygon.AddPoint(position.latitudeDeg, position.longitudeDeg);
  const result = polygon.Compute(false, true);
  return { areaM2: Math.abs(result.area ?? 0), perimeterM: result.perimeter };
}

/**
 * Between a geodesic of length L and the straight line in degrees lie at most about L^3 tan(latitude) / (12 R):
 * the geodesic bulges L^2 tan(latitude) / (8 R) at the middle, and a flat bow holds two thirds of its box.
 * Only the part of the edge that runs east counts; by hand, for edges short against the earth.
 */
function edgeErrorOfM2(ring: Ring): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i++) {
    const from = ring[i]!;
    const to = ring[(i + 1) % ring.length]!;
    const latitude = (Math.max(Math.abs(from.latitudeDeg), Math.abs(to.latitudeDeg)) * Math.PI) / 180;
    const eastM =
      Math.abs(shorterWayDeg(to.longitudeDeg - from.longitudeDeg)) * metresPerDegree * Math.cos(latitude);
    const northM = Math.abs(to.latitudeDeg - from.latitudeDeg) * metresPerDegree;
    // An edge that runs north bends too while it changes its meridian: 2 east x north of the square of the length.
    const bendM2 = eastM * Math.hypot(eastM, 2 * northM);
    sum += (bendM2 * Math.hypot(eastM, northM) * Math.tan(Math.min(latitude, 1.55))) / (12 * radiusM);
  }
  return sum;
}

const radiusM = 6_371_008.8;
const metresPerDegree = 111_320;
