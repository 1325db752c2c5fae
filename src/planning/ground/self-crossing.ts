import type { Position, Ring } from '../../survey/map-area.ts';
import { openRing, type PlanePoint, planeRing, positionsOf } from './plane.ts';

interface Edge {
  readonly index: number;
  readonly from: PlanePoint;
  readonly to: PlanePoint;
  readonly west: number;
  readonly east: number;
}

/**
 * Where a ring crosses or touches itself: the number of crossings and the first of them; null when it does not.
 *
 * Edges are sorted by their western end and compared only while their longitudes overlap; a border of 20 000 short
 * edges takes well under a second. Neighbouring edges share a point and are not compared.
 */
export function selfCrossing(ring: Ring): { readonly crossings: number; readonly first: Position } | null {
  const points = planeRing(openRing(ring), ring[0]?.longitudeDeg ?? 0).filter(differsFromPrevious);
  const edges = points.map((from, index) => edgeOf(index, from, points[(index + 1) % points.length]!));
  edges.sort((a, b) => a.west - b.west);
  let crossings = 0;
  let first: PlanePoint | null = null;
  for (let i = 0; i < edges.length; i++) {
    const edge = edges[i]!;
    for (let j = i + 1; j < edges.length && edges[j]!.west <= edge.east; j++) {
      const other = edges[j]!;
      if (areNeighbours(edge.index, other.index, edges.length) || !doCross(edge, other)) continue;
      crossings++;
      first ??= crossingPoint(edge, other);
    }
  }
  return first === null ? null : { crossings, first: positionsOf([first])[0]! };
}

function differsFromPrevious(point: PlanePoint, index: number, points: readonly PlanePoint[]): boolean {
  const previous = points[index - 1];
  return previous === undefined || previous[0] !== point[0] || previous[1] !== point[1];
}

function edgeOf(index: number, from: PlanePoint, to: PlanePoint): Edge {
  return { index, from, to, west: Math.min(from[0], to[0]), east: Math.max(from[0], to[0]) };
}

function areNeighbours(a: number, b: number, count: number): boolean {
  const apart = Math.abs(a - b);
  return apart <= 1 || apart === count - 1;
}

function doCross(a: Edge, b: Edge): boolean {
  const lowest = Math.max(Math.min(a.from[1], a.to[1]), Math.min(b.from[1], b.to[1]));
  if (lowest > Math.min(Math.max(a.from[1], a.to[1]), Math.max(b.from[1], b.to[1]))) return false;
  const sides = [side(a, b.from), side(a, b.to), side(b, a.from), side(b, a.to)];
  return sides[0]! * sides[1]! <= 0 && sides[2]! * sides[3]! <= 0;
}

/** Positive to the left of the edge, negative to the right, 0 on its line. */
function side({ from, to }: Edge, point: PlanePoint): number {
  return Math.sign((to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0]));
}

function crossingPoint(a: Edge, b: Edge): PlanePoint {
  const alongA: PlanePoint = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const alongB: PlanePoint = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const turn = alongA[0] * alongB[1] - alongA[1] * alongB[0];
  if (turn === 0) return b.from;
  const share = ((b.from[0] - a.from[0]) * alongB[1] - (b.from[1] - a.from[1]) * alongB[0]) / turn;
  return [a.from[0] + share * alongA[0], a.from[1] + share * alongA[1]];
}
