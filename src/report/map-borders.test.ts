import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import type { MapArea } from '../survey/map-area.ts';
import { fixtureSurvey } from './report-fixture.ts';
import { stationMap } from './station-map.ts';

const stations = fixtureSurvey('2026', 77).stations;
const { latitudeDeg, longitudeDeg } = stations.find(({ record }) => record.latitudeDeg !== null)!.record;

function around(sideDeg: number, corners = 1): MapArea {
  const [south, west] = [latitudeDeg! - sideDeg / 2, longitudeDeg! - sideDeg / 2];
  const steps = Array.from({ length: corners }, (_, i) => i / corners);
  const outer = [
    ...steps.map((s) => ({ latitudeDeg: south, longitudeDeg: west + s * sideDeg })),
    ...steps.map((s) => ({ latitudeDeg: south + s * sideDeg, longitudeDeg: west + sideDeg })),
    ...steps.map((s) => ({ latitudeDeg: south + sideDeg, longitudeDeg: west + sideDeg - s * sideDeg })),
    ...steps.map((s) => ({ latitudeDeg: south + sideDeg - s * sideDeg, longitudeDeg: west })),
  ];
  return { parts: [{ outer: [...outer, outer[0]!], holes: [] }] };
}

function draw(borders: readonly MapArea[], detail: 'exact' | 'rounded' | 'none' = 'exact'): string | null {
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  const frame = { width: 680, detail, inWords: 'map', strata: [], zones: [], document, borders };
  return stationMap(stations, frame).drawing;
}

test('a border adds lines to the map, and a map without one is as it was', () => {
  expect(draw([around(0.005)])!.length).toBeGreaterThan(draw([])!.length);
});

test('a border far outside the sheet adds nothing', () => {
  expect(draw([around(30)])).toBe(draw([]));
});

test('corners that cannot be told apart do not weigh', () => {
  const weight = (corners: number) => draw([around(0.005, corners)])!.length - draw([])!.length;
  expect(weight(5000)).toBeLessThan(25_000);
});

test('no positions, no borders: the map is not drawn at all', () => {
  expect(draw([around(0.005)], 'none')).toBeNull();
});
