import { existsSync, renameSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { writeGeoJson } from '../exchange/maps/write-geojson.ts';
import { areaForMapFile } from '../planning/ground/for-map-file.ts';
import { writeGeopackage } from '../store/write-geopackage.ts';
import { Failure } from '../survey/failure.ts';
import type { MapFeature } from '../survey/map-area.ts';
import type { Io } from './io.ts';
import { writeWhole } from './write-whole.ts';

/** Areas as GeoPackage where the name ends so, else as GeoJSON; whole or not at all. */
export function writeMapFile(io: Io, to: string, features: readonly MapFeature[]): void {
  const path = resolve(io.cwd, to);
  if (!/\.gpkg$/i.test(path)) {
    writeWhole(path, writeGeoJson(features));
    return;
  }
  const draft = `${path}.draft`;
  try {
    rmSync(draft, { force: true });
    const cut = features.map((feature) => ({ ...feature, area: areaForMapFile(feature.area) }));
    writeGeopackage(draft, { table: 'strata', features: cut, changedAt: io.now().toISOString() });
    renameSync(draft, path);
  } catch (error) {
    if (existsSync(draft)) rmSync(draft, { force: true });
    throw new Failure('cannot-write', { path, detail: (error as Error).message });
  }
}
