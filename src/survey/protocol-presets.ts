/** Protocols named by what they are, ready to use; every number can be changed by a protocols table. */

import type { Protocol } from './words.ts';

/** Layouts of the trade (common practice); sizes are starting values, to be replaced by the programme's own. */
export const protocolPresets: readonly Omit<Protocol, 'id'>[] = [
  {
    name: 'belts in series',
    layout: 'series',
    transectsPerStation: 6,
    lengthM: 40,
    widthM: 2,
    gapM: 10,
    measureFirst: 30,
    lengthUnit: 'mm',
  },
  {
    name: 'belts in parallel',
    layout: 'parallel',
    transectsPerStation: 6,
    lengthM: 40,
    widthM: 1,
    gapM: null,
    measureFirst: 30,
    lengthUnit: 'mm',
  },
  {
    name: 'quadrats',
    layout: 'quadrats',
    transectsPerStation: null,
    lengthM: 1,
    widthM: 1,
    gapM: null,
    measureFirst: null,
    lengthUnit: 'mm',
  },
  {
    name: 'timed search',
    layout: 'timed',
    transectsPerStation: null,
    lengthM: null,
    widthM: null,
    gapM: null,
    measureFirst: null,
    lengthUnit: 'mm',
  },
];
