import {
  type MapArea,
  type MapFinding,
  mapFinding,
  type Position,
  type Ring,
} from '../../survey/map-area.ts';
import { distanceBetweenM } from './geodesic.ts';
import { openRing, shorterWayDeg } from './plane.ts';

/** Farther than this from the rest of its ring, a point is asked about; our own choice, wider than any reef. */
const farM = 100_000;
const farInSpreads = 20;

/**
 * Latitude and longitude exchanged, for all points of an area or for some?
 *
 * Exchanged if the latitude cannot be and the longitude could be one; or if a point lies far from the middle of
 * its ring (100 km, and 20 times the usual distance) and comes near when it is exchanged. What is far and stays
 * far when exchanged is asked about without a suggestion.
 */
export function checkCoordinateOrder(area: MapArea, name: string | null): MapFinding[] {
  const rings = area.parts.flatMap((part, p) =>
    [part.outer, ...part.holes].map((ring, r) => ({ ring: openRing(ring), place: { part: p + 1, ring: r } })),
  );
  const positions = rings.flatMap(({ ring }) => ring);
  const impossible = positions.filter((position) => !isPossible(position));
  if (
    impossible.length > 0 &&
    impossible.length === positions.length &&
    positions.every(isPossibleExchanged)
  ) {
    return [
      mapFinding('swapped-coordinates', name, { points: positions.length, ...asNumbers(positions[0]!) }),
    ];
  }
  return rings.flatMap(({ ring, place }) => checkPoints(ring, place, name));
}

function checkPoints(
  ring: Ring,
  place: { readonly part: number; readonly ring: number },
  name: string | null,
): MapFinding[] {
  const middle = middleOf(ring.filter(isPossible));
  const usualM = median(ring.filter(isPossible).map((position) => distanceBetweenM(position, middle)));
  const limitM = Math.max(farM, farInSpreads * usualM);
  return ring.flatMap((position, i) => {
    const at = { ...place, point: i + 1, ...asNumbers(position) };
    if (!isPossible(position)) {
      const code = isPossibleExchanged(position) ? 'swapped-coordinates' : 'latitude-impossible';
      return [mapFinding(code, name, at)];
    }
    const awayM = distanceBetweenM(position, middle);
    if (awayM <= limitM) return [];
    const exchangedM = isPossibleExchanged(position) ? distanceBetweenM(exchanged(position), middle) : awayM;
    if (exchangedM > limitM)
      return [mapFinding('far-from-neighbours', name, { ...at, awayKm: awayM / 1000 })];
    const distances = { awayKm: awayM / 1000, exchangedKm: exchangedM / 1000 };
    return [mapFinding('swapped-coordinates', name, { ...at, ...distances })];
  });
}

export function exchanged(position: Position): Position {
  return { latitudeDeg: position.longitudeDeg, longitudeDeg: position.latitudeDeg };
}

export function isPossible({ latitudeDeg, longitudeDeg }: Position): boolean {
  return Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 360;
}

export function isPossibleExchanged(position: Position): boolean {
  return isPossible(exchanged(position));
}

/** Middle by medians: one wild point does not move it. */
export function middleOf(positions: readonly Position[]): Position {
  const from = positions[0]?.longitudeDeg ?? 0;
  return {
    latitudeDeg: median(positions.map((position) => position.latitudeDeg)),
    longitudeDeg: from + median(positions.map((position) => shorterWayDeg(position.longitudeDeg - from))),
  };
}

/** The middle value, the upper one of two; 0 for none. */
function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
}

function asNumbers(position: Position): { latitudeDeg: number; longitudeDeg: number } {
  return { latitudeDeg: position.latitudeDeg, longitudeDeg: position.longitudeDeg };
}
