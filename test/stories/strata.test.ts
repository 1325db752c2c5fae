/** Strata from maps: brought, measured, frozen, masked, written back, and every bad map answered with a sentence. */

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { near } from '../../src/maths/nearness.ts';
import { areaHaOf } from '../../src/planning/ground/area-size.ts';
import { boxArea, wavyArea } from '../../src/planning/ground/test-areas.ts';
import { bookWith, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

type Pair = readonly [longitudeDeg: number, latitudeDeg: number];

const box = (west: number, south: number, east: number, north: number): Pair[] => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
  [west, south],
];

function feature(name: string | null, rings: readonly (readonly Pair[])[], properties: object = {}) {
  const named = name === null ? properties : { name, ...properties };
  return { type: 'Feature', properties: named, geometry: { type: 'Polygon', coordinates: rings } };
}

function mapOf(...features: readonly object[]): string {
  return fileOf('reef.geojson', JSON.stringify({ type: 'FeatureCollection', features }));
}

function fileOf(name: string, text: string): string {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, text);
  return path;
}

async function emptyBook(): Promise<string> {
  const book = join(temporaryFolder(), 'book');
  await slateline('new', '--book', book);
  return book;
}

const flat = feature('flat', [box(177, -17.01, 177.02, -17)]);
const slope = feature('slope', [box(177, -17.02, 177.02, -17.01)]);
const flatHa = areaHaOf(boxArea(177, -17.01, 177.02, -17));

describe('a map of two strata', () => {
  it('makes them, with the hectares of their polygons', async () => {
    const book = await emptyBook();
    const { rows, problems, exitCode } = await slatelineJson(
      'strata',
      '--from',
      mapOf(flat, slope),
      '--book',
      book,
    );
    expect(exitCode).toBe(0);
    expect(problems).toEqual([]);
    expect(rows.map((row) => row.name)).toEqual(['flat', 'slope']);
    // Authority: areaSize, which equals GeographicLib's (docs/methods/planning-ground.md).
    near(rows[0].areaHa, flatHa, 1e-9);
    expect(rows[0]).toMatchObject({
      role: 'stratum',
      maskedHa: 0,
      parts: 1,
      holes: 0,
      corners: 4,
      frozenOn: null,
      source: 'reef.geojson',
      stations: 0,
    });
    const again = await slatelineJson('strata', '--book', book);
    expect(again.rows).toEqual(rows);
  });

  it('brought twice changes nothing, and a dry run writes nothing', async () => {
    const book = await emptyBook();
    const dry = await slateline('strata', '--from', mapOf(flat), '--dry-run', '--book', book);
    expect(dry.stdout).toContain('Dry run: nothing was written.');
    expect((await slatelineJson('strata', '--book', book)).rows).toEqual([]);
    const first = await slatelineJson('strata', '--from', mapOf(flat), '--book', book);
    const second = await slatelineJson('strata', '--from', mapOf(flat), '--book', book);
    expect(second.dataVersion).toBe(first.dataVersion);
  });

  it.each(['.geojson', '.gpkg'])('comes back from %s as it went out', async (ending) => {
    const book = await emptyBook();
    const islet = feature('islet', [box(177.005, -17.006, 177.007, -17.004)], {
      role: 'mask',
      reason: 'land',
    });
    const out = join(temporaryFolder(), `out${ending}`);
    const first = await slatelineJson(
      'strata',
      '--from',
      mapOf(flat, slope, islet),
      '--to',
      out,
      '--book',
      book,
    );
    const back = await slatelineJson('strata', '--from', out, '--book', await emptyBook());
    expect(back.problems).toEqual([]);
    const bare = (rows: readonly object[]) => rows.map((row) => ({ ...row, source: null }));
    for (const [i, row] of bare(back.rows).entries()) {
      const { areaHa, wholeAreaHa, maskedHa, masked: _, edgeErrorHa: __, ...rest } = first.rows[i];
      expect(row).toMatchObject({ ...rest, source: null });
      // A ring that begins at another corner adds in another order.
      near(back.rows[i].areaHa, areaHa, 1e-9);
      near(back.rows[i].wholeAreaHa, wholeAreaHa, 1e-9);
      if (maskedHa !== null) near(back.rows[i].maskedHa, maskedHa, 1e-6);
    }
    // An old file of that name is replaced whole.
    expect((await slateline('strata', '--to', out, '--book', book)).exitCode).toBe(0);
  });
});

