import { expect, test } from 'vitest';
import { nearestName } from './nearest-name.ts';

const species = ['Holothuria atra', 'Holothuria edulis', 'Stichopus chloronotus'];

// Authority of every expected name: by hand, counting the letters that differ.
const cases: readonly (readonly [string, readonly string[], string | null])[] = [
  ['Holothuria attra', species, 'Holothuria atra'],
  ['holothuria  ATRA', species, 'Holothuria atra'],
  ['Length MM', ['length_m', 'length_mm'], 'length_mm'],
  ['Acropora', species, null],
  ['cuonts', ['counts', 'lengths'], 'counts'],
  ['cuont', ['n', 'count'], 'count'],
  ['S1', ['S2', 'S3'], null],
  ['Holothuria scabra', species, null],
  ['---', species, null],
  ['Te Ākau', ['Te Akau'], 'Te Akau'],
];

test.each(cases)('%s is taken for the nearest known name, or for none', (written, known, expected) => {
  expect(nearestName(written, known)).toBe(expected);
});

test('of two equally near names the first listed is suggested', () => {
  expect(nearestName('reef c', ['reef a', 'reef b'])).toBe('reef a');
});
