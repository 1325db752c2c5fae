/** One value from outside the survey in words: what it is, with its unit. */

import type { ValueContent } from '../survey/value-words.ts';
import type { Language } from './catalogue/language.ts';
import { weightPhrases } from './catalogue/weight-phrases.ts';
import { formatShort, formatSignificant, withDecimalMark } from './numbers.ts';

/** "1 800 g live (mean length 360 mm)". */
export function valueInWords(content: ValueContent): string {
  switch (content.what) {
    case 'length-weight':
      return pairInWords(content);
    case 'mean-weight':
      return meanWeightInWords(content);
    case 'conversion':
      return `${shareOf(content)} of the ${content.from} ${content.basis} is left ${content.to}`;
    case 'reference-density':
      return joined([
        `${formatShort(content.densityPerHa)} per ha by ${countedBy(content.method, content.beltWidthM)}`,
        content.cv === null ? null : `coefficient of variation ${formatShort(content.cv)}`,
        content.meaning,
      ]);
    case 'size-at-maturity':
      return joined([`${formatShort(content.lengthMm)} mm`, content.lengthMeasure]);
    case 'size-limit':
      return joined([
        `at least ${formatShort(content.minimumMm)} mm`,
        content.minimumDriedMm === null ? null : `dried ${formatShort(content.minimumDriedMm)} mm`,
        content.maximumMm === null ? null : `at most ${formatShort(content.maximumMm)} mm`,
      ]);
    case 'usual-length':
      return joined([
        content.commonMm === null ? null : `commonly ${formatShort(content.commonMm)} mm`,
        content.maximumMm === null ? null : `at most ${formatShort(content.maximumMm)} mm`,
      ]);
  }
}

type Pair = Extract<ValueContent, { what: 'length-weight' }>;

type MeanWeight = Extract<ValueContent, { what: 'mean-weight' }>;

/** "1 800 g live; mean length 360 mm". */
export function meanWeightInWords(mean: MeanWeight, language: Language = 'en'): string {
  const words = weightPhrases(language);
  const { weightG, weightState, standardErrorG, meanLengthMm, animals } = mean;
  const parts = [
    words.mean(formatShort(weightG, language), words.states[weightState]),
    standardErrorG === null ? null : words.meanError(formatShort(standardErrorG, language)),
    meanLengthMm === null ? null : words.meanLength(formatShort(meanLengthMm, language)),
    animalsOf(animals, language),
  ];
  return joined(parts, words.between);
}

/** "W = 0.000524 L^2.36, L in mm, W in g live; 95 to 310 mm; 24 animals". */
export function pairInWords(pair: Pair, language: Language = 'en'): string {
  const words = weightPhrases(language);
  const { lengthUnit, weightUnit, weightState, lengthMinMm, lengthMaxMm, animals } = pair;
  const parts = [
    words.curve(curveInWords(pair, language), lengthUnit, weightUnit, words.states[weightState]),
    pair.lengthMeasure === null ? null : words.measures[pair.lengthMeasure],
    lengthMinMm === null || lengthMaxMm === null
      ? words.rangeNotTold
      : words.range(formatShort(lengthMinMm, language), formatShort(lengthMaxMm, language)),
    pair.residualSdLn === null ? null : words.spread(formatShort(pair.residualSdLn, language)),
    animalsOf(animals, language),
  ];
  return joined(parts, words.between);
}

/** "W = 0.000524 × L^2.36". */
export function curveInWords({ a, b }: Pair, language: Language = 'en'): string {
  const factor = withDecimalMark(plainNumber(a), language);
  return `W = ${factor} × L^${formatSignificant(b, 3, language)}`;
}

/** The factor of a pair is small: all its digits, without an exponent. */
function plainNumber(value: number): string {
  const digits = Math.max(0, 2 - Math.floor(Math.log10(value)));
  return value.toFixed(Math.min(15, digits));
}

function shareOf(content: Extract<ValueContent, { what: 'conversion' }>): string {
  const { ratio, ratioLow, ratioHigh } = content;
  const percent = (share: number) => formatShort(Number((100 * share).toPrecision(6)));
  const bounds =
    ratioLow === null || ratioHigh === null ? null : `${percent(ratioLow)} to ${percent(ratioHigh)} %`;
  if (ratio === null) return bounds ?? 'an unknown share';
  return bounds === null ? `${percent(ratio)} %` : `${percent(ratio)} % (${bounds})`;
}

function countedBy(method: string, beltWidthM: number | null): string {
  const way = method === 'not stated' ? 'a way not stated' : method;
  return beltWidthM === null ? way : `${way}, ${formatShort(beltWidthM)} m wide`;
}

function animalsOf(animals: number | null, language: Language): string | null {
  return animals === null ? null : weightPhrases(language).animals(formatShort(animals, language));
}

function joined(parts: readonly (string | null)[], between = '; '): string {
  return parts.filter((part) => part !== null && part !== '').join(between);
}
