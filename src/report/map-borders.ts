/** Borders of strata on the map of stations: light lines, cut at the edge of the sheet. */

import * as Plot from '@observablehq/plot';
import type { MapArea } from '../survey/map-area.ts';
import { colours } from './colours.ts';
import type { MapSheet } from './map-projection.ts';

interface Place {
  readonly eastKm: number;
  readonly northKm: number;
}

interface Step extends Place {
  /** One stroke of the pen. */
  readonly stroke: number;
}

/** Borders are public, other than stations: they are drawn as they are, at whatever detail the stations are shown. */
export function borderMarks(borders: readonly MapArea[], sheet: MapSheet): Plot.Markish[] {
  const steps: Step[] = [];
  for (const ring of borders.flatMap(({ parts }) => parts.flatMap((part) => [part.outer, ...part.holes]))) {
    const places = seen(ring.map(sheet.place), sheet);
    for (const [i, from] of places.entries()) {
      const piece = inFrame(from, places[(i + 1) % places.length]!, sheet);
      if (piece === null) continue;
      const last = steps.at(-1);
      const goesOn = last?.eastKm === piece[0].eastKm && last.northKm === piece[0].northKm;
      const stroke = goesOn ? last.stroke : (last?.stroke ?? 0) + 1;
      if (!goesOn) steps.push({ ...piece[0], stroke });
      steps.push({ ...piece[1], stroke });
    }
  }
  if (steps.length === 0) return [];
  const line = { x: 'eastKm', y: 'northKm', z: 'stroke', stroke: colours.rule, strokeWidth: 1 };
  return [Plot.line(steps, line)];
}

/** Corners nearer than half a unit of the drawing cannot be told apart: twenty thousand of them would only weigh. */
function seen(places: readonly Place[], sheet: MapSheet): readonly Place[] {
  const leastKm = 0.5 / sheet.unitsPerKm;
  const kept: Place[] = [];
  for (const place of places) {
    const last = kept.at(-1);
    if (last && Math.hypot(place.eastKm - last.eastKm, place.northKm - last.northKm) < leastKm) continue;
    kept.push(place);
  }
  return kept;
}

/** The part of a line within the sheet; null outside (Liang and Barsky 1984, from memory). */
function inFrame(from: Place, to: Place, sheet: MapSheet): readonly [Place, Place] | null {
  const east = to.eastKm - from.eastKm;
  const north = to.northKm - from.northKm;
  let [enters, leaves] = [0, 1];
  for (const [way, room] of [
    [-east, from.eastKm + sheet.halfEastKm],
    [east, sheet.halfEastKm - from.eastKm],
    [-north, from.northKm + sheet.halfNorthKm],
    [north, sheet.halfNorthKm - from.northKm],
  ] as const) {
    if (way === 0 && room < 0) return null;
    if (way < 0) enters = Math.max(enters, room / way);
    if (way > 0) leaves = Math.min(leaves, room / way);
  }
  if (enters >= leaves) return null;
  const at = (share: number) => ({
    eastKm: from.eastKm + share * east,
    northKm: from.northKm + share * north,
  });
  return [enters === 0 ? from : at(enters), leaves === 1 ? to : at(leaves)];
}
