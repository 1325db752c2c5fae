/** Readers of maps meet whatever a stick or a mail brings: the answer is findings, never a crash. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkArea } from '../../planning/ground/check-area.ts';
import { boxArea } from '../../planning/ground/test-areas.ts';
import { readGeoJson } from './geojson.ts';
import { readGpx } from './gpx.ts';
import { readKml } from './kml.ts';
import { writeGeoJson } from './write-geojson.ts';

const geojson = writeGeoJson([{ name: 'a', area: boxArea(177, -17.1, 177.1, -17), properties: { b: 1 } }]);
const kml =
  '<kml><Placemark><name>a</name><Polygon><outerBoundaryIs><LinearRing><coordinates>1,2 3,4 5,6 1,2</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark></kml>';
const gpx = '<gpx><wpt lat="1" lon="2"><name>a</name></wpt><rte><rtept lat="1" lon="2"/></rte></gpx>';

/** A text with one stretch replaced by something else. */
const wounded = (text: string) =>
  fc
    .tuple(fc.nat(text.length), fc.nat(12), fc.string({ maxLength: 8, unit: 'binary' }))
    .map(([at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut));

test.each([
  ['GeoJSON', geojson, readGeoJson],
  ['KML', kml, readKml],
  ['GPX', gpx, readGpx],
] as const)('a wounded %s file is read or refused', (_, text, read) => {
  fc.assert(
    fc.property(wounded(text), (broken) => {
      const { findings } = read(broken);
      for (const finding of findings) expect(finding.code).toBeTypeOf('string');
    }),
    { numRuns: 400, seed: 5 },
  );
});

test('checks accept any JSON that could be read as a polygon', () => {
  const number = fc.oneof(
    fc.double({ noNaN: true, min: -400, max: 400 }),
    fc.constantFrom(0, 90, -90, 180, -180, 1e300),
  );
  const ring = fc.array(fc.tuple(number, number), { maxLength: 8 });
  fc.assert(
    fc.property(fc.array(ring, { maxLength: 3 }), (coordinates) => {
      for (const { name, area } of readGeoJson(JSON.stringify({ type: 'Polygon', coordinates })).value) {
        for (const finding of checkArea({ name, area, typedAreaHa: 10 })) {
          for (const value of Object.values(finding.parameters)) expect(value).not.toBeNaN();
        }
      }
    }),
    { numRuns: 500, seed: 5 },
  );
});
