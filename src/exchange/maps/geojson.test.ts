import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { areaHaOf } from '../../planning/ground/area-size.ts';
import { boxArea } from '../../planning/ground/test-areas.ts';
import { readGeoJson } from './geojson.ts';
import { writeGeoJson } from './write-geojson.ts';

const square = [
  [
    [177, -17.1],
    [177.1, -17.1],
    [177.1, -17],
    [177, -17],
    [177, -17.1],
  ],
];
const read = (value: unknown) => readGeoJson(JSON.stringify(value));
const codes = (value: unknown) => read(value).findings.map(({ code }) => code);

describe('GeoJSON', () => {
  const outer = boxArea(177, -17.1, 177.1, -17).parts[0]!.outer;

  test.each([
    ['a polygon', { type: 'Polygon', coordinates: square }, null],
    ['several polygons', { type: 'MultiPolygon', coordinates: [square] }, null],
    [
      'a feature',
      { type: 'Feature', properties: { Name: 'reef' }, geometry: { type: 'Polygon', coordinates: square } },
      'reef',
    ],
    [
      'a feature with only an id',
      { type: 'Feature', id: 7, properties: null, geometry: { type: 'Polygon', coordinates: square } },
      '7',
    ],
    ['heights', { type: 'Polygon', coordinates: [square[0]!.map((pair) => [...pair, -3])] }, null],
    [
      'a collection',
      { type: 'GeometryCollection', geometries: [{ type: 'Polygon', coordinates: square }] },
      null,
    ],
  ])('is read from %s', (_, value, name) => {
    expect(read(value)).toMatchObject({
      value: [{ name, area: { parts: [{ outer, holes: [] }] } }],
      findings: [],
    });
  });

  test('keeps plain properties and the name that was asked for', () => {
    const feature = {
      type: 'Feature',
      properties: { code: 'B1', area: 3.5, deep: { a: 1 } },
      geometry: { type: 'Polygon', coordinates: square },
    };
    const [found] = readGeoJson(JSON.stringify(feature), { nameProperty: 'CODE' }).value;
    expect(found).toMatchObject({ name: 'B1', properties: { code: 'B1', area: 3.5 } });
  });

  test('leaves points and lines out and says how many', () => {
    const geometries = [
      { type: 'Point', coordinates: [177, -17] },
      { type: 'MultiPoint', coordinates: [] },
      { type: 'LineString', coordinates: [] },
      { type: 'Polygon', coordinates: square },
      null,
    ];
    const collection = {
      type: 'FeatureCollection',
      features: geometries.map((geometry) => ({ type: 'Feature', geometry })),
    };
    const { value, findings } = read(collection);
    expect(value).toHaveLength(1);
    expect(findings.map(({ parameters }) => parameters)).toEqual([
      { kind: 'point', count: 2 },
      { kind: 'line', count: 1 },
      { kind: 'empty', count: 1 },
    ]);
  });

  test.each([
    ['urn:ogc:def:crs:EPSG::3460', true],
    ['EPSG:4267', true],
    ['urn:ogc:def:crs:OGC:1.3:CRS84', false],
    ['urn:ogc:def:crs:EPSG::4326', false],
    ['EPSG:4326', false],
  ])('on %s is refused: %s', (datum, isRefused) => {
    const found = codes({
      type: 'Polygon',
      coordinates: square,
      crs: { type: 'name', properties: { name: datum } },
    });
    expect(found).toEqual(isRefused ? ['other-datum'] : []);
  });

  test.each([
    ['', ['map-not-understood']],
    ['{"type":', ['map-not-understood']],
    ['null', ['map-not-understood', 'no-area-in-map']],
    [
      '{"type":"Polygon","coordinates":[[["x",1],[2,3],[4,5]]]}',
      ['position-not-understood', 'no-area-in-map'],
    ],
    ['{"type":"Polygon","coordinates":[]}', ['not-an-area', 'no-area-in-map']],
    ['{"type":"Polygon"}', ['not-an-area', 'no-area-in-map']],
    ['{"type":"FeatureCollection","features":{}}', ['no-area-in-map']],
    ['{"type":"__proto__"}', ['not-an-area', 'no-area-in-map']],
  ])('that says %s is a finding and not a crash', (text, expected) => {
    expect(readGeoJson(text).findings.map(({ code }) => code)).toEqual(expected);
  });
});

