/** The arithmetic of a catch: lower limit of the stock, legal share, rate, weight. Nothing in it is chosen here. */

import { lognormalLowerLimitPerHa } from '../status/probability-below.ts';
import type {
  Catch,
  ChosenRate,
  HarvestStock,
  LegalShare,
  LegalStock,
  LegalWeight,
} from './harvest-answer.ts';

/**
 * Animals of legal size: the lower limit of the stock times the share that is legal, and the same of the estimate.
 *
 * The share's own uncertainty stands beside it as a joint coefficient of variation, sqrt((1 + cv_D^2)(1 + cv_p^2) - 1),
 * which takes density and sizes as independent, and the log-normal lower limit made with it.
 * Source: METHODS k; vector k2.
 */
export function legalStock(stock: HarvestStock, legal: LegalShare, confidence: number): LegalStock {
  const pointAnimals = stock.animals * legal.share;
  const jointCv = legal.cv === null ? null : jointCvOf(stock.cv, legal.cv);
  return {
    lowerAnimals: stock.lower.animals * legal.share,
    pointAnimals,
    jointCv,
    jointLowerAnimals:
      jointCv === null
        ? null
        : lognormalLowerLimitPerHa(
            { densityPerHa: pointAnimals, cv: jointCv, degreesOfFreedom: stock.degreesOfFreedom },
            confidence,
          ),
  };
}

/** Coefficient of variation of a product of two independent estimates. Source: Goodman 1960 (from memory). */
export function jointCvOf(first: number, second: number): number {
  return Math.sqrt((1 + first ** 2) * (1 + second ** 2) - 1);
}

/**
 * Catch at one chosen rate, in animals and tonnes a year: rate x legal animals x mean weight of a legal animal. `part`
 * is the share of the area that is open in one year under rotation. Tonnes are null where no weight is known.
 */
export function catchAt({ rate, source }: ChosenRate, { stock, legal, weight }: CatchBasis, part = 1): Catch {
  const animals = rate * legal.lowerAnimals * part;
  return {
    rate,
    source,
    animals,
    tonnes: weight === null ? null : (animals * weight.grams) / 1e6,
    shareOfStock: animals / stock.animals,
    pointAnimals: rate * legal.pointAnimals * part,
  };
}

export interface CatchBasis {
  readonly stock: HarvestStock;
  readonly legal: LegalStock;
  readonly weight: LegalWeight | null;
}
