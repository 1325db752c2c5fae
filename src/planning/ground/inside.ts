import type { MapArea, Position } from '../../survey/map-area.ts';
import { middleLongitudeDeg, type PlanePart, type PlaneRing, planeParts, shorterWayDeg } from './plane.ts';

/** The frame of a map: `eastDeg` is greater than `westDeg` and passes 180 where the date line runs through. */
export interface BoundingBox {
  readonly southDeg: number;
  readonly northDeg: number;
  readonly westDeg: number;
  readonly eastDeg: number;
}

/** An area made ready for many questions, for a draw of stations and for the laying of belts. */
export interface GroundIndex {
  readonly box: BoundingBox;
  /** Whether a position lies on this ground. Any turn of the longitude will do. */
  readonly contains: (position: Position) => boolean;
}

/**
 * Makes an area answer "is this position inside?" quickly, whatever the number of its points.
 *
 * Edges are straight in degrees; a position in a hole is outside; one exactly on the border falls to one side by
 * the half-open rule, so that two areas that share a border never both hold it. Method: even-odd crossing count
 * (textbook), the edges sorted into bands of latitude. Null for an area without positions.
 */
export function groundIndex(area: MapArea): GroundIndex | null {
  const middleDeg = middleLongitudeDeg([area]);
  const parts = planeParts(area, middleDeg).filter((part) => (part[0]?.length ?? 0) > 0);
  if (parts.length === 0) return null;
  const indexed = parts.map(partIndex);
  return {
    box: boxAround(parts.map((part) => boxOf(part[0]!))),
    contains(position) {
      const x = middleDeg + shorterWayDeg(position.longitudeDeg - middleDeg);
      return indexed.some((part) => isInPart(part, x, position.latitudeDeg));
    },
  };
}

/** Whether two frames share ground, the date line being a meridian like any other. */
export function doBoxesMeet(a: BoundingBox, b: BoundingBox): boolean {
  const eastward = shorterWayDeg((a.westDeg + a.eastDeg - b.westDeg - b.eastDeg) / 2);
  const widthsDeg = a.eastDeg - a.westDeg + (b.eastDeg - b.westDeg);
  return a.southDeg <= b.northDeg && b.southDeg <= a.northDeg && Math.abs(eastward) * 2 <= widthsDeg;
}

interface PartIndex {
  readonly box: BoundingBox;
  readonly bandsPerDegree: number;
  /** Each edge as four numbers: from x, y to x, y. */
  readonly bands: readonly (readonly number[])[];
}

const edgesPerBand = 4;

function partIndex(part: PlanePart): PartIndex {
  const box = boxOf(part[0]!);
  const edges = part.reduce((sum, ring) => sum + ring.length, 0);
  const count = Math.max(1, Math.ceil(edges / edgesPerBand));
  const heightDeg = box.northDeg - box.southDeg;
  const bandsPerDegree = heightDeg > 0 ? count / heightDeg : 0;
  const bands: number[][] = Array.from({ length: count }, () => []);
  const bandOf = (y: number) => bandAt(y, box.southDeg, bandsPerDegree, count);
  for (const ring of part) {
    for (let i = 0; i < ring.length; i++) {
      const [fromX, fromY] = ring[i]!;
      const [toX, toY] = ring[(i + 1) % ring.length]!;
      if (fromY === toY) continue;
      const last = bandOf(Math.max(fromY, toY));
      for (let band = bandOf(Math.min(fromY, toY)); band <= last; band++) {
        bands[band]!.push(fromX, fromY, toX, toY);
      }
    }
  }
  return { box, bandsPerDegree, bands };
}

function isInPart({ box, bandsPerDegree, bands }: PartIndex, x: number, y: number): boolean {
  if (y < box.southDeg || y > box.northDeg || x < box.westDeg || x > box.eastDeg) return false;
  const edges = bands[bandAt(y, box.southDeg, bandsPerDegree, bands.length)]!;
  let inside = false;
  for (let i = 0; i < edges.length; i += 4) {
    const fromY = edges[i + 1]!;
    const toY = edges[i + 3]!;
    if (fromY > y === toY > y) continue;
    const fromX = edges[i]!;
    if (x < fromX + ((y - fromY) / (toY - fromY)) * (edges[i + 2]! - fromX)) inside = !inside;
  }
  return inside;
}

function bandAt(y: number, southDeg: number, bandsPerDegree: number, count: number): number {
  return Math.max(0, Math.min(count - 1, Math.floor((y - southDeg) * bandsPerDegree)));
}

function boxOf(ring: PlaneRing): BoundingBox {
  let box = {
    southDeg: 90,
    northDeg: -90,
    westDeg: Number.POSITIVE_INFINITY,
    eastDeg: Number.NEGATIVE_INFINITY,
  };
  for (const [x, y] of ring) {
    box = {
      southDeg: Math.min(box.southDeg, y),
      northDeg: Math.max(box.northDeg, y),
      westDeg: Math.min(box.westDeg, x),
      eastDeg: Math.max(box.eastDeg, x),
    };
  }
  return box;
}

function boxAround(boxes: readonly BoundingBox[]): BoundingBox {
  return {
    southDeg: Math.min(...boxes.map((box) => box.southDeg)),
    northDeg: Math.max(...boxes.map((box) => box.northDeg)),
    westDeg: Math.min(...boxes.map((box) => box.westDeg)),
    eastDeg: Math.max(...boxes.map((box) => box.eastDeg)),
  };
}
