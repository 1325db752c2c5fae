/**
 * Legal minimum sizes as countries once wrote them. Laws change and most of these are from memory: they show what such a
 * rule looks like, enter no answer, and are to be replaced by the national schedule. Left out: rules without a number,
 * numbers of low confidence or given in two ways (most trochus and giant clam rules, later changes of Queensland and Torres
 * Strait), and one printed dried limit that equals the live one (stonefish, Papua New Guinea).
 */

import type { BuiltInValue } from './built-in-value.ts';

const catalogue =
  'Purcell, Samyn and Conand 2012, Commercially important sea cucumbers of the world, FAO species catalogue 6';

export const sizeLimitExamples: readonly BuiltInValue[] = [
  example('Actinopyga mauritiana', 'read', `${catalogue}, page 19`, {
    minimumMm: 200,
    minimumDriedMm: 80,
    maximumMm: null,
    place: 'Papua New Guinea (before moratorium)',
  }),
  example('Actinopyga mauritiana', 'read', `${catalogue}, page 19`, {
    minimumMm: 250,
    minimumDriedMm: 120,
    maximumMm: null,
    place: 'New Caledonia',
  }),
  example('Actinopyga mauritiana', 'read', `${catalogue}, page 19`, {
    minimumMm: 250,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Queensland (Great Barrier Reef)',
  }),
  example('Holothuria fuscopunctata', 'read', `${catalogue}, page 57`, {
    minimumMm: 450,
    minimumDriedMm: 150,
    maximumMm: null,
    place: 'Papua New Guinea (before moratorium)',
  }),
  example('Holothuria fuscopunctata', 'read', `${catalogue}, page 57`, {
    minimumMm: 240,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Torres Strait (Australia)',
  }),
  example('Rochia nilotica', 'read', 'Queensland Government, Trochus fishery profile', {
    minimumMm: 80,
    minimumDriedMm: null,
    maximumMm: 125,
    place: 'Queensland',
  }),
  example('Rochia nilotica', 'read', 'Foale and Day 1997, Fisheries Research 33, 1-16', {
    minimumMm: 80,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Solomon Islands',
  }),
  example(
    'Holothuria scabra',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 180, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example(
    'Actinopyga mauritiana',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 220, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example(
    'Holothuria whitmaei',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 250, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example(
    'Holothuria fuscogilva',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 320, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example(
    'Holothuria atra',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 150, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example(
    'Actinopyga echinites',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 120, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example(
    'Actinopyga miliaris',
    'memory',
    'Torres Strait sea cucumber size limits (older schedule; later raised for some species)',
    { minimumMm: 220, minimumDriedMm: null, maximumMm: null, place: 'Torres Strait (Australia)' },
  ),
  example('Holothuria whitmaei', 'memory', 'Queensland licence conditions', {
    minimumMm: 300,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Queensland',
  }),
  example('Holothuria scabra', 'memory', 'Queensland licence conditions', {
    minimumMm: 200,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Queensland',
  }),
  example('Stichopus herrmanni', 'memory', 'Queensland licence conditions', {
    minimumMm: 350,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Queensland',
  }),
  example('Holothuria fuscopunctata', 'memory', 'Queensland licence conditions', {
    minimumMm: 400,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'Queensland',
  }),
  example('Holothuria scabra', 'memory', 'Polon 2004; Kinch et al. 2008, FAO Fisheries Technical Paper 516', {
    minimumMm: 220,
    minimumDriedMm: 100,
    maximumMm: null,
    place: 'Papua New Guinea (2001 plan)',
  }),
  example(
    'Holothuria whitmaei',
    'memory',
    'Polon 2004; Kinch et al. 2008, FAO Fisheries Technical Paper 516',
    { minimumMm: 220, minimumDriedMm: 100, maximumMm: null, place: 'Papua New Guinea (2001 plan)' },
  ),
  example(
    'Holothuria fuscogilva',
    'memory',
    'Polon 2004; Kinch et al. 2008, FAO Fisheries Technical Paper 516',
    { minimumMm: 350, minimumDriedMm: 150, maximumMm: null, place: 'Papua New Guinea (2001 plan)' },
  ),
  example(
    'Stichopus chloronotus',
    'memory',
    'Polon 2004; Kinch et al. 2008, FAO Fisheries Technical Paper 516',
    { minimumMm: 200, minimumDriedMm: 100, maximumMm: null, place: 'Papua New Guinea (2001 plan)' },
  ),
  example(
    'Stichopus herrmanni',
    'memory',
    'Polon 2004; Kinch et al. 2008, FAO Fisheries Technical Paper 516',
    { minimumMm: 250, minimumDriedMm: 100, maximumMm: null, place: 'Papua New Guinea (2001 plan)' },
  ),
  example(
    'Actinopyga lecanora',
    'memory',
    'Polon 2004; Kinch et al. 2008, FAO Fisheries Technical Paper 516',
    { minimumMm: 150, minimumDriedMm: 100, maximumMm: null, place: 'Papua New Guinea (2001 plan)' },
  ),
  example('Holothuria whitmaei', 'memory', 'New Caledonia province regulations, cited in FAO catalogue', {
    minimumMm: 300,
    minimumDriedMm: 160,
    maximumMm: null,
    place: 'New Caledonia',
  }),
  example('Holothuria fuscogilva', 'memory', 'New Caledonia province regulations, cited in FAO catalogue', {
    minimumMm: 350,
    minimumDriedMm: 160,
    maximumMm: null,
    place: 'New Caledonia',
  }),
  example('Thelenota ananas', 'memory', 'New Caledonia province regulations, cited in FAO catalogue', {
    minimumMm: 450,
    minimumDriedMm: 200,
    maximumMm: null,
    place: 'New Caledonia',
  }),
  example('Tridacna maxima', 'memory', 'French Polynesia regulation', {
    minimumMm: 120,
    minimumDriedMm: null,
    maximumMm: null,
    place: 'French Polynesia',
  }),
];

function example(
  species: string,
  status: 'read' | 'memory',
  source: string,
  numbers: {
    readonly minimumMm: number;
    readonly minimumDriedMm: number | null;
    readonly maximumMm: number | null;
    readonly place: string;
  },
): BuiltInValue {
  return {
    species: [species],
    status,
    source,
    note: 'an example; use your national schedule',
    content: { what: 'size-limit', ...numbers },
  };
}
