import { expect, test } from 'vitest';
import { check } from './hemisphere-missing.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

test('17.75 without its minus is asked about, with the minus as the likely correction', () => {
  const found = foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').latitudeDeg = 17.7499;
  });
  expect(found).toMatchObject([
    { place: { station: 'S1' }, suggestion: '-17.74990', parameters: { reference: 'plan' } },
  ]);
  expect(foundBy(check)).toEqual([]);
});

test('without plans the other stations tell, for a whole day as well', () => {
  const found = foundBy(check, (sketch) => {
    for (const one of sketch.stations)
      Object.assign(one, { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
    for (const code of ['S1', 'S2', 'S3']) stationAt(sketch, code).latitudeDeg! *= -1;
  });
  expect(found.map((one) => one.place.station)).toEqual(['S1', 'S2', 'S3']);
  expect(found[0]!.parameters.reference).toBe('the other stations');
});
