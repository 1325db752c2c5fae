import { expect, test } from 'vitest';
import { areaRecord, withMap } from './map-sketch.ts';
import { check } from './station-on-mask.ts';
import { foundBy } from './survey-sketch.ts';

test('a station on land is asked about, with how deep inside it lies', () => {
  const found = foundBy(check, (sketch) => {
    withMap(sketch);
    // S2 lies at 17.75290 S 177.40397 E; the island ends 0.001 degree to its south: 111 m.
    sketch.maps.push(areaRecord('islet', 'mask', [177.4, -17.7539, 177.408, -17.75], 'land'));
  });
  expect(found.map(({ place }) => place.station)).toContain('S2');
  expect(found.find(({ place }) => place.station === 'S2')).toMatchObject({
    parameters: { mask: 'mask islet', reason: 'land', distance: '111 m' },
  });
});

test('no mask, no question', () => {
  expect(foundBy(check, withMap)).toEqual([]);
});
