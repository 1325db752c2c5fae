import { expect, test } from 'vitest';
import { check } from './species-outside-habitat.ts';
import { foundBy } from './survey-sketch.ts';

const lives = (...habitats: string[]) =>
  foundBy(check, (sketch) => {
    sketch.species[0]!.habitats = habitats;
  });

test('a species outside its habitats is asked about once for each stratum', () => {
  expect(lives('Reef Flat')).toMatchObject([
    {
      place: { species: 'sandfish' },
      value: 'reef slope',
      parameters: { stratum: 'slope', where: 'S11, S12' },
    },
  ]);
});

test('a species without a list lives anywhere', () => {
  expect(lives()).toEqual([]);
});
