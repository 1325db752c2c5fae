import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, describe, expect, test } from 'vitest';
import type { MapFeature } from '../survey/map-area.ts';
import { readGeopackage } from './geopackage.ts';
import { areaOfBytes, bytesOfArea } from './well-known-binary.ts';
import { writeGeopackage } from './write-geopackage.ts';

const folder = mkdtempSync(join(tmpdir(), 'slateline-map-'));
afterAll(() => rmSync(folder, { recursive: true }));

const ring = (west: number, south: number, sizeDeg: number) =>
  [
    [west, south],
    [west + sizeDeg, south],
    [west + sizeDeg, south + sizeDeg],
    [west, south + sizeDeg],
    [west, south],
  ].map(([longitudeDeg, latitudeDeg]) => ({ latitudeDeg: latitudeDeg!, longitudeDeg: longitudeDeg! }));

const reef: MapFeature = {
  name: 'back “reef”',
  area: {
    parts: [
      { outer: ring(177, -17.1, 0.1), holes: [ring(177.02, -17.08, 0.01), ring(177.05, -17.05, 0.01)] },
      { outer: ring(178, -17.1, 0.1), holes: [] },
    ],
  },
  properties: { habitat: 'back reef', area_ha: 117.5, 'odd "key"': true },
};
const slope: MapFeature = {
  name: 'slope',
  area: { parts: [{ outer: ring(-179.9, -17.1, 0.1), holes: [] }] },
  properties: { habitat: null, area_ha: 12 },
};
const changedAt = '2026-03-01T00:00:00.000Z';

