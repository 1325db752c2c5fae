import { type MapFinding, type MapReading, mapFinding, type Position } from '../../survey/map-area.ts';
import { attributeOf, childrenOf, escapeXml, readXml, textOf, type XmlNode } from './xml-tree.ts';

export interface GpxPoint {
  readonly position: Position;
  readonly name: string | null;
  readonly description: string | null;
  /** ISO instant as the receiver wrote it, in UTC by the standard; null when it wrote none. */
  readonly time: string | null;
}

export interface GpxContent {
  readonly waypoints: readonly GpxPoint[];
  readonly routes: readonly { readonly name: string | null; readonly points: readonly GpxPoint[] }[];
  readonly tracks: readonly {
    readonly name: string | null;
    readonly segments: readonly (readonly GpxPoint[])[];
  }[];
}

/**
 * Waypoints, routes and tracks from a GPX text (1.0 and 1.1). GPX is always WGS84. A point that cannot be one is left out
 * with a finding that says which. Never throws on bad content.
 */
export function readGpx(text: string): MapReading<GpxContent> {
  const { root, fault } = readXml(text, 'GPX');
  if (root === null) return { value: { waypoints: [], routes: [], tracks: [] }, findings: [fault] };
  const findings: MapFinding[] = [];
  const top = childrenOf(root, 'gpx')[0];
  if (top === undefined)
    findings.push(mapFinding('map-not-understood', null, { format: 'GPX', detail: 'no element “gpx”' }));
  const gpx = top ?? {};
  const value: GpxContent = {
    waypoints: pointsOf(gpx, 'wpt', findings),
    routes: childrenOf(gpx, 'rte').map((route) => ({
      name: textOf(route, 'name'),
      points: pointsOf(route, 'rtept', findings),
    })),
    tracks: childrenOf(gpx, 'trk').map((track) => ({
      name: textOf(track, 'name'),
      segments: childrenOf(track, 'trkseg').map((segment) => pointsOf(segment, 'trkpt', findings)),
    })),
  };
  return { value, findings };
}

function pointsOf(node: XmlNode, kind: 'wpt' | 'rtept' | 'trkpt', findings: MapFinding[]): GpxPoint[] {
  return childrenOf(node, kind).flatMap((point, i) => {
    const latitudeDeg = degreesOf(attributeOf(point, 'lat'), 90);
    const longitudeDeg = degreesOf(attributeOf(point, 'lon'), 180);
    const name = textOf(point, 'name');
    if (latitudeDeg === null || longitudeDeg === null) {
      findings.push(mapFinding('position-not-understood', name, { kind, point: i + 1 }));
      return [];
    }
    const description = textOf(point, 'desc') ?? textOf(point, 'cmt');
    return [{ position: { latitudeDeg, longitudeDeg }, name, description, time: textOf(point, 'time') }];
  });
}

function degreesOf(text: string | null, limit: number): number | null {
  const degrees = text === null || text.trim() === '' ? Number.NaN : Number(text);
  return Math.abs(degrees) <= limit ? degrees : null;
}

/**
 * GPX 1.1 text for handheld receivers and chart plotters. Degrees with seven decimals (a centimetre), dot as decimal sign.
 * Names are written as given: shorten them first (`shortNames`).
 */
export function writeGpx(content: GpxContent): string {
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx version="1.1" creator="Slateline" xmlns="http://www.topografix.com/GPX/1/1">',
    ...content.waypoints.map((point) => pointElement('wpt', point)),
    ...content.routes.map(
      ({ name, points }) =>
        `<rte>${element('name', name)}${points.map((point) => pointElement('rtept', point)).join('')}</rte>`,
    ),
    ...content.tracks.map(
      ({ name, segments }) => `<trk>${element('name', name)}${segments.map(segmentElement).join('')}</trk>`,
    ),
    '</gpx>',
  ];
  return `${lines.join('\n')}\n`;
}

function segmentElement(points: readonly GpxPoint[]): string {
  return `<trkseg>${points.map((point) => pointElement('trkpt', point)).join('')}</trkseg>`;
}

/** The order of the elements is the schema's. */
function pointElement(kind: 'wpt' | 'rtept' | 'trkpt', point: GpxPoint): string {
  const { latitudeDeg, longitudeDeg } = point.position;
  const inside =
    element('time', point.time) + element('name', point.name) + element('desc', point.description);
  return `<${kind} lat="${latitudeDeg.toFixed(7)}" lon="${longitudeDeg.toFixed(7)}">${inside}</${kind}>`;
}

function element(name: string, text: string | null): string {
  return text === null ? '' : `<${name}>${escapeXml(text)}</${name}>`;
}
