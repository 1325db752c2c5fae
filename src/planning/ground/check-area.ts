import { type AreaPart, type MapArea, type MapFinding, mapFinding } from '../../survey/map-area.ts';
import { meanWidthM } from './area-sets.ts';
import { areaHaOf } from './area-size.ts';
import { checkCoordinateOrder } from './coordinate-order.ts';
import { holesOverlap, piecesOverlap } from './ground-twice.ts';
import { groundIndex } from './inside.ts';
import { openRing } from './plane.ts';
import { checkRing } from './ring-checks.ts';
import { checkTypedArea } from './typed-area.ts';

/** A piece thinner than this on average is a slip of the pen, not a place for a belt; our own choice. */
export const sliverWidthM = 5;

/**
 * Everything that can be wrong with one area by itself, as values with numbers. Coordinates that cannot be
 * come first and alone: nothing can be measured on them.
 */
export function checkArea(stratum: {
  readonly name: string | null;
  readonly area: MapArea;
  readonly typedAreaHa: number | null;
  /** Whether its pieces are joined before they are used, as those of a mask are; then they may lie over each other. */
  readonly isJoined?: boolean;
}): MapFinding[] {
  const { name, area, typedAreaHa, isJoined = false } = stratum;
  if (area.parts.length === 0) return [mapFinding('no-area-in-map', name)];
  const order = checkCoordinateOrder(area, name);
  if (order.some((finding) => finding.severity === 'stop')) return order;
  const rings = area.parts.flatMap((part, p) =>
    [part.outer, ...part.holes].flatMap((ring, r) => checkRing(ring, { name, part: p + 1, ring: r })),
  );
  if (rings.some((finding) => finding.severity === 'stop')) return [...order, ...rings];
  const holes = area.parts.flatMap((part, p) => checkHoles(part, p + 1, name));
  if (holes.length > 0) return [...order, ...rings, ...holes];
  const twice = [
    ...area.parts.flatMap((part, p) => holesOverlap(part, p + 1, name)),
    ...(isJoined ? [] : piecesOverlap(area, name)),
  ];
  if (twice.length > 0) return [...order, ...rings, ...twice];
  const slivers = area.parts.flatMap((part, p) => checkThinness(part, p + 1, name));
  const typed =
    typedAreaHa === null ? [] : checkTypedArea({ name, typedHa: typedAreaHa, mapHa: areaHaOf(area) });
  return [...order, ...rings, ...slivers, ...typed];
}

function checkHoles(part: AreaPart, number: number, name: string | null): MapFinding[] {
  const index = part.holes.length === 0 ? null : groundIndex({ parts: [{ outer: part.outer, holes: [] }] });
  if (index === null) return [];
  return part.holes.flatMap((hole, r) => {
    const points = openRing(hole).filter((position) => !index.contains(position)).length;
    // A hole may touch the border: only one that lies mostly outside is certainly misplaced.
    if (points * 2 <= hole.length) return [];
    return [mapFinding('hole-outside', name, { part: number, ring: r + 1, points })];
  });
}

function checkThinness(part: AreaPart, number: number, name: string | null): MapFinding[] {
  const piece: MapArea = { parts: [part] };
  const widthM = meanWidthM(piece);
  if (widthM >= sliverWidthM) return [];
  return [mapFinding('sliver', name, { part: number, areaHa: areaHaOf(piece), widthM })];
}
