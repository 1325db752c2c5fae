/** Areas from a map file, told by what is in it: a name ending is only a habit. */

import { resolve } from 'node:path';
import { readGeoJson } from '../exchange/maps/geojson.ts';
import { readKml } from '../exchange/maps/kml.ts';
import { decodedText } from '../exchange/text-encoding.ts';
import { readGeopackage } from '../store/geopackage.ts';
import { type MapFeature, type MapReading, mapFinding } from '../survey/map-area.ts';
import { readOneFile } from './files.ts';

interface MapFileRead extends MapReading<readonly MapFeature[]> {
  /** Without its folder. */
  readonly name: string;
}

export function readMapFile(path: string, cwd: string, nameField: string | null): MapFileRead {
  const { name, bytes } = readOneFile(path, cwd);
  const options = nameField === null ? {} : { nameProperty: nameField };
  const begins = (text: string) => latin(bytes.subarray(0, text.length)) === text;
  if (begins('SQLite format 3\u0000')) return { name, ...readGeopackage(resolve(cwd, path), options) };
  if (begins('PK')) return { name, ...other('KML', 'it is packed: unpack the KMZ or ZIP first') };
  if (begins('\u0000\u0000\u0027\u000a')) return { name, ...other('GeoJSON', 'it is a shapefile') };
  const text = decodedText(bytes);
  const first = text.trimStart().charAt(0);
  if (first === '<') return { name, ...readKml(text, options) };
  return { name, ...readGeoJson(text, options) };
}

function latin(bytes: Uint8Array): string {
  return String.fromCharCode(...bytes);
}

function other(format: string, detail: string): MapReading<readonly MapFeature[]> {
  return { value: [], findings: [mapFinding('map-not-understood', null, { format, detail })] };
}
