/** One value from outside the survey in words: what it is, with its unit. */

import type { ValueContent } from '../survey/value-words.ts';
import { formatShort, formatSignificant } from './numbers.ts';

/** "1 800 g live (mean length 360 mm)". */
export function valueInWords(content: ValueContent): string {
  switch (content.what) {
    case 'length-weight':
      return pairInWords(content);
    case 'mean-weight':
      return joined([
        `${formatShort(content.weightG)} g ${content.weightState}`,
        content.standardErrorG === null ? null : `standard error ${formatShort(content.standardErrorG)} g`,
        content.meanLengthMm === null ? null : `mean length ${formatShort(content.meanLengthMm)} mm`,
        animalsOf(content.animals),
      ]);
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

/** "W = 0.000524 L^2.36, L in mm, W in g live; 95 to 310 mm; 24 animals". */
export function pairInWords(pair: Pair): string {
  const { a, b, lengthUnit, weightUnit, weightState, lengthMinMm, lengthMaxMm, animals } = pair;
  return joined([
    `W = ${plainNumber(a)} × L^${formatSignificant(b)}, L in ${lengthUnit}, W in ${weightUnit} ${weightState}`,
    pair.lengthMeasure,
    lengthMinMm === null || lengthMaxMm === null
      ? 'lengths it was made from not told'
      : `from animals of ${formatShort(lengthMinMm)} to ${formatShort(lengthMaxMm)} mm`,
    pair.residualSdLn === null ? null : `spread ${formatShort(pair.residualSdLn)} in ln W`,
    animalsOf(animals),
  ]);
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

function animalsOf(animals: number | null): string | null {
  return animals === null ? null : `${formatShort(animals)} animals`;
}

function joined(parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null && part !== '').join('; ');
}
