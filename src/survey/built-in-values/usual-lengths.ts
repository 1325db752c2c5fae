/**
 * Common and greatest lengths, to see whether a length or a pair is plausible. Left out: what stands on a single page
 * without an author, and numbers that sources give in two ways (greenfish, trochus height for diameter).
 */

import type { BuiltInValue } from './built-in-value.ts';

const catalogue =
  'Purcell, Samyn and Conand 2012, Commercially important sea cucumbers of the world, FAO species catalogue 6';
const guide = 'Conand 1998, Holothurians, in FAO species identification guide, Western Central Pacific';
const conand = 'Conand 1981, 1982, 1989 and 1993, New Caledonia';

type Lengths = readonly [commonMm: number | null, maximumMm: number];

export const usualLengths: readonly BuiltInValue[] = [
  usual('Bohadschia argus', [360, 600], 'read', catalogue),
  usual('Holothuria edulis', [240, 380], 'read', catalogue),
  usual('Pearsonothuria graeffei', [350, 450], 'read', catalogue),
  usual('Thelenota ananas', [450, 800], 'read', catalogue),
  usual('Thelenota anax', [550, 800], 'read', guide),
  usual('Holothuria scabra', [220, 350], 'read', guide),
  usual('Holothuria lessoni', [null, 460], 'memory', conand),
  usual('Holothuria fuscogilva', [420, 570], 'memory', conand),
  usual('Holothuria whitmaei', [340, 540], 'memory', conand),
  usual('Stichopus herrmanni', [350, 550], 'memory', conand),
];

function usual(
  species: string,
  [commonMm, maximumMm]: Lengths,
  status: 'read' | 'memory',
  source: string,
): BuiltInValue {
  return {
    species: [species],
    status,
    source,
    content: { what: 'usual-length', commonMm, maximumMm, lengthMeasure: null },
  };
}