describe('masks', () => {
  it('are taken off, whichever came first, and the hectares of each are told', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--book', book);
    const land = mapOf(
      feature(null, [box(177, -17.002, 177.02, -17)]),
      feature(null, [box(177.03, -17.002, 177.04, -17)]),
    );
    const args = ['strata', '--from', land, '--role', 'mask', '--reason', 'land', '--book', book];
    const { rows } = await slatelineJson(...args);
    const landHa = areaHaOf(boxArea(177, -17.002, 177.02, -17));
    const [stratum, mask] = rows;
    near(stratum.maskedHa, landHa, 1e-5);
    near(stratum.areaHa, flatHa - landHa, 1e-5);
    expect(stratum.masked).toMatchObject([{ name: 'land', why: 'land' }]);
    expect(mask).toMatchObject({ name: 'land', role: 'mask', reason: 'land', parts: 2 });
    const { stdout } = await slateline('strata', '--book', book);
    expect(stdout).toContain('flat: 236 ha drawn, 47.1 ha off for land (land), 189 ha left to draw from.');
    const without = await slatelineJson('strata', '--withdraw', 'land', '--book', book);
    near(without.rows[0].areaHa, flatHa, 1e-9);
  });

  it('that lie over each other are counted once, in the strata and in their own row', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--book', book);
    const cays = mapOf(
      feature('cays', [box(177, -17.002, 177.01, -17)]),
      feature('cays', [box(177.005, -17.002, 177.015, -17)]),
    );
    const args = ['strata', '--from', cays, '--role', 'mask', '--reason', 'land', '--book', book];
    const { rows } = await slatelineJson(...args);
    const caysHa = areaHaOf(boxArea(177, -17.002, 177.015, -17));
    // By hand: straight in degrees and shortest way part by 20 m2 on an edge of 1.6 km; counted twice it would be a third more.
    near(rows[0].maskedHa, caysHa, 2e-4);
    near(rows[1].areaHa, caysHa, 2e-4);
  });

  it('and strata that share a name are not withdrawn together', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--book', book);
    await slateline('strata', '--from', mapOf(flat), '--role', 'zone', '--book', book);
    const both = await slateline('strata', '--withdraw', 'flat', '--book', book);
    expect([both.exitCode, both.stderr]).toEqual([2, expect.stringContaining('say which with --role')]);
    const { rows } = await slatelineJson('strata', '--withdraw', 'flat', '--role', 'zone', '--book', book);
    expect(rows.map(({ role, parts }) => [role, parts])).toEqual([['stratum', 1]]);
  });

  it('have to say why, and may not take everything', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--book', book);
    const all = mapOf(feature('all', [box(176.9, -17.1, 177.1, -16.9)]));
    const silent = await slateline('strata', '--from', all, '--role', 'mask', '--book', book);
    expect([silent.exitCode, silent.stderr]).toEqual([2, expect.stringContaining('--reason land')]);
    const ran = await slateline(
      'strata',
      '--from',
      all,
      '--role',
      'mask',
      '--reason',
      'closed',
      '--book',
      book,
    );
    expect(ran.exitCode).toBe(1);
    expect(ran.stderr).toContain('the masks take all 236 ha of stratum flat');
  });
});

describe('frozen strata', () => {
  const wider = feature('flat', [box(177, -17.01, 177.03, -17)]);

  it('refuse another border by the day they were frozen, until somebody stands for it', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--freeze', '--book', book);
    const refused = await slateline('strata', '--from', mapOf(wider), '--book', book);
    expect(refused.exitCode).toBe(1);
    expect(refused.stderr).toMatch(
      /stratum flat was frozen on 2026-\d\d-\d\d with 236 ha; this map would make it 354 ha/,
    );
    expect(refused.stdout).toContain('Nothing was written');
    const mask = mapOf(feature('reef', [box(177, -17.005, 177.02, -17)]));
    expect(
      (await slateline('strata', '--from', mask, '--role', 'mask', '--reason', 'closed', '--book', book))
        .exitCode,
    ).toBe(1);
    const accept = ['--accept', 'Officer A: the chart was wrong'];
    const accepted = await slatelineJson('strata', '--from', mapOf(wider), ...accept, '--book', book);
    expect(accepted.exitCode).toBe(0);
    near(accepted.rows[0].areaHa, areaHaOf(boxArea(177, -17.01, 177.03, -17)), 1e-9);
    const history = await slateline('history', '--book', book);
    expect(history.stdout).toContain('the chart was wrong');
  });

  it('are frozen without a new map by --freeze alone', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--book', book);
    const { rows } = await slatelineJson('strata', '--freeze', '--book', book);
    expect(rows[0].frozenOn).toMatch(/^2026-/);
  });
});

