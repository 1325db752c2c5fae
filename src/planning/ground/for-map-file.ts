import { intersection } from 'polyclip-ts';
import type { MapArea, Position, Ring } from '../../survey/map-area.ts';
import {
  middleLongitudeDeg,
  openRing,
  type PlanePart,
  type PlaneRing,
  planeParts,
  shorterWayDeg,
} from './plane.ts';

/**
 * An area as map files want it (RFC 7946, 3.1.6 and 3.1.9): cut in two at the date line if it runs through, outer rings
 * anticlockwise and holes clockwise, every ring closed, longitudes between -180 and 180.
 */
export function areaForMapFile(area: MapArea): MapArea {
  const middleDeg = middleLongitudeDeg([area]);
  const parts = planeParts(area, middleDeg);
  return { parts: parts.flatMap((part) => (doesCross(part) ? cut(part) : [wholePart(part)])) };
}

function doesCross(part: PlanePart): boolean {
  const longitudes = part[0]!.map(([longitudeDeg]) => longitudeDeg);
  return turnOf(Math.min(...longitudes), 1) !== turnOf(Math.max(...longitudes), -1);
}

/** The turn of the globe a longitude lies on; one exactly on the date line belongs to the side of `nudge`. */
function turnOf(longitudeDeg: number, nudge: number): number {
  return Math.floor((longitudeDeg + 180) / 360 + nudge * 1e-12);
}

function cut(part: PlanePart): MapArea['parts'] {
  const first = turnOf(Math.min(...part[0]!.map(([longitudeDeg]) => longitudeDeg)), 1);
  return [first, first + 1].flatMap((turn) => {
    const west = 360 * turn - 180;
    const world: PlaneRing = [
      [west, -90],
      [west + 360, -90],
      [west + 360, 90],
      [west, 90],
      [west, -90],
    ];
    return intersection([part], [[world]]).map((piece) => partOnTurn(piece, turn));
  });
}

function wholePart(part: PlanePart): MapArea['parts'][number] {
  return partOnTurn(part, turnOf(Math.min(...(part[0] ?? []).map(([longitudeDeg]) => longitudeDeg)), 1));
}

function partOnTurn([outer, ...holes]: PlanePart, turn: number): MapArea['parts'][number] {
  const set = (ring: PlaneRing, wanted: 1 | -1) => closedAndTurned(ring, turn, wanted);
  return { outer: set(outer ?? [], 1), holes: holes.map((hole) => set(hole, -1)) };
}

function closedAndTurned(ring: PlaneRing, turn: number, wanted: 1 | -1): Ring {
  const positions = ring.map(
    ([longitudeDeg, latitudeDeg]): Position => ({
      latitudeDeg,
      // Within the turn a plain difference is right; only a touch of rounding is taken off at its ends.
      longitudeDeg: turn === 0 ? longitudeDeg : Math.max(-180, Math.min(180, longitudeDeg - 360 * turn)),
    }),
  );
  const open = openRing(positions);
  const sense = Math.sign(twiceSignedArea(open));
  const turned = sense === -wanted ? open.toReversed() : open;
  return open.length === 0 ? [] : [...turned, turned[0]!];
}

/** Positive when drawn anticlockwise. */
function twiceSignedArea(ring: Ring): number {
  return ring.reduce((sum, from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const eastDeg = shorterWayDeg(to.longitudeDeg - from.longitudeDeg);
    // Around the first corner, so that large longitudes cost no digits.
    const offDeg = from.longitudeDeg - ring[0]!.longitudeDeg;
    const [y1, y2] = [from.latitudeDeg - ring[0]!.latitudeDeg, to.latitudeDeg - ring[0]!.latitudeDeg];
    return sum + offDeg * y2 - (offDeg + eastDeg) * y1;
  }, 0);
}
