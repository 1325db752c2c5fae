/** All built-in values. A value that contradicts itself, or names no unit, is not in the lists; each list says which were left out. */

import type { BuiltInValue } from './built-in-value.ts';
import { conversions } from './conversions.ts';
import { maturitySizes } from './maturity-sizes.ts';
import { meanWeights } from './mean-weights.ts';
import { referenceDensities } from './reference-densities.ts';
import { sizeLimitExamples } from './size-limit-examples.ts';
import { usualLengths } from './usual-lengths.ts';

/*
 * No length-weight pair is built in: none could be read whole. Left out: four pairs of north-east Sri Lanka (2014-2016;
 * one is negative where it cannot be, no unit is given, and one exponent is printed in two ways), and exponents that
 * stand without their factor (Zanzibar, Karachi, cages in the Red Sea). The officer brings a pair from the paper, or
 * fits one from animals weighed on board.
 */
export const builtInValues: readonly BuiltInValue[] = [
  ...meanWeights,
  ...conversions,
  ...referenceDensities,
  ...maturitySizes,
  ...sizeLimitExamples,
  ...usualLengths,
];
