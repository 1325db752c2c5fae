import { expect, test } from 'vitest';
import { check } from './depth-outside-stratum.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const at = (depthM: number) =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S2').depthM = depthM;
  });

test('21 m on a flat of 1 to 4 m is asked about', () => {
  expect(at(21)).toMatchObject([
    { place: { station: 'S2' }, value: 21, parameters: { stratum: 'flat', range: '1 to 4 m' } },
  ]);
});

test('a metre and a half of tide is let pass', () => {
  expect(at(5.4)).toEqual([]);
});
