/** Ground that one area counts twice, or takes off without having it: its hectares would be wrong, and nothing else would show it. */

import {
  type AreaPart,
  type MapArea,
  type MapFinding,
  mapFinding,
  type Ring,
} from '../../survey/map-area.ts';
import { commonGround, groundWithout, joinedGround } from './area-sets.ts';
import { type AreaSize, areaHaOf, areaSize } from './area-size.ts';
import { doBoxesMeet, groundIndex } from './inside.ts';
import { openRing } from './plane.ts';

/** Less than this share of the area is the rounding of borders that touch; our own choice. */
const leastShare = 0.001;

/**
 * Pieces that lie over each other, in hectares counted twice.
 *
 * Masks are joined before they are used: do not ask this of them. Cost: only pieces whose frames meet are cut.
 */
export function piecesOverlap(area: MapArea, name: string | null): MapFinding[] {
  const pieces = area.parts.map((part): MapArea => ({ parts: [part] }));
  const overlaps = meetingPairs(pieces)
    .map(([first, second]) => {
      const areaHa = areaHaOf(commonGround(pieces[first]!, pieces[second]!));
      return { first: first + 1, second: second + 1, areaHa };
    })
    .filter((one) => one.areaHa > 0);
  const areaHa = overlaps.reduce((sum, one) => sum + one.areaHa, 0);
  if (areaHa <= leastShare * areaHaOf(area)) return [];
  const { first, second } = overlaps.reduce((worst, one) => (one.areaHa > worst.areaHa ? one : worst));
  return [mapFinding('pieces-overlap', name, { first, second, pairs: overlaps.length, areaHa })];
}

/** The size of an area whose pieces may lie over each other, as those of a mask do: each place counts once. */
export function joinedSize(area: MapArea): AreaSize {
  const pieces = area.parts.map((part): MapArea => ({ parts: [part] }));
  return areaSize(meetingPairs(pieces).length === 0 ? area : joinedGround([area]));
}

/** Ground of a hole that lies outside its border, or in an earlier hole: it is taken off though it was never there. */
export function holesOverlap(part: AreaPart, number: number, name: string | null): MapFinding[] {
  const holes = part.holes.map((hole): MapArea => ({ parts: [{ outer: hole, holes: [] }] }));
  const border: MapArea = { parts: [{ outer: part.outer, holes: [] }] };
  const pairs = meetingPairs(holes);
  const wholeHa = areaHaOf(border);
  return holes.flatMap((hole, i) => {
    const earlier = pairs.filter(([, later]) => later === i).map(([first]) => holes[first]!);
    const sharedHa = earlier.reduce((sum, other) => sum + areaHaOf(commonGround(hole, other)), 0);
    const outsideHa = mayCross(part.outer, part.holes[i]!) ? areaHaOf(groundWithout(hole, [border])) : 0;
    const areaHa = sharedHa + outsideHa;
    if (areaHa <= leastShare * wholeHa) return [];
    return [mapFinding('hole-overlap', name, { part: number, ring: i + 1, areaHa })];
  });
}

/** Whether a corner of one lies where it should not: cheap, and asked before anything is cut. */
function mayCross(outer: Ring, hole: Ring): boolean {
  const indexOf = (ring: Ring) => groundIndex({ parts: [{ outer: ring, holes: [] }] });
  const [border, cut] = [indexOf(outer), indexOf(hole)];
  if (border === null || cut === null) return false;
  return (
    openRing(hole).some((one) => !border.contains(one)) || openRing(outer).some((one) => cut.contains(one))
  );
}

function meetingPairs(areas: readonly MapArea[]): (readonly [number, number])[] {
  const boxes = areas.map((area) => groundIndex(area)?.box ?? null);
  return boxes.flatMap((box, i) =>
    boxes.slice(i + 1).flatMap((other, k) => {
      return box && other && doBoxesMeet(box, other) ? [[i, i + 1 + k] as const] : [];
    }),
  );
}