const stationHead = ['survey', 'station', 'stratum', 'date', 'latitude', 'longitude'];
const tables = {
  strata: [
    ['stratum', 'area_ha'],
    ['flat', 2.36],
  ],
  surveys: [['survey'], ['North']],
  stations: [stationHead, ['North', 'S1', 'flat', '2026-09-02', -17.005, 177.01]],
};

describe('the strata table beside the map', () => {
  it('an area typed in km² is asked about, and the map stands', async () => {
    const book = await bookWith(tables);
    const { problems, rows } = await slatelineJson('strata', '--from', mapOf(flat), '--book', book);
    const asked = problems.find((one) => one.code === 'area-typed-differs');
    expect(asked.message).toBe(
      // Authority: the area above over what was typed.
      `stratum flat was typed as 2.36 ha, but its polygon has 236 ha, ${(flatHa / 2.36).toFixed(1)} times that (typed in km²?); the map stands: correct the table, or the map`,
    );
    near(rows[0].areaHa, flatHa, 1e-9);
  });

  it('imported afterwards does not take the place of the map', async () => {
    const book = await emptyBook();
    await slateline('strata', '--from', mapOf(flat), '--book', book);
    const folder = fileOf('strata.csv', 'stratum,area_ha\nflat,2.36\n');
    const { problems } = await slatelineJson('import', folder, '--book', book);
    expect(problems).toMatchObject([
      { code: 'area-typed-differs', severity: 'explain', file: 'strata.csv', row: 2 },
    ]);
    const near2 = await slatelineJson(
      'import',
      fileOf('strata.csv', 'stratum,area_ha\nflat,240\n'),
      '--book',
      book,
    );
    expect(near2.problems).toMatchObject([{ code: 'area-from-map', severity: 'note' }]);
    const { rows } = await slatelineJson('strata', '--book', book);
    near(rows[0].areaHa, flatHa, 1e-9);
  });

  it('strata drawn after the first station was worked are noted', async () => {
    const { problems } = await slatelineJson(
      'strata',
      '--from',
      mapOf(flat),
      '--book',
      await bookWith(tables),
    );
    expect(problems.find((one) => one.code === 'strata-drawn-late').message).toMatch(
      /^the borders of flat are drawn on 2026-10-01, after the first station of North \(2026-09-02\): drawn after seeing results/,
    );
  });

  it('a name that only capitals tell apart is a stop', async () => {
    const map = mapOf(feature('Flat', [box(177, -17.01, 177.02, -17)]));
    const { problems, exitCode } = await slatelineJson(
      'strata',
      '--from',
      map,
      '--book',
      await bookWith(tables),
    );
    expect([exitCode, problems.map((one) => one.code)]).toEqual([1, ['area-name-near']]);
  });
});

