import { expect, test } from 'vitest';
import { areaRecord } from './map-sketch.ts';
import { check } from './station-at-border.ts';
import { foundBy } from './survey-sketch.ts';

test('eleven metres outside are a note: a receiver cannot tell them', () => {
  const found = foundBy(check, (sketch) => {
    // S10 lies at 17.77690 S, 0.0001 degree beyond this border: 11.07 m.
    sketch.maps.push(areaRecord('flat', 'stratum', [177.39, -17.7768, 177.438, -17.74]));
  });
  expect(found).toMatchObject([
    { severity: 'note', place: { station: 'S10' }, parameters: { where: '11 m outside stratum flat' } },
  ]);
});

test('forty metres are more than a note', () => {
  const found = foundBy(check, (sketch) => {
    sketch.maps.push(areaRecord('flat', 'stratum', [177.39, -17.77654, 177.438, -17.74]));
  });
  expect(found).toEqual([]);
});
