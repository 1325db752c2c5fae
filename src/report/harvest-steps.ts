/** The arithmetic of a catch with the numbers put in, line by line, so that anybody with a calculator can check it. */

import type {
  Closure,
  HarvestAnswer,
  HarvestStock,
  LegalShare,
  LowerLimit,
} from '../estimates/harvest/harvest-answer.ts';
import { normalQuantile, tQuantile } from '../maths/distributions.ts';
import { standingNote } from './catalogue/harvest-words.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from './numbers.ts';
import { formatChance } from './status-words.ts';

export function harvestSteps(answer: HarvestAnswer): readonly string[] {
  const { stock, legal, legalStock, weight, catches } = answer;
  if (stock === null || legal === null || legalStock === null) return [];
  const lines = [
    `stock = density × area = ${formatSignificant(stock.densityPerHa)} per ha × ${formatShort(stock.areaHa)} ha = ${formatCount(stock.animals)} animals (${stockOrigin(stock)})`,
    lowerStep(stock.lower, answer.confidence, stock),
    ...(stock.otherLower === null
      ? []
      : [
          `    beside it, ${limitWords(stock.otherLower, stock, answer.confidence)}: ${formatCount(stock.otherLower.animals)} animals (${otherNote(stock)})`,
        ]),
    `legal animals = lower limit × share of legal size = ${formatCount(stock.lower.animals)} × ${shareWords(legal)} = ${formatCount(legalStock.lowerAnimals)} animals`,
    ...(legalStock.jointCv === null || legalStock.jointLowerAnimals === null
      ? []
      : [
          `    beside it, with the uncertainty of the share as well (joint CV √((1 + ${cv(stock.cv)}²)(1 + ${cv(legal.cv!)}²) − 1) = ${cv(legalStock.jointCv)}; log-normal): ${formatCount(legalStock.jointLowerAnimals)} animals`,
        ]),
    ...(weight === null
      ? []
      : [
          `mean weight of a legal animal: ${formatSignificant(weight.grams / 1000)} kg ${weight.state} (${weight.typed ? standingNote(weight.source) : weight.source})`,
        ]),
    ...catches.map(
      (one) =>
        `catch at ${percentOf(one.rate)} = ${formatShort(one.rate)} × ${formatCount(legalStock.lowerAnimals)} = ${formatCount(one.animals)} animals` +
        (weight === null
          ? ''
          : `; × ${formatSignificant(weight.grams / 1000)} kg = ${formatKilograms(one.tonnes! * 1000)} kg`),
    ),
  ];
  let step = 0;
  return lines.map((line) => (line.startsWith(' ') ? line : `${++step}. ${line}`));
}

/** Whole kilograms from ten on; a dried catch may be less. */
function formatKilograms(kg: number): string {
  return kg < 10 ? formatSignificant(kg, 2) : formatCount(kg);
}

function stockOrigin({ typed, counted }: HarvestStock): string {
  if (typed || counted === null) return 'typed';
  return `${formatCount(counted.animals)} animals at ${formatCount(counted.stationsWithSpecies)} of ${formatCount(counted.stations)} stations`;
}

function lowerStep(limit: LowerLimit, confidence: number, stock: HarvestStock): string {
  return `lower limit of the stock, one-sided ${formatShare(confidence)}, ${limitWords(limit, stock, confidence)}: ${formatSignificant(limit.perHa)} per ha, in all ${formatCount(limit.animals)} animals`;
}

/** "log-normal 46.2 / exp(1.282 × √ln(1 + 0.24²))", with the quantile put in. */
function limitWords({ method }: LowerLimit, stock: HarvestStock, confidence: number): string {
  if (method === 'clumped') return 'clumped counts';
  const { degreesOfFreedom } = stock;
  const q = degreesOfFreedom === null ? normalQuantile(confidence) : tQuantile(confidence, degreesOfFreedom);
  const of =
    degreesOfFreedom === null ? 'normal' : `t with ${formatShort(degreesOfFreedom)} degrees of freedom`;
  return `log-normal ${formatSignificant(stock.densityPerHa)} / exp(${q.toFixed(3)} × √ln(1 + ${cv(stock.cv)}²)), ${q.toFixed(3)} from ${of}`;
}

function otherNote({ lower, otherLower }: HarvestStock): string {
  const why =
    otherLower !== null && lower.animals <= otherLower.animals
      ? 'the smaller one is used'
      : 'not used, as asked';
  return `${why}; --lower chooses`;
}

function shareWords({ share, typed, interval, limitMm, measured, source }: LegalShare): string {
  if (typed) return `${formatShort(share)} (${standingNote(source)})`;
  const between = interval === null ? '' : `, ${formatInterval([100 * interval[0], 100 * interval[1]])} %`;
  return `${formatShort(share)} (at or above ${formatShort(limitMm!)} mm, ${source}; ${formatCount(measured ?? 0)} measured${between})`;
}

export function closureStep(closure: Closure): readonly string[] {
  const beside =
    closure.designProbabilityBelow === null || closure.probabilityFrom === 'design'
      ? ''
      : `, by the design alone ${formatChance(closure.designProbabilityBelow)}`;
  return [
    `limit reference ${formatShort(closure.limitPerHa)} per ha (${closure.source}); chance of being below it ${formatChance(closure.probabilityBelow)} (${closure.probabilityFrom === 'design' ? 'log-normal, by the design' : 'clumped counts'}${beside})`,
    `closed where that chance is greater than the chosen risk: ${formatChance(closure.probabilityBelow)} ${closure.closed ? '>' : '≤'} ${closure.risk.toFixed(2)}, so ${closure.closed ? 'closed' : 'open'}`,
  ];
}

function cv(value: number): string {
  return formatSignificant(value);
}

function percentOf(rate: number): string {
  return `${formatShort(Number((100 * rate).toPrecision(3)))}\u00a0%`;
}
