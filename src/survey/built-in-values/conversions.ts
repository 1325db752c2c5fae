/**
 * What is left of a live animal after processing, as a share of its live weight or length.
 *
 * Left out: shares of Caribbean and cold-water species; rules for all species at once (a tenth in weight, half gutted:
 * from memory, low confidence); shares made from the common sizes of live and dried animals, which are not the same
 * animals; pieces per kilogram. The papers to copy more from: Purcell, Gossuin and Agudo 2009; Ngaluafe and Lee 2013;
 * Skewes et al. 2004.
 */

import type { Conversion } from '../value-words.ts';
import type { BuiltInValue } from './built-in-value.ts';

const fiji =
  'Ram, Chand, Zeng and Southgate 2016 (authors and year from memory), Recovery rates for eight commercial sea cucumber species from the Fiji Islands, Regional Studies in Marine Science';
const madagascar =
  'Lavitra, Rachelle, Rasolofonirina, Jangoux and Eeckhaut 2008, Processing and marketing of holothurians in the Toliara region, information bulletin 28, page 24';

/** The abstract names the highest and the lowest of eight species: for the others only these bounds are known. */
const boundsOnly = [
  'Holothuria fuscogilva',
  'Actinopyga mauritiana',
  'Actinopyga miliaris',
  'Actinopyga lecanora',
  'Thelenota ananas',
];

export const conversions: readonly BuiltInValue[] = [
  dried('Holothuria whitmaei', { source: fiji, basis: 'length', ratio: 0.549 }),
  dried('Holothuria whitmaei', { source: fiji, basis: 'weight', ratio: 0.11 }),
  dried('Holothuria scabra', {
    source: fiji,
    basis: 'length',
    ratio: 0.326,
    note: 'Madagascar gives 48 %',
  }),
  dried('Bohadschia argus', { source: fiji, basis: 'weight', ratio: 0.03 }),
  dried('Holothuria scabra', {
    source: madagascar,
    basis: 'weight',
    ratio: 0.09,
    note: 'printed as 91 % lost',
  }),
  dried('Holothuria scabra', {
    source: madagascar,
    basis: 'length',
    ratio: 0.48,
    note: 'printed as 52 % lost; Fiji gives 32.6 %',
  }),
  between(boundsOnly, 'length', [0.326, 0.549]),
  between(boundsOnly, 'weight', [0.03, 0.11]),
];

interface Share {
  readonly source: string;
  readonly basis: Conversion['basis'];
  readonly ratio: number;
  readonly note?: string;
}

function dried(species: string, { source, basis, ratio, ...note }: Share): BuiltInValue {
  return {
    species: [species],
    status: 'read',
    source,
    ...note,
    content: { what: 'conversion', basis, from: 'live', to: 'dried', ratio, ratioLow: null, ratioHigh: null },
  };
}

function between(
  species: readonly string[],
  basis: Conversion['basis'],
  [ratioLow, ratioHigh]: readonly [number, number],
): BuiltInValue {
  return {
    species,
    status: 'read',
    source: fiji,
    note: 'only the lowest and the highest of eight species are known',
    content: { what: 'conversion', basis, from: 'live', to: 'dried', ratio: null, ratioLow, ratioHigh },
  };
}
