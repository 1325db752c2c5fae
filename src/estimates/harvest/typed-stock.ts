import { lognormalLowerLimitPerHa } from '../status/probability-below.ts';
import type { HarvestStock } from './harvest-answer.ts';

export interface TypedStock {
  readonly densityPerHa: number;
  readonly cv: number;
  readonly areaHa: number;
  /** Null takes the normal distribution. */
  readonly degreesOfFreedom: number | null;
}

/** A stock from typed numbers: its lower limit is log-normal, since there are no counts to learn clumping from. */
export function typedStock(typed: TypedStock, confidence: number): HarvestStock {
  const { densityPerHa, areaHa } = typed;
  const perHa = lognormalLowerLimitPerHa(typed, confidence);
  if (perHa === null) throw new Error('typedStock requires a positive density and coefficient of variation');
  return {
    ...typed,
    typed: true,
    animals: densityPerHa * areaHa,
    lower: { method: 'lognormal', perHa, animals: perHa * areaHa },
    otherLower: null,
    counted: null,
  };
}
