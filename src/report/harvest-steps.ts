/** The arithmetic of a catch with the numbers put in, line by line, so that anybody with a calculator can check it. */

import type {
  Closure,
  HarvestAnswer,
  HarvestStock,
  LegalShare,
  LowerLimit,
} from '../estimates/harvest/harvest-answer.ts';
import { normalQuantile, tQuantile } from '../maths/distributions.ts';
import { harvestPhrases, standingNote } from './catalogue/harvest-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { weightPhrases } from './catalogue/weight-phrases.ts';
import {
  formatCount,
  formatInterval,
  formatShare,
  formatShort,
  formatSignificant,
  withDecimalMark,
} from './numbers.ts';
import { formatChance } from './status-words.ts';

export function harvestSteps(answer: HarvestAnswer, language: Language = 'en'): readonly string[] {
  const { stock, legal, legalStock, weight, catches } = answer;
  if (stock === null || legal === null || legalStock === null) return [];
  const words = harvestPhrases(language);
  const said = numbersIn(language);
  const lines = [
    words.stock(
      said.about(stock.densityPerHa),
      said.short(stock.areaHa),
      formatCount(stock.animals),
      stockOrigin(stock, language),
    ),
    lowerStep(stock.lower, answer.confidence, stock, language),
    ...otherStep(stock, answer.confidence, language),
    words.legal(
      formatCount(stock.lower.animals),
      shareWords(legal, language),
      formatCount(legalStock.lowerAnimals),
    ),
    ...jointStep(answer, language),
    ...(weight === null
      ? []
      : [
          words.meanWeight(
            said.about(weight.grams / 1000),
            words.states[weight.state],
            weight.typed
              ? standingNote(weight.source, language)
              : weightPhrases(language).source(weight.source),
          ),
        ]),
    ...catches.map((one) => {
      const product = `${said.short(one.rate)} × ${formatCount(legalStock.lowerAnimals)}`;
      const animals = words.catch(percentOf(one.rate, language), product, formatCount(one.animals));
      return weight === null
        ? animals
        : words.catchWeight(
            animals,
            said.about(weight.grams / 1000),
            formatKilograms(one.tonnes! * 1000, language),
          );
    }),
  ];
  let step = 0;
  return lines.map((line) => (line.startsWith(' ') ? line : `${++step}. ${line}`));
}

function numbersIn(language: Language) {
  return {
    about: (value: number) => formatSignificant(value, 3, language),
    short: (value: number) => formatShort(value, language),
  };
}

/** Whole kilograms from ten on; a dried catch may be less. */
function formatKilograms(kg: number, language: Language): string {
  return kg < 10 ? formatSignificant(kg, 2, language) : formatCount(kg);
}

function stockOrigin({ typed, counted }: HarvestStock, language: Language): string {
  const words = harvestPhrases(language);
  if (typed || counted === null) return words.typed;
  const { animals, stationsWithSpecies, stations } = counted;
  return words.countedAt(formatCount(animals), formatCount(stationsWithSpecies), formatCount(stations));
}

function lowerStep(limit: LowerLimit, confidence: number, stock: HarvestStock, language: Language): string {
  return harvestPhrases(language).lower(
    formatShare(confidence),
    limitWords(limit, { stock, confidence, language }),
    numbersIn(language).about(limit.perHa),
    formatCount(limit.animals),
  );
}

function otherStep(stock: HarvestStock, confidence: number, language: Language): readonly string[] {
  const { lower, otherLower } = stock;
  if (otherLower === null) return [];
  const words = harvestPhrases(language);
  const how = limitWords(otherLower, { stock, confidence, language });
  const why = lower.animals <= otherLower.animals ? words.smallerUsed : words.notUsed;
  return [`    ${words.otherLower(how, formatCount(otherLower.animals), why)}`];
}

interface LimitContext {
  readonly stock: HarvestStock;
  readonly confidence: number;
  readonly language: Language;
}

