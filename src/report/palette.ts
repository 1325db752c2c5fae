/**
 * The colours of strata and the signs that double them. Nothing is told by colour alone:
 * a stratum has a shape as well, so that a black-and-white copy says the same.
 */

import type { SymbolType } from '@observablehq/plot';

/** Okabe and Ito (2008), in their order, without black: safe for the usual colour blindnesses. */
export const seriesColours = [
  '#e69f00',
  '#56b4e9',
  '#009e73',
  '#f0e442',
  '#0072b2',
  '#d55e00',
  '#cc79a7',
] as const;

/** As many shapes as colours: the nth stratum has the nth of both. */
export const seriesSymbols: readonly SymbolType[] = [
  'circle',
  'square',
  'triangle',
  'diamond',
  'star',
  'hexagon',
  'wye',
];
