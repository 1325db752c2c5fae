import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import type { MapArea, MapFinding } from '../../survey/map-area.ts';
import { areaHaOf } from './area-size.ts';
import { checkArea } from './check-area.ts';
import { areaOf, boxArea, ringOf, wavyArea } from './test-areas.ts';

const check = (area: MapArea, typedAreaHa: number | null = null) =>
  checkArea({ name: 'back reef', area, typedAreaHa });
const codes = (findings: readonly MapFinding[]) => findings.map(({ code }) => code);
const box = boxArea(177, -17.1, 177.1, -17);

describe('an area', () => {
  test('that is sound is not questioned, and neither is one across the date line', () => {
    expect(check(box, areaHaOf(box))).toEqual([]);
    expect(check(boxArea(179.9, -17.1, -179.9, -17))).toEqual([]);
    expect(check(wavyArea(4000, { latitudeDeg: -17, longitudeDeg: 180 }, 0.1))).toEqual([]);
  });

  test('without parts is none', () => {
    expect(codes(check({ parts: [] }))).toEqual(['no-area-in-map']);
  });

  // By hand: 0.1 degree of latitude at 17 S is about 11.07 km.
  test('whose ring is open has a gap', () => {
    const [finding] = check(areaOf(box.parts[0]!.outer.slice(0, -1)));
    expect(finding).toMatchObject({ code: 'open-ring', severity: 'explain', where: 'back reef' });
    near(finding!.parameters['gapM'] as number, 11_065, 0.001);
  });

  test('of two points is no area', () => {
    const [finding] = check(areaOf(ringOf([177, -17], [177.1, -17], [177, -17])));
    expect(finding).toMatchObject({ code: 'too-few-points', parameters: { part: 1, ring: 0, points: 2 } });
  });

  test('with a point twice is noted', () => {
    const twice = areaOf(ringOf([177, -17], [177.1, -17], [177.1, -17], [177.1, -17.1]));
    expect(check(twice)).toMatchObject([{ code: 'repeated-points', parameters: { count: 1, first: 3 } }]);
  });

  // By hand: the bow tie crosses at its middle.
  test('that crosses itself is a stop, with the place', () => {
    const bowTie = areaOf(ringOf([179.9, -17.1], [-179.9, -17], [-179.9, -17.1], [179.9, -17]));
    const [finding] = check(bowTie);
    expect(finding).toMatchObject({ code: 'self-crossing', severity: 'stop', parameters: { crossings: 1 } });
    near(finding!.parameters['latitudeDeg'] as number, -17.05, 1e-9);
    near(Math.abs(finding!.parameters['longitudeDeg'] as number), 180, 1e-9);
  });

  test('with a hole outside is a stop', () => {
    const misplaced = areaOf(box.parts[0]!.outer, boxArea(178, -17.1, 178.1, -17).parts[0]!.outer);
    expect(codes(check(misplaced))).toEqual(['hole-outside']);
  });

  // By hand: of two boxes 0.02 degrees wide, half of each lies over the other.
  test('whose pieces lie over each other is a stop, with the hectares that would count twice', () => {
    const [one, other] = [boxArea(177.4, -17.8, 177.42, -17.78), boxArea(177.41, -17.8, 177.43, -17.78)];
    const both = { parts: [...one.parts, ...other.parts] };
    const [finding] = check(both);
    expect(finding).toMatchObject({ code: 'pieces-overlap', severity: 'stop' });
    expect(finding!.parameters).toMatchObject({ first: 1, second: 2, pairs: 1 });
    near(finding!.parameters['areaHa'] as number, areaHaOf(one) / 2, 1e-4);
    // A mask is joined before it is taken off: nothing is counted twice there.
    expect(checkArea({ name: 'islets', area: both, typedAreaHa: null, isJoined: true })).toEqual([]);
  });

  test('whose pieces share a border, or of which one lies in the hole of the other, is sound', () => {
    const [one, other] = [boxArea(177.4, -17.8, 177.42, -17.78), boxArea(177.42, -17.8, 177.43, -17.78)];
    expect(check({ parts: [...one.parts, ...other.parts] })).toEqual([]);
    const lagoon = boxArea(177.41, -17.795, 177.415, -17.785).parts[0]!.outer;
    const ring = areaOf(one.parts[0]!.outer, lagoon);
    expect(check({ parts: [...ring.parts, { outer: lagoon, holes: [] }] })).toEqual([]);
  });

  // By hand: half of the hole lies east of the border; the second hole lies with half of it in the first.
  test('with a hole across its border or another hole is a stop, with the hectares', () => {
    const outer = boxArea(177.4, -17.8, 177.42, -17.78).parts[0]!.outer;
    const hole = boxArea(177.41, -17.795, 177.43, -17.785);
    const [across] = check(areaOf(outer, hole.parts[0]!.outer));
    expect(across).toMatchObject({ code: 'hole-overlap', parameters: { part: 1, ring: 1 } });
    near(across!.parameters['areaHa'] as number, areaHaOf(hole) / 2, 1e-4);
    const [first, second] = [177.402, 177.404].map((west) => boxArea(west, -17.795, west + 0.004, -17.785));
    const [twice] = check(areaOf(outer, first!.parts[0]!.outer, second!.parts[0]!.outer));
    expect(twice).toMatchObject({ code: 'hole-overlap', parameters: { part: 1, ring: 2 } });
    near(twice!.parameters['areaHa'] as number, areaHaOf(second!) / 2, 1e-4);
  });

  test('with all coordinates exchanged is a stop', () => {
    const flipped = areaOf(
      box.parts[0]!.outer.map((p) => ({ latitudeDeg: p.longitudeDeg, longitudeDeg: p.latitudeDeg })),
    );
    expect(check(flipped)).toMatchObject([{ code: 'swapped-coordinates', parameters: { points: 4 } }]);
  });

  test('with one point exchanged says which', () => {
    const ring = ringOf([43, 12], [43.1, 12], [12.05, 43.1], [43.1, 12.1], [43, 12.1]);
    const [finding] = check(areaOf(ring));
    expect(finding).toMatchObject({
      code: 'swapped-coordinates',
      parameters: { part: 1, ring: 0, point: 3 },
    });
    expect(finding!.parameters['awayKm']).toBeGreaterThan(4000);
    expect(finding!.parameters['exchangedKm']).toBeLessThan(20);
    const impossible = ringOf([177, -17], [177.1, -17], [-17.05, 177.1], [177.1, -17.1], [177, -17.1]);
    expect(check(areaOf(impossible))).toMatchObject([
      { code: 'swapped-coordinates', parameters: { point: 3 } },
    ]);
  });

  test('with a latitude that no exchange explains is a stop', () => {
    expect(codes(check(areaOf(ringOf([177, -17], [177.1, -17], [177.1, -171]))))).toEqual([
      'latitude-impossible',
    ]);
  });

  // By hand: 1 degree (about 106 km) by 0.00001 degrees (1.1 m).
  test('thinner than a belt is a sliver', () => {
    const [finding] = check(boxArea(177, -17.00001, 178, -17));
    expect(finding).toMatchObject({ code: 'sliver', severity: 'note' });
    expect(finding!.parameters['widthM']).toBeLessThan(20);
  });
});

describe('an area typed', () => {
  const mapHa = areaHaOf(box);
  // By hand: 11 780 ha are 117.8 km2, 117.8 million m2, 29 100 acres (2.471 to the hectare).
  test.each([
    { typedHa: mapHa / 100, unit: 'km2', factor: 100 },
    { typedHa: mapHa * 10_000, unit: 'm2', factor: 0.0001 },
    { typedHa: mapHa * 2.4710538, unit: 'acre', factor: 0.40468564 },
    { typedHa: mapHa / 342.99, unit: 'nm2', factor: 342.99 },
    { typedHa: mapHa / 3, unit: 'unknown', factor: 3 },
  ])('in $unit instead of hectares is asked about', ({ typedHa, unit, factor }) => {
    const [finding] = check(box, typedHa);
    expect(finding).toMatchObject({ code: 'area-typed-differs', parameters: { typedHa, mapHa, unit } });
    near(finding!.parameters['factor'] as number, factor, 1e-7);
  });

  test('a few per cent off is how maps are', () => {
    expect(check(box, mapHa * 1.04)).toEqual([]);
    expect(codes(check(box, mapHa * 1.06))).toEqual(['area-typed-differs']);
  });
});
