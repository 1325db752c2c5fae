import { expect, test } from 'vitest';
import { check } from './fewer-transects-than-planned.ts';
import { foundBy, stationAt, transectAt } from './survey-sketch.ts';

const drop = (note: string | null) =>
  foundBy(check, (sketch) => {
    sketch.transects.splice(sketch.transects.indexOf(transectAt(sketch, 'S2', '3')), 1);
    stationAt(sketch, 'S2').note = note;
  });

test('a belt that nobody mentions is asked about; a note of the station explains it', () => {
  expect(drop(null)).toMatchObject([{ place: { station: 'S2' }, value: 2, parameters: { missing: 1 } }]);
  expect(drop('dive ended early')).toEqual([]);
});
