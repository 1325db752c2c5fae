/** Areas into new GeoPackage files (OGC 12-128r18). */

import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import type { MapFeature } from '../survey/map-area.ts';
import { quoted } from './geopackage.ts';
import { geopackageTables } from './geopackage-tables.ts';
import { bytesOfArea } from './well-known-binary.ts';

/**
 * Writes areas as one feature table of a new GeoPackage file on WGS84, with their name and plain properties.
 *
 * Give areas cut at the date line (`areaForMapFile` in planning). The file must not exist: an old one is never
 * overwritten here. `changedAt` is an ISO instant. Properties become columns; one of mixed kinds is written as text.
 */
export function writeGeopackage(
  path: string,
  layer: { readonly table: string; readonly features: readonly MapFeature[]; readonly changedAt: string },
): void {
  if (existsSync(path)) throw new Error(`writeGeopackage requires a path where no file is, got ${path}`);
  const sqlite = new DatabaseSync(path);
  try {
    sqlite.exec(geopackageTables);
    sqlite.exec('BEGIN');
    fillLayer(sqlite, layer);
    sqlite.exec('COMMIT');
  } finally {
    sqlite.close();
  }
}

function fillLayer(
  sqlite: DatabaseSync,
  {
    table,
    features,
    changedAt,
  }: { readonly table: string; readonly features: readonly MapFeature[]; readonly changedAt: string },
): void {
  const columns = columnsOf(features);
  const definitions = columns.map(({ key, type }) => `, ${quoted(key)} ${type}`).join('');
  sqlite.exec(
    `CREATE TABLE ${quoted(table)} (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom MULTIPOLYGON, name TEXT${definitions})`,
  );
  const box = boxOf(features);
  sqlite
    .prepare(
      `INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change, min_x, min_y, max_x, max_y, srs_id)
       VALUES (?, 'features', ?, '', ?, ?, ?, ?, ?, 4326)`,
    )
    .run(table, table, changedAt, ...box);
  sqlite
    .prepare(`INSERT INTO gpkg_geometry_columns VALUES (?, 'geom', 'MULTIPOLYGON', 4326, 0, 0)`)
    .run(table);
  const places = columns.map(() => ', ?').join('');
  const names = columns.map(({ key }) => `, ${quoted(key)}`).join('');
  const insert = sqlite.prepare(`INSERT INTO ${quoted(table)} (geom, name${names}) VALUES (?, ?${places})`);
  for (const { name, area, properties } of features) {
    const values = columns.map(({ key, type }) => asStored(properties[key] ?? null, type));
    insert.run(bytesOfArea(area), name, ...values);
  }
}

interface Column {
  readonly key: string;
  readonly type: 'TEXT' | 'DOUBLE' | 'BOOLEAN';
}

const types = { string: 'TEXT', number: 'DOUBLE', boolean: 'BOOLEAN' } as const;

/** Our own columns are left to us; two keys that differ in capitals only would be one column: the first is kept. */
function columnsOf(features: readonly MapFeature[]): Column[] {
  const columns = new Map<string, Column>();
  for (const { properties } of features) {
    for (const [key, value] of Object.entries(properties)) {
      const small = key.toLowerCase();
      if (value === null || key === '' || ['fid', 'geom', 'name'].includes(small)) continue;
      const type = types[typeof value as keyof typeof types];
      const known = columns.get(small);
      columns.set(
        small,
        known === undefined ? { key, type } : { key: known.key, type: known.type === type ? type : 'TEXT' },
      );
    }
  }
  return [...columns.values()];
}

function asStored(value: string | number | boolean | null, type: Column['type']): string | number | null {
  if (value === null) return null;
  if (type === 'TEXT') return String(value);
  return typeof value === 'boolean' ? Number(value) : value;
}

function boxOf(features: readonly MapFeature[]): (number | null)[] {
  let box: [number, number, number, number] | null = null;
  for (const { longitudeDeg: x, latitudeDeg: y } of features.flatMap(({ area }) =>
    area.parts.flatMap((part) => part.outer),
  )) {
    box =
      box === null
        ? [x, y, x, y]
        : [Math.min(box[0], x), Math.min(box[1], y), Math.max(box[2], x), Math.max(box[3], y)];
  }
  return box ?? [null, null, null, null];
}