// Each: a bad map, what stops or asks, and words with the numbers in them.
const badMaps: readonly {
  readonly what: string;
  readonly path: () => string;
  readonly says: RegExp;
  readonly exit: number;
}[] = [
  {
    what: 'an empty polygon',
    path: () => mapOf(feature('flat', [])),
    says: /there is no area in this map/,
    exit: 1,
  },
  {
    what: 'a polygon of two points',
    path: () => mapOf(feature('flat', [box(177, -17, 177, -17)])),
    says: /area flat: piece 1: a border needs three different points to hold ground, and this one has 1/,
    exit: 1,
  },
  {
    what: 'an open polygon',
    path: () => mapOf(feature('flat', [box(177, -17.01, 177.02, -17).slice(0, 4)])),
    // By hand: the side from 17 S to 17.01 S is 0.01 degree of 110.65 km.
    says: /area flat: piece 1: the border ends 1\s110 m from where it began/,
    exit: 0,
  },
  {
    what: 'lines and points',
    path: () =>
      mapOf(
        { type: 'Feature', properties: { name: 'a' }, geometry: { type: 'Point', coordinates: [177, -17] } },
        {
          type: 'Feature',
          properties: { name: 'b' },
          geometry: { type: 'LineString', coordinates: box(177, -17.01, 177.02, -17) },
        },
      ),
    says: /there is no area in this map[\s\S]*left out: 1 point;[\s\S]*left out: 1 line;/,
    exit: 1,
  },
  {
    what: 'another datum',
    path: () =>
      fileOf(
        'old.geojson',
        JSON.stringify({
          type: 'FeatureCollection',
          crs: { type: 'name', properties: { name: 'EPSG:3141' } },
          features: [flat],
        }),
      ),
    says: /the positions are on EPSG:3141, not on WGS84/,
    exit: 1,
  },
  {
    what: 'a border that crosses itself',
    path: () =>
      mapOf(
        feature('flat', [
          [
            [177, -17],
            [177.02, -17.02],
            [177.02, -17],
            [177, -17.02],
            [177, -17],
          ],
        ]),
      ),
    says: /area flat: piece 1: the border crosses itself once, first at 17° 00\.60\d′ S, 177° 00\.60\d′ E/,
    exit: 1,
  },
  {
    what: 'latitude before longitude',
    path: () => mapOf(feature('flat', [box(177, -17.01, 177.02, -17).map(([x, y]): Pair => [y, x])])),
    says: /area flat: .*latitude and longitude stand exchanged; map files have longitude first/,
    exit: 1,
  },
  {
    what: 'two strata that claim the same ground',
    path: () => mapOf(flat, feature('slope', [box(177.01, -17.02, 177.03, -17)])),
    says: /flat and slope both claim 118 ha/,
    exit: 1,
  },
  {
    what: 'areas without names',
    path: () => mapOf(feature(null, [box(177, -17.01, 177.02, -17)])),
    says: /areas without a name: 1;/,
    exit: 1,
  },
  {
    what: 'a name twice',
    path: () => mapOf(flat, flat),
    says: /the name “flat” stands at two areas/,
    exit: 1,
  },
  {
    what: 'a packed map',
    path: () => fileOf('reef.kmz', 'PK\u0003\u0004'),
    says: /unpack the KMZ or ZIP first/,
    exit: 1,
  },
  {
    what: 'no map at all',
    path: () => fileOf('reef.geojson', 'stratum,area\n'),
    says: /this file is no GeoJSON that can be read/,
    exit: 1,
  },
];

describe('a bad map', () => {
  it.each(badMaps)('$what is answered in a sentence', async ({ path, says, exit }) => {
    const book = await emptyBook();
    const ran = await slateline('strata', '--from', path(), '--book', book);
    expect(ran.stderr).toMatch(says);
    expect(ran.stderr).not.toMatch(/undefined|NaN|not given|[{}[\]]/);
    expect(ran.exitCode).toBe(exit);
    if (exit === 1) expect((await slatelineJson('strata', '--book', book)).rows).toEqual([]);
  });

  it('across the date line is no bad map: it measures what it measures elsewhere', async () => {
    // Authority: invariance. The same box three degrees west.
    const map = mapOf(
      feature('pass', [box(179.99, -17.01, 180.01, -17)]),
      feature('east', [box(-179.98, -17.01, -179.96, -17)]),
    );
    const { rows, problems } = await slatelineJson('strata', '--from', map, '--book', await emptyBook());
    expect(problems).toEqual([]);
    for (const row of rows) near(row.areaHa, flatHa, 1e-9);
  });
});

