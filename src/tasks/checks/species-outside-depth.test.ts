import { expect, test } from 'vitest';
import { check } from './species-outside-depth.ts';
import { foundBy, tallyAt, transectAt } from './survey-sketch.ts';

const at = (depthM: number) =>
  foundBy(check, (sketch) => {
    for (const code of ['1', '2']) transectAt(sketch, 'S12', code).depthStartM = depthM;
  });

test('a species of 0 to 12 m at 19 m is asked about once for the station', () => {
  expect(at(19)).toMatchObject([
    { place: { station: 'S12', species: 'sandfish' }, value: 19, parameters: { transect: '1' } },
  ]);
  expect(at(13)).toEqual([]);
});

test('a written zero at any depth is right', () => {
  const found = foundBy(check, (sketch) => {
    transectAt(sketch, 'S12', '1').depthStartM = 19;
    Object.assign(tallyAt(sketch, 'S12', '1'), { count: 0, lengths: [] });
  });
  expect(found).toEqual([]);
});
