import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import type { StationWithTransects } from '../survey/observation.ts';
import { degreesInWords, mapSheet, middleOfLongitudes } from './map-projection.ts';
import { fixtureSurvey } from './report-fixture.ts';
import { stationMap } from './station-map.ts';

const stations = fixtureSurvey('2026', 77).stations;
const { document } = parseHTML('<!doctype html><html></html>');
const frame = {
  document,
  width: 680,
  inWords: 'eighteen stations',
  strata: ['north flat', 'lagoon seagrass', 'outer terrace'],
  zones: ['closed zone'],
};

function movedEast(station: StationWithTransects, degrees: number): StationWithTransects {
  const { longitudeDeg } = station.record;
  const east = longitudeDeg === null ? null : ((((longitudeDeg + degrees + 180) % 360) + 360) % 360) - 180;
  return { ...station, record: { ...station.record, longitudeDeg: east } };
}

test('maps look as they were looked at, rounded, exact and on a phone', async () => {
  const rounded = stationMap(stations, { ...frame, detail: 'rounded' });
  await expect(rounded.drawing).toMatchFileSnapshot('../../test/golden/map-rounded.svg');
  const phone = stationMap(stations, { ...frame, width: 328, detail: 'rounded' });
  await expect(phone.drawing).toMatchFileSnapshot('../../test/golden/map-phone.svg');
});

test('a survey across the date line is drawn in one piece', async () => {
  const across = stations.map((station) => movedEast(station, -59.73));
  const longitudes = across.flatMap((station) => station.record.longitudeDeg ?? []);
  expect(Math.max(...longitudes)).toBeGreaterThan(179);
  expect(Math.min(...longitudes)).toBeLessThan(-179);
  const { drawing } = stationMap(across, { ...frame, detail: 'exact' });
  await expect(drawing).toMatchFileSnapshot('../../test/golden/map-date-line.svg');
  // invariance: turning the globe changes no distance on the sheet
  const place = mapSheet(across.map(pointOf).filter(isPoint), { width: 680, maximumHeight: 440 });
  const before = mapSheet(stations.map(pointOf).filter(isPoint), { width: 680, maximumHeight: 440 });
  expect(place.unitsPerKm).toBeCloseTo(before.unitsPerKm, 6);
});

test('no position leaves the office when positions are kept back', () => {
  expect(stationMap(stations, { ...frame, detail: 'none' }).drawing).toBeNull();
});

test('a rounded map is the same wherever in its hundredth of a degree a station lies', () => {
  const near = {
    ...stations[0]!,
    record: { ...stations[0]!.record, latitudeDeg: -38.4312, longitudeDeg: -120.2709 },
  };
  const far = { ...near, record: { ...near.record, latitudeDeg: -38.4288, longitudeDeg: -120.2691 } };
  const drawn = (station: StationWithTransects) =>
    stationMap([station], { ...frame, detail: 'rounded' }).drawing;
  expect(drawn(near)).toBe(drawn(far));
});

test('a station without a position is named', () => {
  expect(stationMap(stations, { ...frame, detail: 'rounded' }).withoutPosition).toEqual(['S8']);
});

test('the middle of longitudes on both sides of the date line lies between them', () => {
  // by hand: 179.9 E and 179.9 W are 0.2 degrees apart
  expect(Math.abs(middleOfLongitudes([179.9, -179.9]))).toBeCloseTo(180, 9);
  expect(middleOfLongitudes([10, 20])).toBeCloseTo(15, 9);
});

test('degrees are written in degrees and minutes with their side', () => {
  expect(degreesInWords(-12.5, 'latitude')).toBe('12° 30′ S');
  expect(degreesInWords(179.99999, 'longitude')).toBe('180° 00′');
  expect(degreesInWords(-120.275, 'longitude')).toBe('120° 16.5′ W');
});

test('one kilometre north is as long on the sheet as one kilometre east', () => {
  const sheet = mapSheet([{ latitudeDeg: -60, longitudeDeg: 10 }], { width: 600, maximumHeight: 400 });
  const at = sheet.place({ latitudeDeg: -60, longitudeDeg: 10 });
  const north = sheet.place({ latitudeDeg: -59.99, longitudeDeg: 10 });
  const east = sheet.place({ latitudeDeg: -60, longitudeDeg: 10.02 });
  // by hand: at 60 degrees a degree of longitude is half a degree of latitude
  expect(east.eastKm - at.eastKm).toBeCloseTo(north.northKm - at.northKm, 6);
  // and Plot draws both on one scale: the sheet is as wide and high as its kilometres
  expect(sheet.halfEastKm * 2 * sheet.unitsPerKm).toBeCloseTo(600, 6);
  expect(sheet.halfNorthKm * 2 * sheet.unitsPerKm).toBeCloseTo(sheet.height, 6);
});

function pointOf({ record }: StationWithTransects) {
  const { latitudeDeg, longitudeDeg } = record;
  return latitudeDeg === null || longitudeDeg === null ? null : { latitudeDeg, longitudeDeg };
}

function isPoint<Point>(point: Point | null): point is Point {
  return point !== null;
}
