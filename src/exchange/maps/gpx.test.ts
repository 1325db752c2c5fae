import { describe, expect, test } from 'vitest';
import { positionAfter } from '../../planning/ground/geodesic.ts';
import { type GpxContent, type GpxPoint, readGpx, writeGpx } from './gpx.ts';
import { closestApproach, matchWaypoints } from './match-waypoints.ts';
import { shortNames } from './short-names.ts';

const point = (
  name: string | null,
  latitudeDeg: number,
  longitudeDeg: number,
  time: string | null = null,
): GpxPoint => ({
  position: { latitudeDeg, longitudeDeg },
  name,
  description: null,
  time,
});

const content: GpxContent = {
  waypoints: [
    { ...point('S01', -17.75, 177.4, '2026-03-01T21:00:00Z'), description: 'back reef <A> & "B"' },
    point(null, -17.7493, -179.9999999),
  ],
  routes: [{ name: 'Day 1', points: [point('S01', -17.75, 177.4), point('S02', -17.76, 177.41)] }],
  tracks: [
    {
      name: 'Boat',
      segments: [[point(null, -17.75, 177.4, '2026-03-01T21:00:00Z')], [point(null, -17.8, 177.5)]],
    },
  ],
};

describe('GPX', () => {
  test('comes back as it went out', () => {
    expect(readGpx(writeGpx(content))).toEqual({ value: content, findings: [] });
  });

  test('from a receiver of version 1.0 with extensions is read', () => {
    const text = `<gpx version="1.0" creator="receiver" xmlns:x="urn:x"><wpt lat="-17.75" lon="177.4"><ele>0</ele><name>001</name><extensions><x:depth>4</x:depth></extensions></wpt></gpx>`;
    expect(readGpx(text).value.waypoints).toEqual([point('001', -17.75, 177.4)]);
  });

  test('leaves out a point that cannot be one, and names it', () => {
    const text =
      '<gpx><wpt lat="-17.75" lon="777"><name>A</name></wpt><wpt lon="1"/><wpt lat="1e1" lon="2"/></gpx>';
    const { value, findings } = readGpx(text);
    expect(value.waypoints).toHaveLength(1);
    expect(findings).toMatchObject([
      { code: 'position-not-understood', where: 'A', parameters: { kind: 'wpt', point: 1 } },
      { code: 'position-not-understood', where: null, parameters: { kind: 'wpt', point: 2 } },
    ]);
  });

  test('that is something else, or declares entities, is a finding', () => {
    const codes = (text: string) => readGpx(text).findings.map(({ code }) => code);
    expect(codes('<kml/>')).toEqual(['map-not-understood']);
    expect(codes('latitude,longitude\n1,2')).toEqual(['map-not-understood']);
    expect(codes('<!DOCTYPE gpx><gpx/>')).toEqual(['map-with-entities']);
    expect(codes('<gpx/>')).toEqual([]);
  });
});

describe('names for a handheld', () => {
  // By hand, six places: a code that fits stays; the figures at the end are kept; doubles get a number.
  test('are short, plain and each given once', () => {
    const codes = [
      'Lagoon North 12',
      'LAGO12',
      'S-01',
      'S01',
      'Lagoon North 13',
      'Lagune été',
      '×××',
      'Lagoon South 12',
    ];
    expect(Object.fromEntries(shortNames(codes, 6))).toEqual({
      'Lagoon North 12': 'LAGO11',
      LAGO12: 'LAGO12',
      'S-01': 'S011',
      S01: 'S01',
      'Lagoon North 13': 'LAGO13',
      'Lagune été': 'LAGUNE',
      '×××': '1',
      'Lagoon South 12': 'LAGO14',
    });
  });

  test.each([3, 6, 10])('are unique and no longer than %s for 500 stations', (length) => {
    const codes = Array.from({ length: 500 }, (_, i) => `Outer slope of the northern passage ${i}`);
    const names = [...shortNames(codes, length).values()];
    expect(new Set(names).size).toBe(500);
    for (const name of names) expect(name).toMatch(new RegExp(`^[A-Z0-9]{1,${length}}$`));
  });
});

describe('waypoints and stations', () => {
  const plan = { latitudeDeg: -17.75, longitudeDeg: 177.4 };
  const east = (distanceM: number) => positionAfter(plan, { bearingDeg: 90, distanceM });
  const stations = [
    { code: 'S-01', shortName: 'S01', position: plan },
    { code: 'S-02', shortName: 'S02', position: east(1000) },
    { code: 'S-03', shortName: null, position: east(2000) },
  ];
  const at = (name: string | null, distanceM: number): GpxPoint => ({
    ...point(name, 0, 0),
    position: east(distanceM),
  });

  // By hand: 30 m and 5000 m from plan by name; the nameless one 20 m from S-03; the last is nobody's.
  test('meet by name whatever the distance, then by nearness', () => {
    const waypoints = [at('s01', 30), at('S-02', 6000), at(null, 2020), at('002', 500), at('S01', 300)];
    const { matches, stationsWithout, waypointsWithout } = matchWaypoints(stations, waypoints, 100);
    expect(matches.map(({ code, by, distanceM }) => [code, by, Math.round(distanceM)])).toEqual([
      ['S-01', 'name', 30],
      ['S-02', 'name', 5000],
      ['S-03', 'nearness', 20],
    ]);
    expect(stationsWithout).toEqual([]);
    expect(waypointsWithout.map(({ name }) => name)).toEqual(['002', 'S01']);
  });

  test('that are too far from each other stay alone', () => {
    const { matches, stationsWithout } = matchWaypoints(stations, [at(null, 101)], 100);
    expect(matches).toEqual([]);
    expect(stationsWithout).toEqual(['S-01', 'S-02', 'S-03']);
  });

  test('a track tells where the boat came nearest', () => {
    const found = closestApproach([[at(null, 400), at('b', 40)], [at(null, 90)]], plan)!;
    expect(found.point.name).toBe('b');
    expect(Math.round(found.distanceM)).toBe(40);
    expect(closestApproach([], plan)).toBeNull();
  });
});