describe('GeoJSON as we write it', () => {
  const sevens = boxArea(177, -17.1, 177.1, -17);

  test('is read back with the same area and properties', () => {
    const feature = { name: 'reef', area: sevens, properties: { habitat: 'back reef' } };
    const [back] = readGeoJson(writeGeoJson([feature])).value;
    expect(back).toMatchObject({ name: 'reef', properties: { name: 'reef', habitat: 'back reef' } });
    near(areaHaOf(back!.area), areaHaOf(sevens), 1e-12);
  });

  // Authority: RFC 7946, 3.1.6 (right-hand rule) and 3.1.9 (cut at the antimeridian), read from memory.
  test('is cut at the date line, outer rings anticlockwise, longitudes within 180', () => {
    const clockwise = {
      parts: [{ outer: boxArea(179.9, -17.1, -179.9, -17).parts[0]!.outer.toReversed(), holes: [] }],
    };
    const text = writeGeoJson([{ name: 'a', area: clockwise, properties: {} }]);
    const { coordinates } = JSON.parse(text).features[0].geometry as { coordinates: [number, number][][][] };
    const bounds = coordinates.map(([ring]) => [
      Math.min(...ring!.map(([x]) => x)),
      Math.max(...ring!.map(([x]) => x)),
    ]);
    expect(bounds).toEqual([
      [179.9, 180],
      [-180, expect.closeTo(-179.9, 9)],
    ]);
    for (const [ring] of coordinates) {
      const twice = ring!.reduce((sum, [x, y], i) => {
        const [nextX, nextY] = ring![(i + 1) % ring!.length]!;
        return sum + x * nextY - nextX * y;
      }, 0);
      expect(twice).toBeGreaterThan(0);
      expect(ring![0]).toEqual(ring!.at(-1));
    }
    const [back] = readGeoJson(text).value;
    // Long edges cut in two bulge less (half a hectare in 23 600 here): the border itself is the same.
    near(areaHaOf(back!.area), areaHaOf(clockwise), 2e-4);
  });
});

describe('a map that is something else', () => {
  const square = (x: number, y: number, step: number) => [
    [x, y],
    [x + step, y],
    [x + step, y + step],
    [x, y],
  ];
  const polygon = (ring: number[][]) =>
    JSON.stringify({
      type: 'Feature',
      properties: { name: 'flat' },
      geometry: { type: 'Polygon', coordinates: [ring] },
    });

  // Authority: UTM eastings are 166 000 to 834 000 m and northings up to 10 000 000 m (NGA, from memory).
  test('in metres of UTM gets one sentence for the file, not one for each corner', () => {
    const { value, findings } = readGeoJson(polygon(square(512_300, 8_123_400, 250)));
    expect(value).toEqual([]);
    expect(findings).toEqual([
      { code: 'map-in-metres', severity: 'stop', where: null, parameters: { x: 512_300, y: 8_123_400 } },
    ]);
  });
  test('in degrees with one slip stays a map with a slip in it', () => {
    const ring = square(177, -17, 0.1);
    ring[1] = [1770, -17];
    expect(readGeoJson(polygon(ring)).findings.map(({ code }) => code)).not.toContain('map-in-metres');
  });
  // Authority: the TopoJSON specification 1.0: its root has the type Topology (from memory).
  test('as TopoJSON is called by its name', () => {
    const { findings } = readGeoJson(JSON.stringify({ type: 'Topology', objects: {}, arcs: [] }));
    expect(findings).toEqual([
      {
        ...{ code: 'map-not-understood', severity: 'stop', where: null },
        parameters: { format: 'GeoJSON', detail: 'it is TopoJSON: export it as GeoJSON' },
      },
    ]);
  });
});
