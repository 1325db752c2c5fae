import { expect, test } from 'vitest';
import { check } from './end-far-from-start.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const end = (endLatitudeDeg: number) =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').endLatitudeDeg = endLatitudeDeg;
  });

test('an end 20 km from the start is asked about, with the likely correction', () => {
  expect(end(-17.5748)).toMatchObject([{ place: { station: 'S1' }, suggestion: '-17.75480' }]);
  expect(end(-17.7474)).toEqual([]);
});

test('where the start is misplaced the end is not asked about again', () => {
  const found = foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').latitudeDeg = -17.57;
  });
  expect(found).toEqual([]);
});
