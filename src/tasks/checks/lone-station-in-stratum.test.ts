import { expect, test } from 'vitest';
import { check } from './lone-station-in-stratum.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

test('one station in a stratum is asked about, two are not', () => {
  const found = foundBy(check, (sketch) => {
    stationAt(sketch, 'S11').stratumId = stationAt(sketch, 'S1').stratumId;
  });
  expect(found).toMatchObject([{ value: 'slope' }]);
  expect(foundBy(check)).toEqual([]);
});
