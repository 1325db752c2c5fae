/** The four questions of one species, each in a short line: what a minister or a chief carries away. */

import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import type { HarvestAnswer } from '../../../estimates/harvest/harvest-answer.ts';
import type { Comparison, StatusAnswer } from '../../../estimates/status/status-answer.ts';
import type { ReasonCode } from '../../../survey/reason-codes.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { briefPhrases } from '../../catalogue/brief-phrases.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { changeInNumbers, changeRange, toldInWords } from '../../catalogue/change-sentences.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { zeroSentence } from '../../density-words.ts';
import { ruleSentences } from '../../harvest-lines.ts';
import { percent } from '../../harvest-option-lines.ts';
import { chanceAndRisk } from '../../harvest-steps.ts';
import {
  formatCount,
  formatInterval,
  formatShare,
  formatShort,
  formatSignificant,
  formatStockInWords,
} from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { sourceWithMark } from '../../status-words.ts';
import { percentPerYear } from '../../trend-lines.ts';
import { capital, ended } from './words-of-advice.ts';

export interface BriefInput {
  readonly input: ReportInput;
  readonly advice: ReportAdvice;
  readonly language: Language;
}

/** Each question with its line, in the order in which people ask. */
export function briefAnswers(
  species: string,
  given: BriefInput,
): readonly (readonly [question: string, answer: string])[] {
  const words = briefPhrases(given.language);
  const status = given.advice.status.find(({ density }) => density.species === species);
  const harvest = given.advice.harvest.find((one) => one.species === species);
  return [
    [words.howMuch, status === undefined ? '' : howMuch(status, given)],
    [words.upOrDown, upOrDown(species, given)],
    [words.healthy, status === undefined ? '' : healthy(status, given)],
    [words.take, mayBeTaken(harvest, given)],
  ];
}

/** Parts of a line as one sentence. */
function line(parts: readonly string[], language: Language): string {
  return ended(capital(parts.join(changePhrases(language).semicolon)));
}

