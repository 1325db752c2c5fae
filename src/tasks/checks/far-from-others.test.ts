import { expect, test } from 'vitest';
import { check } from './far-from-others.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const unplanned = (...far: string[]) =>
  foundBy(check, (sketch) => {
    for (const one of sketch.stations)
      Object.assign(one, { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
    for (const code of far) stationAt(sketch, code).latitudeDeg! -= 0.5;
  });

test('one station a hundred kilometres from all the others is asked about', () => {
  expect(unplanned('S6')).toMatchObject([{ place: { station: 'S6' }, suggestion: null }]);
});

test('two stations out there are a second island', () => {
  expect(unplanned('S6', 'S7')).toEqual([]);
  expect(unplanned()).toEqual([]);
});