function run(program: string, parameters: readonly string[]): string {
  return execFileSync(program, parameters, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

const hasGdal = (() => {
  try {
    run('ogrinfo', ['--version']);
    return true;
  } catch {
    // biome-ignore lint/suspicious/noConsole: a comparison that was not made must be seen
    console.warn(
      'SKIPPED: ogrinfo (Debian gdal-bin) is not installed; GeoPackage files are not compared with GDAL',
    );
    return false;
  }
})();

describe('areas in a GeoPackage', () => {
  test('come back as they went in', () => {
    const path = join(folder, 'round.gpkg');
    writeGeopackage(path, { table: 'my strata', features: [reef, slope], changedAt });
    const { value, findings } = readGeopackage(path);
    expect(findings).toEqual([]);
    expect(value.map(({ name, area }) => ({ name, area }))).toEqual(
      [reef, slope].map(({ name, area }) => ({ name, area })),
    );
    expect(value[0]!.properties).toMatchObject({ habitat: 'back reef', area_ha: 117.5, 'odd "key"': 1 });
    expect(readGeopackage(path, { nameProperty: 'habitat' }).value[0]!.name).toBe('back reef');
  });

  test('never overwrite a file that is there', () => {
    const path = join(folder, 'there.gpkg');
    writeFileSync(path, '');
    expect(() => writeGeopackage(path, { table: 'strata', features: [reef], changedAt })).toThrow(
      'no file is',
    );
  });

  test('on another datum are refused by its name', () => {
    const path = join(folder, 'datum.gpkg');
    writeGeopackage(path, { table: 'strata', features: [reef], changedAt });
    const sqlite = new DatabaseSync(path);
    sqlite.exec(`INSERT INTO gpkg_spatial_ref_sys VALUES ('Somewhere 1927', 4267, 'EPSG', 4267, '', '');
                 UPDATE gpkg_geometry_columns SET srs_id = 4267`);
    sqlite.close();
    expect(readGeopackage(path)).toMatchObject({
      value: [],
      findings: [
        { code: 'other-datum', parameters: { datum: 'Somewhere 1927' } },
        { code: 'no-area-in-map' },
      ],
    });
  });

  test('that are no file, no database, or no map, are findings', () => {
    writeFileSync(
      join(folder, 'text.gpkg'),
      'this is no database, only a long enough text to look like one'.repeat(20),
    );
    new DatabaseSync(join(folder, 'empty.gpkg')).close();
    for (const name of ['missing.gpkg', 'text.gpkg', 'empty.gpkg']) {
      expect(readGeopackage(join(folder, name))).toMatchObject({
        value: [],
        findings: [{ code: 'map-not-understood' }],
      });
    }
  });

  test('whose bytes are cut off are a finding, and the others are read', () => {
    const path = join(folder, 'cut.gpkg');
    writeGeopackage(path, { table: 'strata', features: [reef, slope], changedAt });
    const sqlite = new DatabaseSync(path);
    sqlite.exec('UPDATE strata SET geom = substr(geom, 1, 100) WHERE fid = 1');
    sqlite.close();
    const { value, findings } = readGeopackage(path);
    expect(value.map(({ name }) => name)).toEqual(['slope']);
    expect(findings).toMatchObject([{ code: 'position-not-understood', where: 'back “reef”' }]);
  });
});

describe('well-known binary', () => {
  const header = [0x47, 0x50, 0, 0x01, 0, 0, 0, 0];
  const bytes = (...numbers: number[]) => Uint8Array.from([...header, ...numbers]);

  // By hand, from the standard: order 1, type, counts; a big-endian polygon with heights (type 1003) of 0 rings is empty.
  test.each([
    ['a point', bytes(1, 1, 0, 0, 0), 'point'],
    ['a line', bytes(1, 2, 0, 0, 0), 'line'],
    ['a collection', bytes(1, 7, 0, 0, 0), 'mixed'],
    ['a curved polygon', bytes(1, 10, 0, 0, 0), 'curve'],
    ['a big-endian polygon with heights and no ring', bytes(0, 0, 0, 3, 0xeb, 0, 0, 0, 0), 'empty'],
    [
      'a polygon that promises four thousand million rings',
      bytes(1, 3, 0, 0, 0, 255, 255, 255, 255),
      'broken',
    ],
    ['an unknown type', bytes(1, 99, 0, 0, 0), 'broken'],
    ['nothing', Uint8Array.from([]), 'broken'],
    ['no header', Uint8Array.from([1, 3, 0, 0, 0, 0, 0, 0, 0]), 'broken'],
  ])('of %s is %s', (_, given, expected) => {
    expect(areaOfBytes(given)).toBe(expected);
  });

  test('of an area without parts is empty', () => {
    expect(areaOfBytes(bytesOfArea({ parts: [] }))).toBe('empty');
  });
});

// Authority: GDAL 3 (Debian gdal-bin), an independent reader and writer of GeoPackage.
describe.skipIf(!hasGdal)('GDAL', () => {
  test('reads what we write, without a warning', () => {
    const path = join(folder, 'ours.gpkg');
    writeGeopackage(path, { table: 'strata', features: [reef, slope], changedAt });
    const text = run('ogrinfo', ['-al', '-so', path]);
    expect(text).toContain('Geometry: Multi Polygon');
    expect(text).toContain('Feature Count: 2');
    expect(text).toContain('WGS 84');
    expect(text).not.toMatch(/warning|error/i);
  });

  test.each(['POLYGON', 'POLYGON Z'])('writes what we read: %s', (type) => {
    const source = join(folder, 'source.geojson');
    const coordinates = [
      ring(177, -17.1, 0.1).map((p) => [p.longitudeDeg, p.latitudeDeg, ...(type === 'POLYGON' ? [] : [3])]),
    ];
    writeFileSync(
      source,
      JSON.stringify({
        type: 'Feature',
        properties: { Name: 'reef' },
        geometry: { type: 'Polygon', coordinates },
      }),
    );
    const path = join(folder, `theirs ${type}.gpkg`);
    run('ogr2ogr', [
      '-f',
      'GPKG',
      path,
      source,
      '-nlt',
      type.replace(' ', '') === 'POLYGONZ' ? 'POLYGONZ' : 'POLYGON',
    ]);
    const { value, findings } = readGeopackage(path);
    expect(findings).toEqual([]);
    expect(value).toMatchObject([
      { name: 'reef', area: { parts: [{ outer: ring(177, -17.1, 0.1), holes: [] }] } },
    ]);
  });
});
