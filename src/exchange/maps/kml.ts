import {
  type AreaPart,
  type MapFeature,
  type MapFinding,
  type MapReading,
  mapFinding,
  type Position,
  type Ring,
} from '../../survey/map-area.ts';
import { nameAmong, type Properties } from './map-name.ts';
import { attributeOf, childrenOf, ownText, readXml, textOf, type XmlNode } from './xml-tree.ts';

/**
 * Areas from a KML text (OGC KML 2.2 and 2.3): the polygons of all placemarks, with their extended data.
 * KML is always WGS84. Points, lines and models are left out with a finding. Never throws on bad content.
 */
export function readKml(
  text: string,
  options: { readonly nameProperty?: string } = {},
): MapReading<readonly MapFeature[]> {
  const { root, fault } = readXml(text, 'KML');
  if (root === null) return { value: [], findings: [fault] };
  const foreign = foreignRoot(root);
  if (foreign !== null) {
    const detail = `it is XML that begins with <${foreign}>`;
    return { value: [], findings: [mapFinding('map-not-understood', null, { format: 'KML', detail })] };
  }
  const findings: MapFinding[] = [];
  const left = new Map<string, number>();
  const features = placemarksIn(root).flatMap((placemark): MapFeature[] => {
    const properties = propertiesOf(placemark);
    const asked = options.nameProperty ?? null;
    const name =
      (asked === null ? null : nameAmong(properties, asked)) ??
      textOf(placemark, 'name') ??
      nameAmong(properties, null);
    const parts = polygonsIn(placemark, left).flatMap((polygon, p) => partOf(polygon, p + 1, name, findings));
    return parts.length === 0 ? [] : [{ name, area: { parts }, properties }];
  });
  for (const [kind, count] of left) findings.push(mapFinding('not-an-area', null, { kind, count }));
  if (features.length === 0) findings.push(mapFinding('no-area-in-map', null));
  return { value: features, findings };
}

/** The name of the outermost element where it is none of KML; null where it is. */
function foreignRoot(root: XmlNode): string | null {
  const names = Object.keys(root).filter((name) => !name.startsWith('@') && name !== '#text');
  const known = ['kml', 'Document', 'Folder', 'Placemark'];
  return names.some((name) => known.includes(name)) ? null : (names[0] ?? null);
}

function placemarksIn(node: XmlNode): XmlNode[] {
  const containers = ['kml', 'Document', 'Folder'].flatMap((name) => childrenOf(node, name));
  return [...childrenOf(node, 'Placemark'), ...containers.flatMap(placemarksIn)];
}

const otherKinds = {
  Point: 'point',
  LineString: 'line',
  LinearRing: 'line',
  Track: 'line',
  MultiTrack: 'line',
  Model: 'mixed',
} as const;

function polygonsIn(node: XmlNode, left: Map<string, number>): XmlNode[] {
  for (const [name, kind] of Object.entries(otherKinds)) {
    const count = childrenOf(node, name).length;
    if (count > 0) left.set(kind, (left.get(kind) ?? 0) + count);
  }
  const inner = childrenOf(node, 'MultiGeometry').flatMap((child) => polygonsIn(child, left));
  return [...childrenOf(node, 'Polygon'), ...inner];
}

function partOf(polygon: XmlNode, part: number, name: string | null, findings: MapFinding[]): AreaPart[] {
  const rings = ['outerBoundaryIs', 'innerBoundaryIs']
    .flatMap((boundary) => childrenOf(polygon, boundary).flatMap((child) => childrenOf(child, 'LinearRing')))
    .map((ring, r) => positionsOf(textOf(ring, 'coordinates') ?? '', { part, ring: r }, name, findings));
  if (childrenOf(polygon, 'outerBoundaryIs').length === 0 || rings.some((ring) => ring === null)) return [];
  const [outer, ...holes] = rings as Ring[];
  return outer === undefined ? [] : [{ outer, holes }];
}

/** "177.4,-17.75,0 177.5,-17.75,0": longitude, latitude, height; some writers put spaces after the commas. */
function positionsOf(
  text: string,
  place: { readonly part: number; readonly ring: number },
  name: string | null,
  findings: MapFinding[],
): Ring | null {
  const positions: Position[] = [];
  for (const tuple of text
    .replace(/\s*,\s*/g, ',')
    .split(/\s+/)
    .filter(Boolean)) {
    const [longitudeDeg, latitudeDeg] = tuple
      .split(',')
      .map((part) => (part === '' ? Number.NaN : Number(part)));
    if (!Number.isFinite(longitudeDeg) || !Number.isFinite(latitudeDeg)) {
      findings.push(mapFinding('position-not-understood', name, { ...place, point: positions.length + 1 }));
      return null;
    }
    positions.push({ latitudeDeg: latitudeDeg!, longitudeDeg: longitudeDeg! });
  }
  return positions;
}

function propertiesOf(placemark: XmlNode): Properties {
  const extended = childrenOf(placemark, 'ExtendedData');
  const data = extended
    .flatMap((node) => childrenOf(node, 'Data'))
    .map((node) => [attributeOf(node, 'name'), textOf(node, 'value')]);
  const simple = extended
    .flatMap((node) => childrenOf(node, 'SchemaData'))
    .flatMap((node) => childrenOf(node, 'SimpleData'))
    .map((node) => [attributeOf(node, 'name'), ownText(node)]);
  return Object.fromEntries([...data, ...simple].filter(([key]) => key !== null)) as Properties;
}
