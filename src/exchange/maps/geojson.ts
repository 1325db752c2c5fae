import {
  type AreaPart,
  type MapFeature,
  type MapFinding,
  type MapReading,
  mapFinding,
  type Position,
  type Ring,
} from '../../survey/map-area.ts';
import { isNumber, listOf, member } from './json-node.ts';
import { maxMapLetters } from './map-limits.ts';
import { nameAmong, type Properties } from './map-name.ts';

interface ReadOptions {
  /** The property that holds the name; the usual ones are tried when it is not given. */
  readonly nameProperty?: string;
}

/**
 * Areas from a GeoJSON text (RFC 7946): Polygon and MultiPolygon, alone, as features or in collections.
 *
 * Points and lines are left out with a finding. A file that names another datum than WGS84 (the old `crs` member) is
 * refused: its degrees would put stations hundreds of metres away. Never throws on bad content.
 */
export function readGeoJson(text: string, options: ReadOptions = {}): MapReading<readonly MapFeature[]> {
  if (text.length > maxMapLetters) {
    return refused(mapFinding('map-too-large', null, { letters: text.length, limit: maxMapLetters }));
  }
  let root: unknown;
  try {
    root = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    return refused(mapFinding('map-not-understood', null, { format: 'GeoJSON', detail: String(error) }));
  }
  const datum = otherDatum(root);
  if (datum !== null) return refused(mapFinding('other-datum', null, { datum }));
  if (member(root, 'type') === 'Topology') {
    const detail = 'it is TopoJSON: export it as GeoJSON';
    return refused(mapFinding('map-not-understood', null, { format: 'GeoJSON', detail }));
  }
  const reader: Reader = { asked: options.nameProperty ?? null, features: [], findings: [], left: new Map() };
  readNode(root, reader);
  const metres = inMetres(reader.features);
  if (metres !== null) return refused(metres);
  for (const [kind, count] of reader.left)
    reader.findings.push(mapFinding('not-an-area', null, { kind, count }));
  if (reader.features.length === 0) reader.findings.push(mapFinding('no-area-in-map', null));
  return { value: reader.features, findings: reader.findings };
}

/** One sentence for the file where hardly any position can be degrees, and not one for each of its corners. */
function inMetres(features: readonly MapFeature[]): MapFinding | null {
  const positions = features.flatMap(({ area }) => area.parts.flatMap(({ outer }) => outer));
  const beyond = positions.filter(
    ({ latitudeDeg, longitudeDeg }) => Math.abs(latitudeDeg) > 400 || Math.abs(longitudeDeg) > 400,
  );
  const [first] = beyond;
  if (first === undefined || beyond.length < positions.length / 2) return null;
  return mapFinding('map-in-metres', null, { x: first.longitudeDeg, y: first.latitudeDeg });
}

interface Reader {
  readonly asked: string | null;
  readonly features: MapFeature[];
  readonly findings: MapFinding[];
  /** What was left out, by kind. */
  readonly left: Map<string, number>;
}

function refused(finding: MapFinding): MapReading<readonly MapFeature[]> {
  return { value: [], findings: [finding] };
}

/** Names that mean WGS84 with longitude first. */
const usualDatum = /CRS84$|^(urn:ogc:def:crs:)?EPSG:+(\d*:)?4326$/i;

function otherDatum(root: unknown): string | null {
  const crs = member(root, 'crs');
  if (crs === null || crs === undefined) return null;
  const name = member(member(crs, 'properties'), 'name');
  if (typeof name !== 'string') return 'unknown';
  return usualDatum.test(name) ? null : name;
}

function readNode(node: unknown, reader: Reader): void {
  const type = member(node, 'type');
  if (type === 'FeatureCollection') {
    for (const feature of listOf(member(node, 'features'))) readFeature(feature, reader);
  } else if (type === 'Feature') {
    readFeature(node, reader);
  } else if (typeof type === 'string') {
    readGeometryOf(node, {}, null, reader);
  } else {
    const detail = 'no member “type”';
    reader.findings.push(mapFinding('map-not-understood', null, { format: 'GeoJSON', detail }));
  }
}

function readFeature(feature: unknown, reader: Reader): void {
  const properties = plainProperties(member(feature, 'properties'));
  const id = member(feature, 'id');
  const name =
    nameAmong(properties, reader.asked) ??
    (typeof id === 'string' || typeof id === 'number' ? `${id}` : null);
  readGeometryOf(member(feature, 'geometry'), properties, name, reader);
}

function readGeometryOf(
  geometry: unknown,
  properties: Properties,
  name: string | null,
  reader: Reader,
): void {
  const parts = partsOf(geometry, name, reader, 0);
  if (parts.length > 0) reader.features.push({ name, area: { parts }, properties });
}

const deepestCollection = 20;

function partsOf(geometry: unknown, name: string | null, reader: Reader, depth: number): AreaPart[] {
  const coordinates = member(geometry, 'coordinates');
  switch (member(geometry, 'type')) {
    case 'Polygon':
      return partOf(coordinates, 1, name, reader);
    case 'MultiPolygon':
      return listOf(coordinates).flatMap((part, p) => partOf(part, p + 1, name, reader));
    case 'GeometryCollection':
      if (depth > deepestCollection) return leaveOut('mixed', reader);
      return listOf(member(geometry, 'geometries')).flatMap((one) => partsOf(one, name, reader, depth + 1));
    case 'Point':
    case 'MultiPoint':
      return leaveOut('point', reader);
    case 'LineString':
    case 'MultiLineString':
      return leaveOut('line', reader);
    default:
      return leaveOut('empty', reader);
  }
}

function leaveOut(kind: string, reader: Reader): [] {
  reader.left.set(kind, (reader.left.get(kind) ?? 0) + 1);
  return [];
}

function partOf(coordinates: unknown, part: number, name: string | null, reader: Reader): AreaPart[] {
  const rings = listOf(coordinates).map((ring, r) => ringOf(ring, { part, ring: r }, name, reader));
  if (rings.length === 0) return leaveOut('empty', reader);
  if (rings.some((ring) => ring === null)) return [];
  const [outer, ...holes] = rings as Ring[];
  return [{ outer: outer!, holes }];
}

function ringOf(
  ring: unknown,
  place: { readonly part: number; readonly ring: number },
  name: string | null,
  reader: Reader,
): Ring | null {
  const positions: Position[] = [];
  for (const [i, pair] of listOf(ring).entries()) {
    const [longitudeDeg, latitudeDeg] = listOf(pair);
    if (!isNumber(longitudeDeg) || !isNumber(latitudeDeg)) {
      reader.findings.push(mapFinding('position-not-understood', name, { ...place, point: i + 1 }));
      return null;
    }
    positions.push({ latitudeDeg, longitudeDeg });
  }
  return positions;
}

/** Plain values only: nested ones mean nothing to a survey. */
function plainProperties(node: unknown): Properties {
  if (typeof node !== 'object' || node === null) return {};
  const kept = Object.entries(node).filter(
    ([, value]) => value === null || ['string', 'number', 'boolean'].includes(typeof value),
  );
  return Object.fromEntries(kept) as Properties;
}
