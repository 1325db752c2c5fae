/** The biomass of one species in one scope as the command line, the report and the screens receive it. */

import type { Reason } from '../../survey/message.ts';
import type { Conversion, LengthWeight, MeanWeight, ValueStatus } from '../../survey/value-words.ts';
import type { Scope } from '../answers.ts';
import type { Interval } from '../shapes.ts';

export type WeightState = LengthWeight['weightState'];

/** Where the weights come from: a curve through lengths, or one mean weight (or several that differ). */
export type WeightBasis =
  | {
      readonly by: 'pair';
      readonly pair: LengthWeight;
      /** Multiply the curve by this to have mean weights; 1 where the spread is not told. */
      readonly correction: number;
      readonly origin: WeightOrigin;
    }
  | {
      readonly by: 'mean weight';
      /** One; or several published ones, of which none is better than another. */
      readonly means: readonly MeanWeight[];
      readonly origin: WeightOrigin;
    };

export interface WeightOrigin {
  readonly source: string;
  readonly status: ValueStatus | 'fit';
}

/** From the state of the weights to the state that was asked for. */
export interface ConversionUsed {
  readonly content: Conversion;
  readonly source: string;
}

export interface BiomassAnswer {
  readonly survey: string;
  readonly species: string;
  readonly scope: Scope;
  readonly state: WeightState;
  readonly stations: number;
  readonly animals: number;
  readonly measured: number;
  readonly borrowedAnimals: number;
  readonly densityPerHa: number | null;
  /** Area of the strata that were sampled, in hectares; nothing else enters the total. */
  readonly areaHa: number | null;
  readonly totalAnimals: number | null;
  readonly totalAnimalsInterval: Interval | null;
  /** Mean weight of the animals there, in grams: the biomass over the animals, never the weight of their mean length. */
  readonly meanWeightG: number | null;
  readonly kgPerHa: number | null;
  /** Between stations and of the weights together. */
  readonly standardErrorKgPerHa: number | null;
  readonly samplingErrorKgPerHa: number | null;
  /** Of the pair or the mean weight itself; null where its source does not tell it. */
  readonly weightErrorKgPerHa: number | null;
  readonly degreesOfFreedom: number | null;
  /** The interval of the density, widened by what is not known about the weight of one animal. */
  readonly intervalKgPerHa: Interval | null;
  /** Log-normal interval from the design and its standard error, beside it. */
  readonly designIntervalKgPerHa: Interval | null;
  readonly totalKg: number | null;
  readonly totalStandardErrorKg: number | null;
  readonly totalIntervalKg: Interval | null;
  readonly basis: WeightBasis | null;
  readonly conversion: ConversionUsed | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}