describe('JOB scenario 7', () => {
  it('says 19.9 km from plan, outside its zone, with the figures the right way round; and 369 m for minutes as seconds', async () => {
    const head = [...stationHead, 'zone', 'planned_latitude', 'planned_longitude'];
    const book = await bookWith({
      strata: [
        ['stratum', 'area_ha'],
        ['flat', 236],
      ],
      surveys: [['survey'], ['North']],
      stations: [
        head,
        ['North', 'S1', 'flat', '2026-09-02', -17.57, 177.4, 'open', -17.75, 177.4],
        // 17 45.30' S typed as 17 45' 30" S.
        ['North', 'S2', 'flat', '2026-09-02', -17.75833, 177.41, 'open', -17.755, 177.41],
      ],
    });
    const zone = mapOf(feature('open', [box(177.3, -17.8, 177.5, -17.7)], { role: 'zone' }));
    expect((await slateline('strata', '--from', zone, '--book', book)).exitCode).toBe(0);
    const before = (await slatelineJson('strata', '--book', book)).dataVersion;
    const { rows, dataVersion } = await slatelineJson('check', '--book', book);
    const message = (code: string) => rows.find((row) => row.code === code).message;
    expect(message('digits-exchanged')).toBe(
      '-17.57000, 177.40000 (17° 34.200′ S, 177° 24.000′ E) lies 19.9 km from plan, outside zone open; swapped digits: -17.75000?',
    );
    expect(message('minutes-for-seconds')).toMatch(
      /lies 369 m from plan; minutes and seconds taken for decimals: -17.7550/,
    );
    expect(rows.map((row) => row.code)).not.toContain('station-outside-zone');
    // Nothing is changed without consent.
    expect(dataVersion).toBe(before);
  });
});

function run(program: string, ...parameters: string[]): string {
  return execFileSync(program, parameters, { encoding: 'utf8', stdio: 'pipe' });
}

function hasGdal(): boolean {
  try {
    run('ogrinfo', '--version');
    return true;
  } catch {
    // biome-ignore lint/suspicious/noConsole: a comparison that was not made must be seen
    console.warn(
      'SKIPPED: ogrinfo (Debian gdal-bin) does not run here; the areas of “strata” are not compared with it',
    );
    return false;
  }
}

describe.skipIf(!hasGdal())('GDAL', () => {
  // Authority: ST_Area(geometry, 1) of GDAL with SpatiaLite, geodesic on the ellipsoid, to 1e-6.
  test.each(['.geojson', '.gpkg'])(
    'measures the same in what --to writes as %s, the date line included',
    async (ending) => {
      const ring = wavyArea(2000, { latitudeDeg: -17, longitudeDeg: 180 }, 0.1).parts[0]!.outer;
      const wavy = feature('pass', [
        ring.map(({ longitudeDeg, latitudeDeg }): Pair => [longitudeDeg, latitudeDeg]),
      ]);
      const out = join(temporaryFolder(), `strata${ending}`);
      const { rows } = await slatelineJson(
        'strata',
        '--from',
        mapOf(flat, wavy),
        '--to',
        out,
        '--book',
        await emptyBook(),
      );
      const column = ending === '.gpkg' ? 'geom' : 'geometry';
      const sql = `SELECT name, ST_Area(${column}, 1) AS m2 FROM strata`;
      const answer = run('ogrinfo', '-q', out, '-dialect', 'SQLite', '-sql', sql);
      for (const row of rows) {
        const m2 = new RegExp(`name \\(String\\) = ${row.name}\\n\\s+m2 \\(Real\\) = ([\\d.]+)`).exec(
          answer,
        )?.[1];
        near(row.areaHa, Number(m2) / 10_000, 1e-6);
      }
    },
  );

  test('a GeoPackage and a KML of its making are read as the GeoJSON they were made from', async () => {
    const from = mapOf(flat, slope);
    const plain = await slatelineJson('strata', '--from', from, '--book', await emptyBook());
    for (const [driver, name] of [
      ['GPKG', 'made.gpkg'],
      ['KML', 'made.kml'],
    ] as const) {
      const made = join(temporaryFolder(), name);
      run('ogr2ogr', '-f', driver, made, from);
      // By content, not by ending.
      const disguised = join(temporaryFolder(), 'map.dat');
      writeFileSync(disguised, readFileSync(made));
      const read = await slatelineJson('strata', '--from', disguised, '--book', await emptyBook());
      expect(read.problems).toEqual([]);
      for (const [i, row] of read.rows.entries()) near(row.areaHa, plain.rows[i].areaHa, 1e-9);
    }
  });
});
