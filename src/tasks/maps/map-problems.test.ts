import { expect, test } from 'vitest';
import { sentence } from '../../report/catalogue/sentence.ts';
import { mapFinding } from '../../survey/map-area.ts';
import { mapProblems } from './map-problems.ts';

const said = (...finding: Parameters<typeof mapFinding>) => {
  const [problem] = mapProblems([mapFinding(...finding)], 'reef.geojson');
  return sentence('en', problem!);
};

test('numbers become words a person can look up in the file', () => {
  expect(said('open-ring', 'flat', { part: 2, ring: 1, gapM: 41.7 })).toBe(
    'reef.geojson: area flat: piece 2, hole 1: the border ends 41.7 m from where it began; it was closed with a straight line: is that right?',
  );
  expect(
    said('latitude-impossible', 'flat', { part: 1, ring: 0, point: 3, latitudeDeg: 95.5, longitudeDeg: 177 }),
  ).toBe(
    'reef.geojson: area flat: piece 1, point 3: a latitude of 95.50000 cannot be: latitudes end at 90 degrees; are latitude and longitude exchanged? Map files have longitude first',
  );
  expect(
    said('gap-sliver', null, { areaHa: 0.123, widthM: 1.5, latitudeDeg: -17.01, longitudeDeg: 177.02 }),
  ).toBe(
    'reef.geojson: a strip 1.5 m wide on average (0.123 ha) at 17° 00.600′ S, 177° 01.200′ E lies between the areas and belongs to none',
  );
  expect(said('not-an-area', null, { kind: 'line', count: 2 })).toContain('left out: 2 lines;');
  expect(said('map-too-large', null, { letters: 250_000_000, limit: 200_000_000 })).toMatch(
    /250.000.000|250000000/,
  );
});

test('the unit an area was typed in is asked by its sign', () => {
  const typed = { typedHa: 2.5, mapHa: 250, factor: 100 };
  expect(said('area-typed-differs', 'flat', { ...typed, unit: 'km2' })).toContain(
    '100 times that (typed in km²?)',
  );
  expect(said('area-typed-differs', 'flat', { ...typed, unit: 'unknown' })).toContain(
    '100 times that; the map stands',
  );
});

test('a GPX file with a fault is told in words of waypoints, and what a library said stays on one line', () => {
  expect(said('position-not-understood', 'WA01', { kind: 'wpt', point: 3 })).toContain(
    ': waypoint WA01, point 3: a position here',
  );
  const torn = said('map-not-understood', null, { format: 'GPX', detail: 'SyntaxError: no end\nof it' });
  expect(torn).toContain('no GPX that can be read (no end); save it again');
  expect(torn).toContain('waypoints as GPX');
});
