import { type MapFinding, mapFinding, type Ring } from '../../survey/map-area.ts';
import { distanceBetweenM } from './geodesic.ts';
import { openRing, samePosition } from './plane.ts';
import { selfCrossing } from './self-crossing.ts';

/** Which ring of which area: parts count from 1, ring 0 is the outer one. */
export interface RingPlace {
  readonly name: string | null;
  readonly part: number;
  readonly ring: number;
}

/** Open, too short, stuttering or crossing itself? */
export function checkRing(ring: Ring, place: RingPlace): MapFinding[] {
  const where = { part: place.part, ring: place.ring };
  const corners = distinctPositions(ring);
  if (corners < 3) return [mapFinding('too-few-points', place.name, { ...where, points: corners })];
  const findings: MapFinding[] = [];
  const gapM = distanceBetweenM(ring[0]!, ring.at(-1)!);
  if (!samePosition(ring[0]!, ring.at(-1)!)) {
    findings.push(mapFinding('open-ring', place.name, { ...where, gapM }));
  }
  const repeated = repeatedPoints(ring);
  if (repeated.length > 0) {
    const first = repeated[0]!;
    findings.push(mapFinding('repeated-points', place.name, { ...where, count: repeated.length, first }));
  }
  const crossing = selfCrossing(ring);
  if (crossing !== null) {
    const { crossings, first } = crossing;
    findings.push(mapFinding('self-crossing', place.name, { ...where, crossings, ...first }));
  }
  return findings;
}

function distinctPositions(ring: Ring): number {
  return new Set(ring.map((position) => `${position.latitudeDeg} ${position.longitudeDeg}`)).size;
}

/** Points that stand where the one before them stands, counted from 1. */
function repeatedPoints(ring: Ring): number[] {
  const open = openRing(ring);
  return open.flatMap((position, i) => (i > 0 && samePosition(position, open[i - 1]!) ? [i + 1] : []));
}
