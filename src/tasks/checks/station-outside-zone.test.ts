import { expect, test } from 'vitest';
import { areaRecord } from './map-sketch.ts';
import { check } from './station-outside-zone.ts';
import { foundBy, type SurveySketch } from './survey-sketch.ts';

const zones = (sketch: SurveySketch) => {
  sketch.maps.push(
    areaRecord('closed', 'zone', [177.39, -17.8, 177.42, -17.7]),
    areaRecord('open', 'zone', [177.42, -17.8, 177.5, -17.7]),
  );
  // S6 lies at 177.41997 E, three metres west of the line.
  sketch.stations.forEach((one, i) => {
    one.zone = i < 6 ? 'closed' : 'open';
  });
};

test('a station in its zone is left in peace', () => {
  expect(foundBy(check, zones)).toEqual([]);
});

test('a station of the other zone is asked about', () => {
  const found = foundBy(check, (sketch) => {
    zones(sketch);
    sketch.stations[0]!.zone = 'open';
  });
  // By hand: 177.42 - 177.39997 = 0.02003 degrees of 106.0 km: 2.1 km.
  expect(found).toMatchObject([
    { place: { station: 'S1' }, suggestion: 'closed', parameters: { zone: 'open', distance: '2.1 km' } },
  ]);
});
