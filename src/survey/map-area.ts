/**
 * Areas on the map as plain values, the same whether they came from GeoJSON, KML or GeoPackage,
 * and what can be found wrong with them.
 *
 * Positions are WGS84. A ring stands as the file wrote it: map files repeat the first position at the end,
 * and the checks say when one does not.
 */

import type { Parameters, Severity } from './message.ts';

/** A place on the earth, north and east positive. */
export interface Position {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

export type Ring = readonly Position[];

/** One piece of ground with its holes. */
export interface AreaPart {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

/** One stratum, zone or mask: one piece or several. */
export interface MapArea {
  readonly parts: readonly AreaPart[];
}

/** An area as a map file holds it, with its name and what else stood beside it. */
export interface MapFeature {
  readonly name: string | null;
  readonly area: MapArea;
  readonly properties: Readonly<Record<string, string | number | boolean | null>>;
}

/**
 * Every finding about a map, with its usual severity. The parameters are in the comments.
 * The same form as a problem, so that the catalogue can take them over.
 */
export const mapFindingSeverities = {
  // reading
  'map-not-understood': 'stop', // {format, detail}
  'map-too-large': 'stop', // {letters, limit}
  'map-with-entities': 'stop', // {}: declares entities, which could read other files or swell without end
  'other-datum': 'stop', // {datum}
  'map-in-metres': 'stop', // {x, y}: the first position that can be no degrees
  'no-area-in-map': 'stop', // {}
  'not-an-area': 'explain', // {kind: 'point' | 'line' | 'mixed' | 'curve' | 'empty', count}
  'position-not-understood': 'stop', // {part, ring, point}
  // one area
  'open-ring': 'explain', // {part, ring, gapM}
  'too-few-points': 'stop', // {part, ring, points}
  'repeated-points': 'note', // {part, ring, count, first}
  'self-crossing': 'stop', // {part, ring, crossings, latitudeDeg, longitudeDeg}
  'hole-outside': 'stop', // {part, ring, points}
  'hole-overlap': 'stop', // {part, ring, areaHa}: outside its border, or in an earlier hole
  'pieces-overlap': 'stop', // {first, second, pairs, areaHa}
  'latitude-impossible': 'stop', // {part, ring, point, latitudeDeg, longitudeDeg}
  'swapped-coordinates': 'stop', // {points, awayKm, exchangedKm}: all of an area, or {part, ring, point}
  'far-from-neighbours': 'explain', // {awayKm}
  sliver: 'note', // {part, areaHa, widthM}
  'area-typed-differs': 'explain', // {typedHa, mapHa, factor, unit: 'km2' | 'm2' | 'acre' | 'nm2' | 'unknown'}
  // areas together
  overlap: 'stop', // {other, areaHa, errorHa, widthM}
  'overlap-sliver': 'note', // {other, areaHa, errorHa, widthM}: borders drawn twice
  'gap-sliver': 'note', // {areaHa, widthM, latitudeDeg, longitudeDeg}
  'name-repeated': 'stop', // {name}
  'area-without-name': 'stop', // {count}
} as const satisfies Record<string, Severity>;

export type MapFindingCode = keyof typeof mapFindingSeverities;

export interface MapFinding {
  readonly code: MapFindingCode;
  readonly severity: Severity;
  /** The name of the area, or the file where no area is meant; null when neither is known. */
  readonly where: string | null;
  readonly parameters: Parameters;
}

export function mapFinding(
  code: MapFindingCode,
  where: string | null,
  parameters: Parameters = {},
): MapFinding {
  return { code, severity: mapFindingSeverities[code], where, parameters };
}

/** What a reader of maps gives back; it never throws on bad content. */
export interface MapReading<Value> {
  readonly value: Value;
  readonly findings: readonly MapFinding[];
}
