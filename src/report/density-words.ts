/** A density answer in words: two short lines for a figure, one sentence for a reader. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import {
  formatCount,
  formatInterval,
  formatShare,
  formatShort,
  formatSignificant,
  formatStockInWords,
} from './numbers.ts';

/** What stands beside a band: the figure, then its interval and stations. */
export function answerInBrief(answer: DensityAnswer): readonly [string, string] {
  const stations = `${stationsInWords(answer)} st.`;
  if (answer.densityPerHa === null) return ['no answer yet', stations];
  if (answer.densityPerHa === 0) return ['not recorded', `${boundInBrief(answer)}${stations}`];
  const interval = answer.intervalPerHa === null ? 'no spread' : formatInterval(answer.intervalPerHa);
  return [`${formatSignificant(answer.densityPerHa)} per ha`, `${interval} · ${stations}`];
}

/** "8 of 21": stations with the species, of those that looked for it. */
export function stationsInWords(answer: Pick<DensityAnswer, 'stationsWithSpecies' | 'stations'>): string {
  return `${formatCount(answer.stationsWithSpecies)} of ${formatCount(answer.stations)}`;
}

/** One sentence that a minister can read. Never "absent": what was not recorded may still be there. */
export function answerSentence(answer: DensityAnswer, confidence: number, language: Language): string {
  if (answer.densityPerHa === null) {
    return answer.reason === null ? 'no answer' : lowerFirst(sentence(language, answer.reason));
  }
  const provisos = provisosInWords(answer, language);
  if (answer.densityPerHa === 0) return zeroSentence(answer, confidence) + provisos;
  const sure = `${formatShare(confidence)} sure`;
  const interval = answer.intervalPerHa;
  const between =
    interval === null
      ? ' (how far off this may be cannot be known)'
      : ` (${sure} between ${formatSignificant(interval[0], 2)} and ${formatSignificant(interval[1], 2)})`;
  const where = `recorded at ${stationsInWords(answer)} stations, ${animalsInWords(answer.animals)}`;
  return `${formatSignificant(answer.densityPerHa)} per ha${between}; ${where}${stockInWords(answer)}${provisos}`;
}

/** "not recorded; 95 % sure below 5.9 per ha if scattered, below 8.7 if clumped (k 0.2)". */
export function zeroSentence(answer: DensityAnswer, confidence: number): string {
  const clumped = answer.intervalPerHa?.[1] ?? null;
  const scattered = answer.scatteredBoundPerHa;
  const k = clumpingOf(answer);
  const looked = `at any of ${formatCount(answer.stations)} stations (${formatCount(answer.searchedAreaM2)} m² searched)`;
  const sure = `${formatShare(confidence)} sure below`;
  if (scattered === null && clumped === null) return `not recorded ${looked}`;
  if (scattered === null) return `not recorded ${looked}; ${sure} ${formatSignificant(clumped!, 2)} per ha`;
  const ifClumped = clumped === null ? '' : `, below ${formatSignificant(clumped, 2)} if clumped${k}`;
  return `not recorded ${looked}; ${sure} ${formatSignificant(scattered, 2)} per ha if scattered${ifClumped}`;
}

/** What must be read together with the number: why its spread is missing, who let it through. */
function provisosInWords(answer: DensityAnswer, language: Language): string {
  const accepted = answer.cautions.filter((caution) => caution.code === 'accepted');
  const reasons =
    answer.reason === null || answer.reason.code === 'none-seen' ? accepted : [answer.reason, ...accepted];
  return reasons.map((reason) => `. ${sentence(language, reason)}`).join('');
}

function clumpingOf(answer: DensityAnswer): string {
  for (const reason of [answer.reason, ...answer.cautions]) {
    const k = reason?.parameters.k;
    if (typeof k === 'number') return ` (k\u00a0${formatShort(k)})`;
  }
  return '';
}

function boundInBrief(answer: DensityAnswer): string {
  const bound = answer.intervalPerHa?.[1] ?? answer.scatteredBoundPerHa;
  return bound === null || bound === undefined ? '' : `below ${formatSignificant(bound, 2)} · `;
}

function stockInWords(answer: DensityAnswer): string {
  if (answer.totalAnimals === null || answer.areaHa === null) return '';
  const area = `in ${formatShort(answer.areaHa)}\u00a0ha`;
  const range =
    answer.totalInterval === null
      ? ''
      : ` (${formatStockInWords(answer.totalInterval[0])} to ${formatStockInWords(answer.totalInterval[1])})`;
  return `; about ${formatStockInWords(answer.totalAnimals)}${range} ${area}`;
}

function animalsInWords(animals: number): string {
  return `${formatCount(animals)} ${animals === 1 ? 'animal' : 'animals'}`;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
