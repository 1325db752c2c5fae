/** How much there is, in a short line: animals, density, where, and why a number stands alone. */

import type { StatusAnswer } from '../../../estimates/status/status-answer.ts';
import { briefPhrases } from '../../catalogue/brief-phrases.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { zeroSentence } from '../../density-words.ts';
import {
  formatCount,
  formatInterval,
  formatShare,
  formatShort,
  formatSignificant,
  formatStockInWords,
} from '../../numbers.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { type BriefInput, line } from './brief-line.ts';

export function howMuch({ density }: StatusAnswer, { input, advice, language }: BriefInput): string {
  const words = briefPhrases(language);
  const { densityPerHa, reason } = density;
  const nameOf = speciesNames(input.species);
  const { confidence } = input.settings;
  if (densityPerHa === null)
    return reason === null
      ? '–'
      : line([sentenceOnPaper(language, inPeoplesWords(reason, nameOf))], language);
  if (density.animals === 0) return line([zeroSentence(density, confidence, language)], language);
  const seen = words.seen(
    formatCount(density.animals),
    formatCount(density.stationsWithSpecies),
    formatCount(density.stations),
  );
  const zones = advice.statusByZone.filter(
    (one) => one.density.species === density.species && one.density.densityPerHa !== null,
  );
  const byZone = zones.map((one) =>
    words.zone(one.density.scope.name, formatSignificant(one.density.densityPerHa!, 3, language)),
  );
  const amount = amountInWords(density, confidence, language);
  const parts = [...amount, seen, ...(byZone.length > 1 ? [words.zones(byZone.join(', '))] : [])];
  // Why there is no interval: picked by hand, one station.
  const why = density.intervalPerHa === null && reason !== null ? [inPeoplesWords(reason, nameOf)] : [];
  return [parts, ...why.map((one) => [sentenceOnPaper(language, one)])]
    .map((one) => line(one, language))
    .join(' ');
}

/** The animals where there are hectares to count them over, else the density. */
function amountInWords(
  { densityPerHa, intervalPerHa, totalAnimals, totalInterval, areaHa }: StatusAnswer['density'],
  confidence: number,
  language: Language,
): readonly string[] {
  const words = briefPhrases(language);
  const sure = formatShare(confidence);
  const perHa = formatSignificant(densityPerHa!, 3, language);
  if (totalAnimals === null || areaHa === null) {
    return intervalPerHa === null
      ? [words.perHa(perHa), words.noSpread]
      : [words.perHaBetween(perHa, sure, formatInterval(intervalPerHa, 2, language))];
  }
  const stock = formatStockInWords(totalAnimals, language);
  const area = formatShort(areaHa, language);
  if (totalInterval === null) return [words.stock(stock, area), words.noSpread, words.perHa(perHa)];
  const [low, high] = totalInterval.map((end) => formatStockInWords(end, language));
  const between = `${low}${changePhrases(language).to}${high}`;
  return [words.stockBetween(stock, area, sure, between), words.perHa(perHa)];
}
