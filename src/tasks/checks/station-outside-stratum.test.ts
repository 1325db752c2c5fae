import { expect, test } from 'vitest';
import { areaRecord, withMap } from './map-sketch.ts';
import { check } from './station-outside-stratum.ts';
import { foundBy, type SurveySketch, stationAt } from './survey-sketch.ts';

const unplanned = (sketch: SurveySketch) => {
  for (const one of sketch.stations)
    Object.assign(one, { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
};

test('a station in the polygon of its stratum is left in peace, and so is a book without a map', () => {
  expect(foundBy(check, withMap)).toEqual([]);
  expect(foundBy(check)).toEqual([]);
});

test('a station put down for the wrong stratum is told where it lies, and how far off (error 19)', () => {
  const found = foundBy(check, (sketch) => {
    withMap(sketch);
    stationAt(sketch, 'S8').stratumId = stationAt(sketch, 'S12').stratumId;
  });
  // By hand: S8 lies at 177.42797 E, the slope begins at 177.43801 E: 0.01004 degrees of 106.04 km at 17.77 S, 1 065 m.
  expect(found).toMatchObject([
    {
      place: { station: 'S8' },
      value: '-17.77090, 177.42797',
      suggestion: 'flat',
      parameters: { stratum: 'slope', inside: 'flat', none: '', distance: '1.1 km' },
    },
  ]);
});

test('in no stratum at all, the one usual slip that leads back is shown', () => {
  const found = foundBy(check, (sketch) => {
    withMap(sketch);
    unplanned(sketch);
    // 17.7529 with two decimals exchanged: 3 km north, too near the others to be asked about otherwise.
    stationAt(sketch, 'S2').latitudeDeg = -17.7259;
  });
  // By hand: the flat begins at 17.74 S, 0.0141 degree of 110.66 km away: 1 560 m.
  expect(found).toMatchObject([
    {
      place: { station: 'S2' },
      suggestion: null,
      parameters: { none: 'none', inside: '', distance: '1.6 km', correction: '-17.75290' },
    },
  ]);
});

test('what a slip explains is asked as that slip, not twice', () => {
  const found = foundBy(check, (sketch) => {
    withMap(sketch);
    stationAt(sketch, 'S1').latitudeDeg = -17.57;
  });
  expect(found).toEqual([]);
});

test('a few metres outside are no question', () => {
  const found = foundBy(check, (sketch) => {
    // S10 lies at 17.77690 S; 0.0001 degree beyond the border is 11 m.
    sketch.maps.push(areaRecord('flat', 'stratum', [177.39, -17.7768, 177.438, -17.74]));
  });
  expect(found).toEqual([]);
});
