/** A density answer in words: two short lines for a figure, one sentence for a reader. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import { type Language, sentenceOnPaper } from './catalogue/sentence.ts';
import {
  formatCount,
  formatInterval,
  formatShare,
  formatShort,
  formatSignificant,
  formatStockInWords,
} from './numbers.ts';

/** What stands beside a band: the figure, then its interval and stations. */
export function answerInBrief(answer: DensityAnswer, language: Language = 'en'): readonly [string, string] {
  const words = densityPhrases(language);
  const stations = words.stationsShort(stationsInWords(answer, language));
  if (answer.densityPerHa === null) return [words.noAnswerYet, stations];
  if (answer.densityPerHa === 0) return [words.notRecorded, `${boundInBrief(answer, language)}${stations}`];
  const interval =
    answer.intervalPerHa === null ? words.noSpread : formatInterval(answer.intervalPerHa, 2, language);
  return [words.perHa(formatSignificant(answer.densityPerHa, 3, language)), `${interval} · ${stations}`];
}

/** "8 of 21": stations with the species, of those that looked for it. */
export function stationsInWords(
  answer: Pick<DensityAnswer, 'stationsWithSpecies' | 'stations'>,
  language: Language = 'en',
): string {
  return densityPhrases(language).of(formatCount(answer.stationsWithSpecies), formatCount(answer.stations));
}

/** One sentence that a minister can read. Never "absent": what was not recorded may still be there. */
export function answerSentence(answer: DensityAnswer, confidence: number, language: Language): string {
  const words = densityPhrases(language);
  if (answer.densityPerHa === null) {
    return lowerFirst(answer.reason === null ? words.noAnswer : sentenceOnPaper(language, answer.reason));
  }
  const provisos = provisosInWords(answer, language);
  if (answer.densityPerHa === 0) return zeroSentence(answer, confidence, language) + provisos;
  const sure = words.sure(formatShare(confidence));
  const [low, high] = (answer.intervalPerHa ?? []).map((end) => formatSignificant(end, 2, language));
  const between =
    low === undefined || high === undefined ? words.spreadUnknown : words.between(sure, low, high);
  const animals = words.animals(formatCount(answer.animals), answer.animals === 1);
  const where = words.recordedAt(
    formatCount(answer.stationsWithSpecies),
    formatCount(answer.stations),
    animals,
  );
  const density = words.perHa(formatSignificant(answer.densityPerHa, 3, language));
  const gap = language === 'fr' ? '\u00a0' : '';
  return `${density}${between}${gap}; ${where}${stockInWords(answer, language)}${provisos}`;
}

/** "not recorded; 95 % sure below 5.9 per ha if scattered, below 8.7 if clumped (k 0.2)". */
export function zeroSentence(answer: DensityAnswer, confidence: number, language: Language = 'en'): string {
  const words = densityPhrases(language);
  const bound = (perHa: number) => formatSignificant(perHa, 2, language);
  const clumped = answer.intervalPerHa?.[1] ?? null;
  const scattered = answer.scatteredBoundPerHa;
  const k = clumpingOf(answer, language);
  const gap = language === 'fr' ? '\u00a0' : '';
  const sure = `${gap}; ${words.sureBelow(formatShare(confidence))}`;
  const unseen = words.unseen(formatCount(answer.stations), formatCount(answer.searchedAreaM2));
  if (scattered === null && clumped === null) return unseen;
  if (scattered === null) return `${unseen}${sure} ${words.perHa(bound(clumped!))}`;
  const ifClumped = clumped === null ? '' : `${words.ifClumped(bound(clumped))}${k}`;
  return `${unseen}${sure} ${words.ifScattered(bound(scattered))}${ifClumped}`;
}

/** What must be read together with the number: why its spread is missing, who let it through. */
function provisosInWords(answer: DensityAnswer, language: Language): string {
  const accepted = answer.cautions.filter((caution) => caution.code === 'accepted');
  const reasons =
    answer.reason === null || answer.reason.code === 'none-seen' ? accepted : [answer.reason, ...accepted];
  return reasons.map((reason) => `. ${sentenceOnPaper(language, reason)}`).join('');
}

function clumpingOf(answer: DensityAnswer, language: Language): string {
  for (const reason of [answer.reason, ...answer.cautions]) {
    const k = reason?.parameters.k;
    if (typeof k === 'number') return ` (k\u00a0${formatShort(k, language)})`;
  }
  return '';
}

function boundInBrief(answer: DensityAnswer, language: Language): string {
  const bound = answer.intervalPerHa?.[1] ?? answer.scatteredBoundPerHa;
  if (bound === null || bound === undefined) return '';
  return `${densityPhrases(language).below(formatSignificant(bound, 2, language))} · `;
}

function stockInWords(answer: DensityAnswer, language: Language): string {
  if (answer.totalAnimals === null || answer.areaHa === null) return '';
  const words = densityPhrases(language);
  const [low, high] = (answer.totalInterval ?? []).map((end) => formatStockInWords(end, language));
  const range = low === undefined || high === undefined ? '' : words.stockRange(low, high);
  const stock = formatStockInWords(answer.totalAnimals, language);
  return words.stock(stock, range, formatShort(answer.areaHa, language));
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