function howMuch({ density }: StatusAnswer, { input, advice, language }: BriefInput): string {
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

function upOrDown(species: string, { input, advice, language }: BriefInput): string {
  const words = briefPhrases(language);
  const { change } = advice;
  if (change === null) return adviceWords(language).oneSurvey;
  const { confidence } = input.settings;
  const nameOf = speciesNames(input.species);
  const whole = change.answers.find((one) => one.species === species);
  const since = whole === undefined ? null : sinceInWords(whole, change.from, { confidence, language });
  const silent =
    whole?.reason == null ? [] : [sentenceOnPaper(language, inPeoplesWords(whole.reason, nameOf))];
  const zones = advice.changeByZone
    .filter((one) => one.species === species && one.told !== null && one.told !== 'cannot tell')
    .map(({ told, ...one }) =>
      words.zoneTold(
        one.scope.name,
        toldInWords(told!, confidence, language),
        changeInNumbers({ told, ...one }, language),
      ),
    );
  const open = whole?.told === 'cannot tell';
  return line(
    [...(since === null ? silent : [since]), ...zones, ...trendOf(species, { advice, language, open })],
    language,
  );
}

function sinceInWords(
  one: ChangeAnswer,
  from: string,
  { confidence, language }: { readonly confidence: number; readonly language: Language },
): string | null {
  if (one.told === null) return null;
  const words = briefPhrases(language);
  const range = one.told === 'cannot tell' ? changeRange(one, language) : null;
  const said =
    range === null
      ? words.since(toldInWords(one.told, confidence, language), from, changeInNumbers(one, language))
      : (range.inTimes ? words.openSinceTimes : words.openSince)(from, range.low, range.high);
  return one.atTheseStations ? words.atStations(said, formatCount(one.pairs)) : said;
}

function trendOf(
  species: string,
  { advice, language, open }: Pick<BriefInput, 'advice' | 'language'> & { readonly open: boolean },
): readonly string[] {
  const words = briefPhrases(language);
  const own = advice.trend.find((one) => one.species === species);
  if (own?.trend == null || own.told === null) return [];
  const surveys = formatCount(own.surveys.filter(({ onTheLine }) => onTheLine).length);
  if (own.told === 'cannot tell') return [open ? words.trendOpen(surveys) : words.trendOpenToo(surveys)];
  const told = changePhrases(language).trendTold[own.told];
  return [words.trend(told, percentPerYear(own.trend.percentPerYear, language), surveys)];
}

function healthy({ comparisons, atMaturity }: StatusAnswer, { language }: BriefInput): string {
  const words = briefPhrases(language);
  const compared = comparisons.filter(({ held }) => held === null).map((one) => beside(one, language));
  const isOther = comparisons.some(({ held }) => held !== null && !ofReference.has(held.code));
  const silent = isOther ? words.notSetBeside : words.noneToCompare;
  const told = compared.length === 0 ? [silent] : compared;
  return line([...told, ...matureInWords(atMaturity, language)], language);
}

/** Held for what the published one is, and not for what this survey lacks. */
const ofReference: ReadonlySet<string> = new Set<ReasonCode>([
  'reference-other-method',
  'reference-method-unknown',
]);

/** Sizes at maturity from several places tell several shares: their range, and never the first of them alone. */
function matureInWords(atMaturity: StatusAnswer['atMaturity'], language: Language): readonly string[] {
  const words = briefPhrases(language);
  const known = atMaturity
    .flatMap(({ limitMm, share }) =>
      share?.interval == null ? [] : [{ limitMm, share: share.share, interval: share.interval }],
    )
    .toSorted((a, b) => a.share - b.share);
  const [least, most] = [known[0], known.at(-1)];
  if (least === undefined || most === undefined) return [];
  if (known.length === 1) {
    const between = formatInterval([100 * least.interval[0], 100 * least.interval[1]], 2, language);
    return [words.mature(formatShare(least.share), between, formatShort(least.limitMm, language))];
  }
  const sizes = known.map(({ limitMm }) => formatShort(limitMm, language)).join(words.or);
  return [words.matureRange(formatShare(least.share), formatShare(most.share), sizes)];
}

function beside({ reference, statusClass, bound }: Comparison, language: Language): string {
  const words = briefPhrases(language);
  const side =
    bound === null
      ? words.sides[statusClass ?? 'cannot tell']
      : bound.isBelow
        ? words.boundBelow(formatSignificant(bound.perHa, 2, language))
        : words.sides['cannot tell'];
  const perHa = formatShort(reference.content.densityPerHa, language);
  const say = reference.status === 'own' ? words.besideOwn : words.beside;
  return say(side, perHa, sourceWithMark(reference, language));
}

function mayBeTaken(own: HarvestAnswer | undefined, { input, advice, language }: BriefInput): string {
  const words = briefPhrases(language);
  if (own === undefined) return line([words.noRate], language);
  const rule = ruleInBrief(own, language);
  if (own.closure?.closed) return line(rule, language);
  if (own.reason !== null) {
    const reason = inPeoplesWords(own.reason, speciesNames(input.species));
    return [...rule, sentenceOnPaper(language, reason)].map((one) => line([one], language)).join(' ');
  }
  if (own.catches.length === 0)
    return line([...rule, advice.rates === 0 ? words.noRate : adviceWords(language).fewRates], language);
  const { option } = harvestPhrases(language);
  const options = own.catches.map(({ rate, animals }) =>
    option(formatCount(animals), percent(rate, language)),
  );
  return line([...rule, words.options(options.join(', '))], language);
}

function ruleInBrief(own: HarvestAnswer, language: Language): readonly string[] {
  const words = briefPhrases(language);
  const { closure } = own;
  if (closure === null) return ruleSentences(own, language);
  if (closure.probabilityBelow === null) return [words.closedNoneSeen];
  const { chance } = chanceAndRisk(closure.probabilityBelow, closure.risk, language);
  const say = closure.closed ? words.closed : words.open;
  return [say(formatShort(closure.limitPerHa, language), chance)];
}
