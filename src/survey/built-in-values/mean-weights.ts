/**
 * Mean weights of fresh whole animals with their mean length. Between countries those of one species differ by a factor
 * of two to five, and length was measured relaxed in one place and contracted in another: a mean weight from elsewhere
 * gives an order of magnitude. Left out: paired means of Tectus dentatus, which is not the commercial trochus.
 */

import type { BuiltInValue } from './built-in-value.ts';

const catalogue =
  'Purcell, Samyn and Conand 2012, Commercially important sea cucumbers of the world, FAO species catalogue 6';
const guide = 'Conand 1998, Holothurians, in FAO species identification guide, Western Central Pacific';

export const meanWeights: readonly BuiltInValue[] = [
  mean('Bohadschia argus', {
    status: 'read',
    source: `${catalogue}, page 28`,
    weightG: 1800,
    meanLengthMm: 360,
    place: 'Papua New Guinea',
    animals: null,
  }),
  mean('Bohadschia argus', {
    status: 'read',
    source: `${catalogue}, page 28`,
    weightG: 2000,
    meanLengthMm: 400,
    place: 'New Caledonia',
    animals: null,
  }),
  mean('Bohadschia argus', {
    status: 'read',
    source: `${catalogue}, page 28`,
    weightG: 1800,
    meanLengthMm: 400,
    place: 'India',
    animals: null,
  }),
  mean('Holothuria edulis', {
    status: 'read',
    source: `${catalogue}, page 48`,
    weightG: 200,
    meanLengthMm: 200,
    place: null,
    animals: null,
  }),
  mean('Pearsonothuria graeffei', {
    status: 'read',
    source: `${catalogue}, page 38`,
    weightG: 130,
    meanLengthMm: 170,
    place: 'Philippines',
    animals: null,
  }),
  mean('Pearsonothuria graeffei', {
    status: 'read',
    source: `${catalogue}, page 38`,
    weightG: 300,
    meanLengthMm: 300,
    place: 'Reunion',
    animals: null,
  }),
  mean('Pearsonothuria graeffei', {
    status: 'read',
    source: `${catalogue}, page 38`,
    weightG: 500,
    meanLengthMm: 300,
    place: 'Egypt',
    animals: null,
  }),
  mean('Pearsonothuria graeffei', {
    status: 'read',
    source: `${catalogue}, page 38`,
    weightG: 600,
    meanLengthMm: 300,
    place: 'India',
    animals: null,
  }),
  mean('Pearsonothuria graeffei', {
    status: 'read',
    source: `${catalogue}, page 38`,
    weightG: 700,
    meanLengthMm: 350,
    place: 'Papua New Guinea',
    animals: null,
  }),
  mean('Thelenota ananas', {
    status: 'read',
    source: `${catalogue}, page 116`,
    weightG: 1000,
    meanLengthMm: 350,
    place: 'Mauritius',
    animals: null,
  }),
  mean('Thelenota ananas', {
    status: 'read',
    source: `${catalogue}, page 116`,
    weightG: 2500,
    meanLengthMm: 450,
    place: 'Papua New Guinea',
    animals: null,
  }),
  mean('Thelenota ananas', {
    status: 'read',
    source: `${catalogue}, page 116`,
    weightG: 2600,
    meanLengthMm: 340,
    place: 'New Caledonia',
    animals: null,
  }),
  mean('Thelenota ananas', {
    status: 'read',
    source: `${catalogue}, page 116`,
    weightG: 3000,
    meanLengthMm: 450,
    place: 'India',
    animals: null,
  }),
  mean('Stichopus horrens', {
    status: 'read',
    source: `${catalogue}, page 107`,
    weightG: 110,
    meanLengthMm: 120,
    place: 'Philippines',
    animals: null,
  }),
  mean('Stichopus horrens', {
    status: 'read',
    source: `${catalogue}, page 107`,
    weightG: 200,
    meanLengthMm: 200,
    place: 'India and Papua New Guinea',
    animals: null,
  }),
  mean('Thelenota anax', {
    status: 'read',
    source: guide,
    weightG: 3500,
    meanLengthMm: 550,
    place: 'Western Central Pacific',
    animals: null,
  }),
  mean('Holothuria scabra', {
    status: 'read',
    source: guide,
    weightG: 300,
    meanLengthMm: 220,
    place: 'Western Central Pacific',
    animals: null,
  }),
  mean('Holothuria leucospilota', {
    status: 'read',
    source: 'Hashemi et al., Sarhad Journal of Agriculture 40(1), 254-262 (year not seen)',
    weightG: 421,
    meanLengthMm: 280,
    place: 'Oman Sea, males',
    animals: 121,
  }),
  mean('Holothuria leucospilota', {
    status: 'read',
    source: 'Hashemi et al., Sarhad Journal of Agriculture 40(1), 254-262 (year not seen)',
    weightG: 365,
    meanLengthMm: 250,
    place: 'Oman Sea, females',
    animals: 125,
  }),
  fromMemory('Holothuria whitmaei', 1800, 340),
  fromMemory('Holothuria fuscogilva', 2400, 400),
  fromMemory('Holothuria atra', 200, 200),
  fromMemory('Actinopyga mauritiana', 300, 200),
  fromMemory('Actinopyga miliaris', 400, 200),
  fromMemory('Actinopyga echinites', 300, 200),
  fromMemory('Actinopyga lecanora', 400, 200),
  fromMemory('Bohadschia vitiensis', 1000, 320),
  fromMemory('Stichopus chloronotus', 150, 180),
  fromMemory('Stichopus herrmanni', 1000, 350),
  fromMemory('Holothuria fuscopunctata', 1500, 360),
  fromMemory('Holothuria coluber', 300, 400),
];

interface MeanWeightSeen {
  readonly status: 'read' | 'memory';
  readonly source: string;
  readonly weightG: number;
  readonly meanLengthMm: number;
  readonly place: string | null;
  readonly animals: number | null;
}

function mean(species: string, { status, source, ...numbers }: MeanWeightSeen): BuiltInValue {
  return {
    species: [species],
    status,
    source,
    content: { what: 'mean-weight', weightState: 'live', standardErrorG: null, ...numbers },
  };
}

/** Not found in the catalogue pages that could be read: a guess at what stands there, until somebody looks. */
function fromMemory(species: string, weightG: number, meanLengthMm: number): BuiltInValue {
  return mean(species, {
    status: 'memory',
    source: catalogue,
    weightG,
    meanLengthMm,
    place: null,
    animals: null,
  });
}
