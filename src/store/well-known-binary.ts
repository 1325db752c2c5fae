/**
 * Areas as bytes: well-known binary (OGC 06-103r4) inside the header GeoPackage puts before it (OGC 12-128r18, 2.1.3).
 * Longitude first. Heights and measures are skipped.
 */

import type { AreaPart, MapArea, Position, Ring } from '../survey/map-area.ts';

/** Either the area, or the kind of geometry that is none; 'broken' for bytes that make no sense. */
export type BytesReading = MapArea | 'point' | 'line' | 'mixed' | 'curve' | 'empty' | 'broken';

export function areaOfBytes(bytes: Uint8Array): BytesReading {
  try {
    const start = startOfGeometry(bytes);
    if (start === null) return 'broken';
    if (start === 'empty') return 'empty';
    const cursor = { view: new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength), at: start };
    return readGeometry(cursor);
  } catch (error) {
    // Counts that point past the end.
    if (error instanceof RangeError) return 'broken';
    throw error;
  }
}

interface Cursor {
  readonly view: DataView;
  at: number;
}

const envelopeBytes = [0, 32, 48, 48, 64];

/** "GP", version, flags, SRS, envelope. */
function startOfGeometry(bytes: Uint8Array): number | 'empty' | null {
  if (bytes.length < 8 || bytes[0] !== 0x47 || bytes[1] !== 0x50) return null;
  const flags = bytes[3]!;
  if ((flags & 0x10) !== 0) return 'empty';
  const envelope = envelopeBytes[(flags >> 1) & 7];
  return envelope === undefined ? null : 8 + envelope;
}

interface GeometryHead {
  readonly little: boolean;
  /** 1 point, 2 line, 3 polygon, 4 to 6 several of them, 7 collection, 8 and more curves and surfaces. */
  readonly kind: number;
  readonly numbersPerPoint: number;
}

function readHead(cursor: Cursor): GeometryHead {
  const little = cursor.view.getUint8(cursor.at) === 1;
  const code = cursor.view.getUint32(cursor.at + 1, little);
  cursor.at += 5;
  // ISO adds thousands for heights and measures; the older extended form sets the highest bits.
  const plain = code & 0x0fffffff;
  if ((code & 0x20000000) !== 0) cursor.at += 4;
  const iso = Math.floor(plain / 1000);
  const hasHeight = iso === 1 || iso === 3 || (code & 0x80000000) !== 0;
  const hasMeasure = iso === 2 || iso === 3 || (code & 0x40000000) !== 0;
  return { little, kind: plain % 1000, numbersPerPoint: 2 + Number(hasHeight) + Number(hasMeasure) };
}

function readGeometry(cursor: Cursor): BytesReading {
  const head = readHead(cursor);
  if (head.kind === 3) return orEmpty([readPolygon(cursor, head)]);
  if (head.kind === 6) {
    const count = readCount(cursor, head.little);
    const parts: (AreaPart | null)[] = [];
    for (let i = 0; i < count; i++) parts.push(readPolygon(cursor, readHead(cursor)));
    return orEmpty(parts);
  }
  if (head.kind === 1 || head.kind === 4) return 'point';
  if (head.kind === 2 || head.kind === 5) return 'line';
  if (head.kind === 7) return 'mixed';
  return head.kind >= 8 && head.kind <= 17 ? 'curve' : 'broken';
}

function orEmpty(parts: readonly (AreaPart | null)[]): MapArea | 'empty' {
  const filled = parts.filter((part) => part !== null);
  return filled.length === 0 ? 'empty' : { parts: filled };
}

function readPolygon(cursor: Cursor, head: GeometryHead): AreaPart | null {
  const count = readCount(cursor, head.little);
  const rings: Ring[] = [];
  for (let i = 0; i < count; i++) rings.push(readRing(cursor, head));
  const [outer, ...holes] = rings;
  return outer === undefined ? null : { outer, holes };
}

function readRing(cursor: Cursor, { little, numbersPerPoint }: GeometryHead): Ring {
  const count = readCount(cursor, little);
  const ring: Position[] = [];
  for (let i = 0; i < count; i++) {
    const longitudeDeg = cursor.view.getFloat64(cursor.at, little);
    const latitudeDeg = cursor.view.getFloat64(cursor.at + 8, little);
    cursor.at += 8 * numbersPerPoint;
    ring.push({ latitudeDeg, longitudeDeg });
  }
  return ring;
}

function readCount(cursor: Cursor, little: boolean): number {
  const count = cursor.view.getUint32(cursor.at, little);
  cursor.at += 4;
  return count;
}

/** GeoPackage bytes of an area on WGS84: little-endian, without an envelope, always several polygons. */
export function bytesOfArea(area: MapArea): Uint8Array {
  const rings = area.parts.map((part) => [part.outer, ...part.holes]);
  const points = rings.flat().reduce((sum, ring) => sum + ring.length, 0);
  const size = 8 + 9 + rings.length * 9 + rings.flat().length * 4 + points * 16;
  const view = new DataView(new ArrayBuffer(size));
  view.setUint8(0, 0x47);
  view.setUint8(1, 0x50);
  // Flags: little-endian; empty when there is no part.
  view.setUint8(3, rings.length === 0 ? 0x11 : 0x01);
  view.setInt32(4, 4326, true);
  let at = writeHead(view, 8, 6, rings.length);
  for (const part of rings) {
    at = writeHead(view, at, 3, part.length);
    for (const ring of part) at = writeRing(view, at, ring);
  }
  return new Uint8Array(view.buffer);
}

function writeHead(view: DataView, at: number, kind: number, count: number): number {
  view.setUint8(at, 1);
  view.setUint32(at + 1, kind, true);
  view.setUint32(at + 5, count, true);
  return at + 9;
}

function writeRing(view: DataView, start: number, ring: Ring): number {
  view.setUint32(start, ring.length, true);
  let at = start + 4;
  for (const { longitudeDeg, latitudeDeg } of ring) {
    view.setFloat64(at, longitudeDeg, true);
    view.setFloat64(at + 8, latitudeDeg, true);
    at += 16;
  }
  return at;
}
