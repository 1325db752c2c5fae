import { describe, expect, test } from 'vitest';
import { boxArea } from '../../planning/ground/test-areas.ts';
import { readKml } from './kml.ts';

const coordinates = (west: number, south: number, size: number) =>
  boxArea(west, south, west + size, south + size)
    .parts[0]!.outer.map((p) => `${p.longitudeDeg},${p.latitudeDeg},0`)
    .join(' ');
const boundary = (name: string, text: string) =>
  `<${name}><LinearRing><coordinates>\n ${text}\n</coordinates></LinearRing></${name}>`;
const polygon = `<Polygon>${boundary('outerBoundaryIs', coordinates(177, -17.1, 0.1))}${boundary('innerBoundaryIs', coordinates(177.02, -17.08, 0.01))}</Polygon>`;
const kml = (inside: string) =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<kml xmlns="http://www.opengis.net/kml/2.2"><Document>${inside}</Document></kml>`;
const codes = (text: string) => readKml(text).findings.map(({ code }) => code);

describe('KML', () => {
  test('gives the polygons of placemarks in any folder, with holes, names and data', () => {
    const data =
      '<ExtendedData><Data name="habitat"><value>back &amp; fore reef</value></Data><SchemaData schemaUrl="#s"><SimpleData name="area_ha">117.5</SimpleData></SchemaData></ExtendedData>';
    const text = kml(
      `<Folder><name>Maps</name><Folder><Placemark><name>Reef &#233;t&#xe9;</name>${data}${polygon}</Placemark></Folder></Folder>`,
    );
    expect(readKml(text)).toEqual({
      value: [
        {
          name: 'Reef été',
          area: {
            parts: [
              {
                outer: boxArea(177, -17.1, 177 + 0.1, -17.1 + 0.1).parts[0]!.outer,
                holes: [boxArea(177.02, -17.08, 177.02 + 0.01, -17.08 + 0.01).parts[0]!.outer],
              },
            ],
          },
          properties: { habitat: 'back & fore reef', area_ha: '117.5' },
        },
      ],
      findings: [],
    });
    expect(readKml(text, { nameProperty: 'habitat' }).value[0]!.name).toBe('back & fore reef');
  });

  test('gives several polygons of one placemark as parts', () => {
    const { value } = readKml(
      kml(
        `<Placemark><name>a</name><MultiGeometry>${polygon}<MultiGeometry>${polygon}</MultiGeometry></MultiGeometry></Placemark>`,
      ),
    );
    expect(value[0]!.area.parts).toHaveLength(2);
  });

  test('leaves points and lines out and says so', () => {
    const text = kml(
      '<Placemark><Point><coordinates>177,-17</coordinates></Point></Placemark><Placemark><LineString><coordinates>1,2 3,4</coordinates></LineString></Placemark>',
    );
    expect(readKml(text).findings).toMatchObject([
      { code: 'not-an-area', parameters: { kind: 'point', count: 1 } },
      { code: 'not-an-area', parameters: { kind: 'line', count: 1 } },
      { code: 'no-area-in-map' },
    ]);
  });

  test('with prefixes and spaces after commas is read', () => {
    const text = `<k:kml xmlns:k="http://www.opengis.net/kml/2.2"><k:Placemark><k:Polygon><k:outerBoundaryIs><k:LinearRing><k:coordinates>177, -17, 0 177.1, -17, 0 177.1, -17.1, 0 177, -17, 0</k:coordinates></k:LinearRing></k:outerBoundaryIs></k:Polygon></k:Placemark></k:kml>`;
    expect(readKml(text).value[0]!.area.parts[0]!.outer).toHaveLength(4);
  });

  // The first would name a file of this machine, the second swell to gigabytes: both are refused before they are parsed.
  test.each([
    '<!DOCTYPE kml [<!ENTITY a SYSTEM "file:///etc/hostname">]><kml>&a;</kml>',
    '<!DOCTYPE kml [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><kml>&b;</kml>',
    '<?xml version="1.0"?>\n<!doctype kml>\n<kml/>',
  ])('that declares entities is refused: %s', (text) => {
    expect(codes(text)).toEqual(['map-with-entities']);
  });

  test('that is another kind of XML is called so, and not a map without areas', () => {
    const gml = '<ogr:FeatureCollection xmlns:ogr="x"><ogr:featureMember/></ogr:FeatureCollection>';
    expect(readKml(gml).findings).toMatchObject([
      {
        code: 'map-not-understood',
        parameters: { detail: 'it is XML that begins with <FeatureCollection>' },
      },
    ]);
  });

  test('that is broken is a finding and not a crash', () => {
    expect(codes('')).toEqual(['map-not-understood']);
    expect(codes('<kml><Document></kml>')).toEqual(['map-not-understood']);
    expect(codes('{"type":"Polygon"}')).toEqual(['map-not-understood']);
    expect(codes(kml(polygon))).toEqual(['no-area-in-map']);
    const nonsense = kml(
      `<Placemark><Polygon>${boundary('outerBoundaryIs', '177,-17 east,north 1,2')}</Polygon></Placemark>`,
    );
    expect(readKml(nonsense).findings).toMatchObject([
      { code: 'position-not-understood', parameters: { part: 1, ring: 0, point: 2 } },
      { code: 'no-area-in-map' },
    ]);
    expect(codes(`${'<a>'.repeat(100_000)}${'</a>'.repeat(100_000)}`)).toHaveLength(1);
    expect(
      codes(kml('<Placemark><__proto__>x</__proto__><constructor>y</constructor></Placemark>')),
    ).not.toEqual([]);
  });
});
