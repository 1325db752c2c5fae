import type { MapArea, Position, Ring } from '../../survey/map-area.ts';
import { distanceBetweenM } from './geodesic.ts';
import { shorterWayDeg } from './plane.ts';

/**
 * How far a position lies from the nearest border of an area, in metres, inside or outside alike.
 *
 * The nearest place on the border is looked for on a flat map around the position, with edges straight in degrees;
 * the way to it is a geodesic. Good to a metre within 50 km. Null for an area without positions. One pass over the edges.
 */
export function borderDistanceM(area: MapArea, position: Position): number | null {
  let nearest: Position | null = null;
  let least = Number.POSITIVE_INFINITY;
  const eastPerDegree = Math.cos((position.latitudeDeg * Math.PI) / 180);
  for (const ring of area.parts.flatMap((part) => [part.outer, ...part.holes])) {
    const found = nearestOnRing(ring, position, eastPerDegree);
    if (found === null || found.square >= least) continue;
    least = found.square;
    nearest = found.place;
  }
  return nearest === null ? null : distanceBetweenM(position, nearest);
}

function nearestOnRing(ring: Ring, position: Position, eastPerDegree: number) {
  let best: { readonly square: number; readonly place: Position } | null = null;
  for (let i = 0; i < ring.length; i++) {
    const from = ring[i]!;
    const to = ring[(i + 1) % ring.length]!;
    const x = shorterWayDeg(from.longitudeDeg - position.longitudeDeg);
    const y = from.latitudeDeg - position.latitudeDeg;
    const alongX = shorterWayDeg(to.longitudeDeg - from.longitudeDeg);
    const alongY = to.latitudeDeg - from.latitudeDeg;
    const lengthSquare = (alongX * eastPerDegree) ** 2 + alongY ** 2;
    const share = lengthSquare === 0 ? 0 : -(x * alongX * eastPerDegree ** 2 + y * alongY) / lengthSquare;
    const at = Math.max(0, Math.min(1, share));
    const square = ((x + at * alongX) * eastPerDegree) ** 2 + (y + at * alongY) ** 2;
    if (best !== null && square >= best.square) continue;
    const place = {
      latitudeDeg: position.latitudeDeg + y + at * alongY,
      longitudeDeg: position.longitudeDeg + x + at * alongX,
    };
    best = { square, place };
  }
  return best;
}
