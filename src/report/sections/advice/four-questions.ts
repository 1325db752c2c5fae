/** The four questions people ask, for the species that matter, each answered in a sentence. */

import { adviceWords } from '../../catalogue/advice-words.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { changeInNumbers, toldInWords } from '../../catalogue/change-sentences.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import { type Language, sentence } from '../../catalogue/sentence.ts';
import { answerSentence } from '../../density-words.ts';
import { escapeText } from '../../escape.ts';
import { closureSentence } from '../../harvest-lines.ts';
import { percent } from '../../harvest-option-lines.ts';
import { headlineSpecies } from '../../headline-species.ts';
import { paragraph, section } from '../../html.ts';
import { formatCount, formatInterval, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { trendSentence } from '../../trend-lines.ts';
import { nameMarkup } from '../answer.ts';
import { statusSentences } from './healthy.ts';
import { capital, counted, ended, twoCounted } from './words-of-advice.ts';

export function fourQuestionsSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const entries = headlineSpecies(advice).map((species) => {
    const asked = [
      [words.howMuch, howMuch(species, input, advice, language)],
      [words.upOrDown, upOrDown(species, input, advice, language)],
      [words.healthy, healthy(species, advice, language)],
      [words.take, mayBeTaken(species, advice, language)],
    ];
    const told = asked.map(
      ([question, answer]) => `<p><b>${escapeText(question!)}</b> ${escapeText(answer!)}</p>`,
    );
    return `<div><dt>${nameMarkup(nameOf(species))}</dt><dd>${told.join('')}</dd></div>`;
  });
  return section('four-questions', words.four, [
    paragraph(words.whichSpecies),
    `<dl>${entries.join('\n')}</dl>`,
  ]);
}

type Asked = [species: string, input: ReportInput, advice: ReportAdvice, language: Language];

function howMuch(...[species, input, advice, language]: Asked): string {
  const own = advice.status.find(({ density }) => density.species === species);
  const { confidence } = input.settings;
  const words = adviceWords(language);
  const phrases = changePhrases(language);
  if (own === undefined) return '';
  const zones = advice.statusByZone
    .filter(
      ({ density }) => density.species === species && density.densityPerHa !== null && density.animals > 0,
    )
    .map(({ density }) => {
      const perHa = formatSignificant(density.densityPerHa!, 3, language);
      const seen = counted(density, language);
      return density.intervalPerHa === null
        ? phrases.zone(density.scope.name, perHa, seen)
        : phrases.zoneBetween(density.scope.name, perHa, {
            ...seen,
            between: formatInterval(density.intervalPerHa, 2, language),
          });
    });
  const whole = capital(answerSentence(own.density, confidence, language));
  const byZone = phrases.colon(words.zoneHead, zones.join(phrases.semicolon));
  return [whole, ...(zones.length > 1 ? [byZone] : [])].map(ended).join(' ');
}

function upOrDown(...[species, input, advice, language]: Asked): string {
  const words = adviceWords(language);
  const phrases = changePhrases(language);
  const { confidence } = input.settings;
  const nameOf = speciesNames(input.species);
  if (advice.change === null) return words.oneSurvey;
  const since = [
    ...advice.change.answers,
    ...advice.changeByZone.filter(({ told }) => told !== 'cannot tell'),
  ]
    .filter((one) => one.species === species)
    .flatMap((one) => {
      const surveys = words.told(one.from, one.to);
      const head = one.scope.by === 'survey' ? surveys : phrases.inZone(surveys, one.scope.name);
      const said = (text: string) => [phrases.colon(head, text)];
      if (one.told !== null) {
        const told = toldInWords(one.told, confidence, language);
        return said(phrases.toldWith(told, changeInNumbers(one, language)));
      }
      if (one.densityPerHa !== null && one.densityPerHa.from > 0) {
        const { from, to } = one.densityPerHa;
        const perHa = (value: number) => formatSignificant(value, 3, language);
        const seen = phrases.perHaSeen(perHa(from), perHa(to), twoCounted(one, language));
        return said(`${seen}${phrases.semicolon}${words.noSpread}`);
      }
      return one.reason === null ? [] : said(sentence(language, inPeoplesWords(one.reason, nameOf)));
    });
  const over = advice.trend
    .filter((one) => one.species === species && one.trend !== null)
    .map((one) => trendSentence({ ...one, species: words.trendHead }, confidence, language));
  return [...since, ...over].map(ended).join(' ');
}

function healthy(species: string, { status }: ReportAdvice, language: Language): string {
  const own = status.find(({ density }) => density.species === species);
  if (own === undefined || own.comparisons.length === 0) return adviceWords(language).noReference;
  const compared = { ...own, comparisons: own.comparisons.filter(({ held }) => held === null) };
  return statusSentences(compared.comparisons.length === 0 ? own : compared, language).join(' ');
}

function mayBeTaken(species: string, { harvest, rates }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const own = harvest.find((one) => one.species === species);
  if (own === undefined) return words.noCatchShort;
  const closure = own.closure === null ? [] : [closureSentence(own.closure, language)];
  if (own.closure?.closed) return closure.join(' ');
  if (own.reason !== null) return [...closure, ended(sentence(language, own.reason))].join(' ');
  if (own.catches.length === 0)
    return [...closure, rates === 0 ? words.noCatchShort : words.fewRates].join(' ');
  const { option } = harvestPhrases(language);
  const options = own.catches.map(({ rate, animals }) =>
    option(formatCount(animals), percent(rate, language)),
  );
  return [...closure, ended(capital(options.join(', '))), words.decision].join(' ');
}