/** "log-normal 46.2 / exp(1.282 × √ln(1 + 0.24²))", with the quantile put in. */
function limitWords({ method }: LowerLimit, { stock, confidence, language }: LimitContext): string {
  const words = harvestPhrases(language);
  if (method === 'clumped') return words.clumped;
  const { about, short } = numbersIn(language);
  const { degreesOfFreedom } = stock;
  const q = degreesOfFreedom === null ? normalQuantile(confidence) : tQuantile(confidence, degreesOfFreedom);
  const quantile = withDecimalMark(q.toFixed(3), language);
  const formula = `${about(stock.densityPerHa)} / exp(${quantile} × √ln(1 + ${about(stock.cv)}²))`;
  const of = degreesOfFreedom === null ? words.normal : words.tWith(short(degreesOfFreedom));
  return words.lognormal(formula, quantile, of);
}

function jointStep({ stock, legal, legalStock }: HarvestAnswer, language: Language): readonly string[] {
  if (legalStock?.jointCv == null || legalStock.jointLowerAnimals === null) return [];
  const { about } = numbersIn(language);
  const formula = `√((1 + ${about(stock!.cv)}²)(1 + ${about(legal!.cv!)}²) − 1) = ${about(legalStock.jointCv)}`;
  return [`    ${harvestPhrases(language).joint(formula, formatCount(legalStock.jointLowerAnimals))}`];
}

function shareWords(
  { share, typed, interval, limitMm, measured, source }: LegalShare,
  language: Language,
): string {
  const words = harvestPhrases(language);
  const { short } = numbersIn(language);
  if (typed) return `${short(share)} (${standingNote(source, language)})`;
  const n = formatCount(measured ?? 0);
  const told =
    interval === null
      ? words.measured(n)
      : words.measuredBetween(n, formatInterval([100 * interval[0], 100 * interval[1]], 2, language));
  return words.share(short(share), short(limitMm!), source, told);
}

export function closureStep(closure: Closure, language: Language = 'en'): readonly string[] {
  const words = harvestPhrases(language);
  const { short } = numbersIn(language);
  const limit = short(closure.limitPerHa);
  if (closure.probabilityBelow === null) {
    const bound = formatSignificant(closure.boundPerHa!, 2, language);
    return [words.limitNoneSeen(limit, closure.source, bound)];
  }
  const told = chanceOrigin(closure, language);
  const { chance: below, risk } = chanceAndRisk(closure.probabilityBelow, closure.risk, language);
  return [
    words.limitReference(limit, closure.source, below, told),
    words.closedWhere(`${below} ${closure.closed ? '>' : '≤'} ${risk}`, closure.closed),
  ];
}

/** By which reckoning, and what the other one says beside it. */
function chanceOrigin(
  { probabilityFrom, beliefProbabilityBelow, designProbabilityBelow }: Closure,
  language: Language,
): string {
  const words = harvestPhrases(language);
  const said = (chance: number) => formatChance(chance, () => null, language);
  if (probabilityFrom === 'design')
    return beliefProbabilityBelow === null
      ? words.fromDesign
      : words.besideClumped(words.fromDesign, said(beliefProbabilityBelow));
  return designProbabilityBelow === null
    ? words.fromClumped
    : words.besideDesign(words.fromClumped, said(designProbabilityBelow));
}

/** A chance beside the risk it is held to: with as many digits as it takes to see which of the two is greater. */
export function chanceAndRisk(
  chance: number,
  risk: number,
  language: Language,
): { readonly chance: string; readonly risk: string } {
  const isCommon = Number(risk.toFixed(2)) === risk;
  return {
    chance: isCommon
      ? formatChance(chance, (one) => one > risk, language)
      : formatSignificant(chance, 2, language),
    risk: isCommon ? withDecimalMark(risk.toFixed(2), language) : formatShort(risk, language),
  };
}

function percentOf(rate: number, language: Language): string {
  return `${formatShort(Number((100 * rate).toPrecision(3)), language)}\u00a0%`;
}
