/** The numbers of a scope, and their way from one state of the animals to another. */

import type { Interval } from '../shapes.ts';
import type { BiomassAnswer, ConversionUsed } from './biomass-answer.ts';

export type ScopeNumbers = Pick<
  BiomassAnswer,
  | 'meanWeightG'
  | 'kgPerHa'
  | 'standardErrorKgPerHa'
  | 'samplingErrorKgPerHa'
  | 'weightErrorKgPerHa'
  | 'degreesOfFreedom'
  | 'intervalKgPerHa'
  | 'designIntervalKgPerHa'
  | 'totalKg'
  | 'totalStandardErrorKg'
  | 'totalIntervalKg'
>;

/** From one state to another: the numbers by the ratio, the ends by its bounds; without a ratio there is only a range. */
export function converted(conversion: ConversionUsed | null, numbers: ScopeNumbers): ScopeNumbers {
  if (conversion === null) return numbers;
  const { ratio, ratioLow, ratioHigh } = conversion.content;
  const by = (value: number | null) => (value === null || ratio === null ? null : value * ratio);
  const ends = (interval: Interval | null): Interval | null =>
    interval === null
      ? null
      : [interval[0] * (ratioLow ?? ratio ?? 0), interval[1] * (ratioHigh ?? ratio ?? 1)];
  return {
    meanWeightG: by(numbers.meanWeightG),
    kgPerHa: by(numbers.kgPerHa),
    standardErrorKgPerHa: by(numbers.standardErrorKgPerHa),
    samplingErrorKgPerHa: by(numbers.samplingErrorKgPerHa),
    weightErrorKgPerHa: by(numbers.weightErrorKgPerHa),
    degreesOfFreedom: numbers.degreesOfFreedom,
    intervalKgPerHa: ends(numbers.intervalKgPerHa),
    designIntervalKgPerHa: ends(numbers.designIntervalKgPerHa),
    totalKg: by(numbers.totalKg),
    totalStandardErrorKg: by(numbers.totalStandardErrorKg),
    totalIntervalKg: ends(numbers.totalIntervalKg),
  };
}
