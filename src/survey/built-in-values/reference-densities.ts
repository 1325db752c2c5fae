/**
 * Published densities. Each names how the animals were counted: a density of one method says nothing about another.
 *
 * The regional ones are from memory throughout and are to be checked against Pakoa et al. 2014 before anybody leans on
 * them. Left out: numbers without a place or a way of counting, ranges over all species, relative densities, queen conch,
 * juvenile trochus on a flat, and the rule of thumb of 10 to 50 animals per hectare for spawning (its source holds no number).
 */

import type { CountMethod } from '../value-words.ts';
import type { BuiltInValue } from './built-in-value.ts';

const regional = 'Pakoa, Friedman, Moore, Tardy and Bertram 2014, Assessing tropical marine invertebrates';
const shiell =
  'Shiell 2004, Density of Holothuria nobilis and distribution patterns of common holothurians on coral reefs of north-western Australia, FAO Fisheries Technical Paper 463';

export const referenceDensities: readonly BuiltInValue[] = [
  regionalBelts('Actinopyga lecanora', 10),
  regionalBy('reef-front search', 'Actinopyga mauritiana', 200),
  regionalBelts('Actinopyga miliaris', 150),
  regionalBelts('Bohadschia argus', 120),
  regionalBelts('Bohadschia vitiensis', 100),
  regionalBelts('Holothuria atra', 5600),
  regionalBelts('Holothuria coluber', 1100),
  regionalBelts('Holothuria edulis', 260),
  regionalBy('deep dive', 'Holothuria fuscogilva', 20),
  regionalBelts('Holothuria fuscopunctata', 10),
  regionalBelts('Holothuria whitmaei', 50),
  regionalBelts('Pearsonothuria graeffei', 100),
  regionalBelts('Stichopus chloronotus', 3500),
  regionalBelts('Stichopus herrmanni', 100),
  regionalBelts('Thelenota ananas', 30),
  regionalBelts('Holothuria scabra', 700, 'soft bottom'),
  regionalBy('towed observer', 'Bohadschia argus', 50),
  regionalBy('towed observer', 'Bohadschia vitiensis', 160),
  regionalBy('towed observer', 'Holothuria atra', 2400),
  regionalBy('towed observer', 'Holothuria edulis', 250),
  regionalBy('towed observer', 'Holothuria fuscopunctata', 10),
  regionalBy('towed observer', 'Holothuria whitmaei', 10),
  regionalBy('towed observer', 'Pearsonothuria graeffei', 50),
  regionalBy('towed observer', 'Stichopus chloronotus', 1000),
  regionalBy('towed observer', 'Stichopus herrmanni', 130),
  regionalBy('towed observer', 'Thelenota ananas', 10),
  regionalBy('towed observer', 'Thelenota anax', 20),
  {
    species: ['Rochia nilotica'],
    status: 'memory',
    source: 'country reports on trochus',
    note: 'the lower end of the 500 to 600 that is usually given',
    content: {
      what: 'reference-density',
      densityPerHa: 500,
      cv: null,
      method: 'belts',
      beltWidthM: null,
      place: 'Pacific Islands',
      meaning: 'density below which commercial harvest is advised against',
    },
  },
  seen('Rowley Shoals, north-western Australia', 9.1),
  seen('Ningaloo Reef, Western Australia, lower of two', 19.3),
  seen('Ningaloo Reef, Western Australia, higher of two', 27.2),
];

function regionalBelts(species: string, densityPerHa: number, where = 'reef'): BuiltInValue {
  return regionalDensity(species, densityPerHa, {
    method: 'belts',
    beltWidthM: 1,
    place: `Pacific Islands, ${where}, six belts of 40 m at a station`,
  });
}

/** Deep dives, reef-front searches and towed observers do not stand for shallow belts. */
function regionalBy(
  method: Exclude<CountMethod, 'belts'>,
  species: string,
  densityPerHa: number,
): BuiltInValue {
  const towed = method === 'towed observer';
  return regionalDensity(species, densityPerHa, {
    method,
    beltWidthM: towed ? 2 : null,
    place: towed ? 'Pacific Islands, tows of 300 m' : 'Pacific Islands',
  });
}

function regionalDensity(
  species: string,
  densityPerHa: number,
  counted: { readonly method: CountMethod; readonly beltWidthM: number | null; readonly place: string },
): BuiltInValue {
  return {
    species: [species],
    status: 'memory',
    source: regional,
    content: {
      what: 'reference-density',
      densityPerHa,
      cv: null,
      ...counted,
      meaning: 'density of a healthy stock: the upper quarter of the sites surveyed',
    },
  };
}

/** Printed for Holothuria nobilis, as the Pacific black teatfish was called then. */
function seen(place: string, densityPerHa: number): BuiltInValue {
  return {
    species: ['Holothuria whitmaei'],
    status: 'read',
    source: shiell,
    content: {
      what: 'reference-density',
      densityPerHa,
      cv: null,
      method: 'not stated',
      beltWidthM: null,
      place,
      meaning: 'density of an unfished stock',
    },
  };
}
