/** Areas from GeoPackage files (OGC 12-128r18): SQLite, therefore here, in plain SQL. */

import { DatabaseSync } from 'node:sqlite';
import { type MapFeature, type MapFinding, type MapReading, mapFinding } from '../survey/map-area.ts';
import { areaOfBytes } from './well-known-binary.ts';

interface Layer {
  readonly table: string;
  readonly column: string;
  readonly organization: string | null;
  readonly organizationCode: number | null;
  readonly datum: string | null;
}

const maxFeatures = 100_000;
const usualNames = ['name', 'stratum', 'title', 'label'];

/**
 * Areas of all feature tables of a GeoPackage file, or of one `layer`.
 *
 * Only WGS84 (EPSG 4326) is read: a layer on another datum or projection is refused by name. Points and lines are left
 * out with a finding. The file is opened for reading only and nothing in it is run. Never throws on bad content.
 */
export function readGeopackage(
  path: string,
  options: { readonly layer?: string; readonly nameProperty?: string } = {},
): MapReading<readonly MapFeature[]> {
  let sqlite: DatabaseSync | null = null;
  try {
    sqlite = new DatabaseSync(path, { readOnly: true });
    // Views and triggers of a stranger's file may not call functions with effects.
    sqlite.exec('PRAGMA trusted_schema = OFF');
    return readLayers(sqlite, options);
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return {
      value: [],
      findings: [mapFinding('map-not-understood', null, { format: 'GeoPackage', detail })],
    };
  } finally {
    sqlite?.close();
  }
}

function readLayers(
  sqlite: DatabaseSync,
  options: { readonly layer?: string; readonly nameProperty?: string },
): MapReading<readonly MapFeature[]> {
  const features: MapFeature[] = [];
  const findings: MapFinding[] = [];
  const left = new Map<string, number>();
  const layers = layersOf(sqlite).filter(
    ({ table }) => options.layer === undefined || options.layer === table,
  );
  for (const layer of layers) {
    if (!isWgs84(layer)) {
      findings.push(mapFinding('other-datum', layer.table, { datum: layer.datum ?? 'unknown' }));
      continue;
    }
    for (const row of sqlite
      .prepare(`SELECT * FROM ${quoted(layer.table)} LIMIT ${maxFeatures + 1}`)
      .iterate()) {
      if (features.length >= maxFeatures) {
        findings.push(
          mapFinding('map-too-large', layer.table, { features: features.length, limit: maxFeatures }),
        );
        break;
      }
      takeRow(row, layer, options.nameProperty ?? null, { features, findings, left });
    }
  }
  for (const [kind, count] of left) findings.push(mapFinding('not-an-area', null, { kind, count }));
  if (features.length === 0) findings.push(mapFinding('no-area-in-map', null));
  return { value: features, findings };
}

/** 4326 is WGS84 in two dimensions, 4979 the same with heights. */
function isWgs84({ organization, organizationCode }: Layer): boolean {
  return organization?.toUpperCase() === 'EPSG' && (organizationCode === 4326 || organizationCode === 4979);
}

function layersOf(sqlite: DatabaseSync): Layer[] {
  const rows = sqlite
    .prepare(
      `SELECT g.table_name AS "table", g.column_name AS "column", s.organization,
              s.organization_coordsys_id AS organizationCode, s.srs_name AS datum
         FROM gpkg_geometry_columns g
         LEFT JOIN gpkg_spatial_ref_sys s ON s.srs_id = g.srs_id
        ORDER BY g.table_name`,
    )
    .all();
  return rows as unknown as Layer[];
}

function takeRow(
  row: Readonly<Record<string, unknown>>,
  layer: Layer,
  nameProperty: string | null,
  into: { features: MapFeature[]; findings: MapFinding[]; left: Map<string, number> },
): void {
  const properties = propertiesOf(row, layer.column);
  const name = nameOf(properties, nameProperty);
  const bytes = row[layer.column];
  const area = bytes instanceof Uint8Array ? areaOfBytes(bytes) : 'empty';
  if (area === 'broken') {
    into.findings.push(mapFinding('position-not-understood', name ?? layer.table, {}));
  } else if (typeof area === 'string') {
    into.left.set(area, (into.left.get(area) ?? 0) + 1);
  } else {
    into.features.push({ name, area, properties });
  }
}

function propertiesOf(row: Readonly<Record<string, unknown>>, column: string): MapFeature['properties'] {
  const kept = Object.entries(row).filter(
    ([key, value]) =>
      key !== column && (value === null || typeof value === 'string' || typeof value === 'number'),
  );
  return Object.fromEntries(kept) as MapFeature['properties'];
}

function nameOf(properties: MapFeature['properties'], asked: string | null): string | null {
  for (const wanted of asked === null ? usualNames : [asked.toLowerCase()]) {
    const found = Object.entries(properties).find(
      ([key, value]) => key.toLowerCase() === wanted && value !== null,
    );
    if (found !== undefined) return String(found[1]);
  }
  return null;
}

/** A name as SQL wants it. */
export function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}
