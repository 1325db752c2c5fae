/** Our files in the hands of Debian's map tools, and theirs in ours. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { areaHaOf } from '../../planning/ground/area-size.ts';
import { boxArea, wavyArea } from '../../planning/ground/test-areas.ts';
import type { MapArea } from '../../survey/map-area.ts';
import { readGeoJson } from './geojson.ts';
import { readGpx, writeGpx } from './gpx.ts';
import { readKml } from './kml.ts';
import { writeGeoJson } from './write-geojson.ts';

const folder = mkdtempSync(join(tmpdir(), 'slateline-maps-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(program: string, ...parameters: string[]): string {
  return execFileSync(program, parameters, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

function has(program: string, debianPackage: string, ...parameters: string[]): boolean {
  try {
    run(program, ...parameters);
    return true;
  } catch {
    // biome-ignore lint/suspicious/noConsole: a comparison that was not made must be seen
    console.warn(
      `SKIPPED: ${program} (Debian ${debianPackage}) does not run here; our map files are not compared with it`,
    );
    return false;
  }
}

const hasGdal = has('ogrinfo', 'gdal-bin', '--version');
const hasGpsbabel = has('gpsbabel', 'gpsbabel', '-V');

const island: MapArea = {
  parts: [
    {
      outer: wavyArea(500, { latitudeDeg: -17, longitudeDeg: 177 }, 0.1).parts[0]!.outer,
      holes: [wavyArea(50, { latitudeDeg: -17, longitudeDeg: 177 }, 0.02).parts[0]!.outer],
    },
  ],
};

describe.skipIf(!hasGdal)('GDAL', () => {
  // Authority: ST_Area(geometry, 1) of GDAL with SpatiaLite (geodesic area on the ellipsoid), to 1e-6.
  test.each([
    { name: 'a wavy island with a lagoon', area: island },
    { name: 'a small box', area: boxArea(177, -17.01, 177.01, -17) },
    {
      name: 'two pieces on both sides of the date line',
      area: wavyArea(2000, { latitudeDeg: -17, longitudeDeg: 180 }, 0.1),
    },
  ])('finds the same area in $name', ({ area }) => {
    const path = join(folder, 'area.geojson');
    const text = writeGeoJson([{ name: 'a', area, properties: {} }]);
    writeFileSync(path, text);
    const sql = 'SELECT ST_Area(geometry, 1) AS m2 FROM area';
    const answer = run('ogrinfo', '-q', path, '-dialect', 'SQLite', '-sql', sql);
    const areaM2 = Number(/m2 \(Real\) = ([\d.]+)/.exec(answer)?.[1]);
    near(areaHaOf(readGeoJson(text).value[0]!.area), areaM2 / 10_000, 1e-6);
  });

  test('calls our polygons valid, and its KML is read by us', () => {
    const path = join(folder, 'valid.geojson');
    const area = wavyArea(2000, { latitudeDeg: -17, longitudeDeg: 180 }, 0.1);
    writeFileSync(path, writeGeoJson([{ name: 'reef', area, properties: { habitat: 'slope' } }]));
    const answer = run(
      'ogrinfo',
      '-q',
      path,
      '-dialect',
      'SQLite',
      '-sql',
      'SELECT ST_IsValid(geometry) AS ok FROM valid',
    );
    expect(answer).toMatch(/ok \(Integer\) = 1/);
    for (const driver of ['KML', 'LIBKML']) {
      const kml = join(folder, `${driver}.kml`);
      run('ogr2ogr', '-f', driver, kml, path);
      const { value, findings } = readKml(readFileSync(kml, 'utf8'));
      expect(findings).toEqual([]);
      expect(value[0]).toMatchObject({ name: 'reef', properties: { habitat: 'slope' } });
      near(areaHaOf(value[0]!.area), areaHaOf(area), 1e-6);
    }
  });
});

describe.skipIf(!hasGpsbabel)('gpsbabel', () => {
  const content = {
    waypoints: [
      {
        position: { latitudeDeg: -17.75, longitudeDeg: 177.4 },
        name: 'S01',
        description: 'A & B',
        time: null,
      },
      {
        position: { latitudeDeg: -17.7493, longitudeDeg: -179.9 },
        name: 'S02',
        description: null,
        time: null,
      },
    ],
    routes: [
      {
        name: 'Day 1',
        points: [
          {
            position: { latitudeDeg: -17.75, longitudeDeg: 177.4 },
            name: 'S01',
            description: null,
            time: null,
          },
        ],
      },
    ],
    tracks: [],
  };

  test('opens our GPX, and we open what it makes of it', () => {
    const [ours, theirs] = [join(folder, 'ours.gpx'), join(folder, 'theirs.gpx')];
    writeFileSync(ours, writeGpx(content));
    run('gpsbabel', '-w', '-r', '-i', 'gpx', '-f', ours, '-o', 'gpx,gpxver=1.1', '-F', theirs);
    const { value, findings } = readGpx(readFileSync(theirs, 'utf8'));
    expect(findings).toEqual([]);
    expect(value.waypoints.map(({ name, position }) => ({ name, position }))).toEqual(
      content.waypoints.map(({ name, position }) => ({ name, position })),
    );
    expect(value.routes[0]!.points).toHaveLength(1);
  });
});
