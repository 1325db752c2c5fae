/** The codes of the stations beside their signs on the map. */

import * as Plot from '@observablehq/plot';
import type { MapSheet } from './map-projection.ts';
import { textWidth } from './svg.ts';

/** A station on the sheet, by its code. */
export interface CodedSpot {
  readonly code: string;
  readonly eastKm: number;
  readonly northKm: number;
}

/** Station codes where there is room for them; a code that would cover a mark or another code is not written. */
export function codeMarks(
  spots: readonly CodedSpot[],
  { unitsPerKm, halfEastKm, halfNorthKm }: MapSheet,
): Plot.Markish {
  const placed = spots.map((spot) => ({
    code: spot.code,
    x: (spot.eastKm + halfEastKm) * unitsPerKm,
    y: (halfNorthKm - spot.northKm) * unitsPerKm,
  }));
  const taken: Box[] = placed.map(({ x, y }) => ({ left: x - 8, right: x + 8, top: y - 8, bottom: y + 8 }));
  const codes = placed.flatMap(({ code, x, y }) => {
    const width = textWidth(code, 11) + 2;
    const places = [
      [x + 10, y - 6],
      [x - 10 - width, y - 6],
      [x - width / 2, y - 22],
      [x - width / 2, y + 10],
    ] as const;
    for (const [left, top] of places) {
      const box: Box = { left, right: left + width, top, bottom: top + 12 };
      const edge = { right: halfEastKm * 2 * unitsPerKm - 2, bottom: halfNorthKm * 2 * unitsPerKm - 2 };
      if (left < 2 || box.right > edge.right || top < 2 || box.bottom > edge.bottom) continue;
      if (taken.some((other) => meets(box, other))) continue;
      taken.push(box);
      const eastKm = (left + width / 2) / unitsPerKm - halfEastKm;
      return [{ code, eastKm, northKm: halfNorthKm - (top + 6) / unitsPerKm }];
    }
    return [];
  });
  return Plot.text(codes, { x: 'eastKm', y: 'northKm', text: 'code', fontSize: 11 });
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function meets(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
