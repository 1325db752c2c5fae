/** For tests: simple areas, and noisy ones of many points. */

import type { MapArea, Position } from '../../survey/map-area.ts';

/** A closed ring from pairs of longitude and latitude. */
export function ringOf(...pairs: readonly (readonly [number, number])[]): Position[] {
  const ring = pairs.map(([longitudeDeg, latitudeDeg]) => ({ latitudeDeg, longitudeDeg }));
  return [...ring, ring[0]!];
}

export function areaOf(outer: readonly Position[], ...holes: (readonly Position[])[]): MapArea {
  return { parts: [{ outer, holes }] };
}

/** A box between two meridians and two parallels, drawn anticlockwise. */
export function boxArea(west: number, south: number, east: number, north: number): MapArea {
  return areaOf(ringOf([west, south], [east, south], [east, north], [west, north]));
}

/** A closed, wavy border of many points that does not cross itself. */
export function wavyArea(points: number, middle: Position, radiusDeg: number): MapArea {
  const pairs = Array.from({ length: points }, (_, i): readonly [number, number] => {
    const angle = (2 * Math.PI * i) / points;
    const radius = radiusDeg * (1 + 0.2 * Math.sin(50 * angle) + 0.1 * Math.sin(313 * angle));
    return [middle.longitudeDeg + radius * Math.cos(angle), middle.latitudeDeg + radius * Math.sin(angle)];
  });
  return areaOf(ringOf(...pairs));
}
