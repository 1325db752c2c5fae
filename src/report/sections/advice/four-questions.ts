/** The four questions people ask, for the species that matter, each answered in a sentence. */

import { adviceWords } from '../../catalogue/advice-words.ts';
import { changeInNumbers, toldInWords } from '../../catalogue/change-sentences.ts';
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
import { capital, counted, ended } from './words-of-advice.ts';

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
  if (own === undefined) return '';
  const zones = advice.statusByZone
    .filter(
      ({ density }) => density.species === species && density.densityPerHa !== null && density.animals > 0,
    )
    .map(({ density }) => {
      const between = density.intervalPerHa === null ? '' : `${formatInterval(density.intervalPerHa)}; `;
      return `${density.scope.name} ${formatSignificant(density.densityPerHa!)} per ha (${between}${counted(density.animals, 'animal')} at ${counted(density.stations, 'station')})`;
    });
  const whole = capital(answerSentence(own.density, confidence, language));
  return [whole, ...(zones.length > 1 ? [`${words.zoneHead}: ${zones.join('; ')}`] : [])]
    .map(ended)
    .join(' ');
}

function upOrDown(...[species, input, advice, language]: Asked): string {
  const words = adviceWords(language);
  const { confidence } = input.settings;
  const nameOf = speciesNames(input.species);
  if (advice.change === null) return words.oneSurvey;
  const since = [
    ...advice.change.answers,
    ...advice.changeByZone.filter(({ told }) => told !== 'cannot tell'),
  ]
    .filter((one) => one.species === species)
    .flatMap((one) => {
      const where = one.scope.by === 'survey' ? '' : `, zone ${one.scope.name}`;
      const head = `${words.told(one.from, one.to)}${where}: `;
      if (one.told !== null) return [`${head}${toldInWords(one.told, confidence)}: ${changeInNumbers(one)}`];
      if (one.densityPerHa !== null && one.densityPerHa.from > 0) {
        const { from, to } = one.densityPerHa;
        const seen = `${formatSignificant(from)} to ${formatSignificant(to)} per ha (${counted(one.animals.from, 'animal')} at ${counted(one.stations.from, 'station')}, then ${formatCount(one.animals.to)} at ${formatCount(one.stations.to)})`;
        return [`${head}${seen}; ${words.noSpread}`];
      }
      return one.reason === null ? [] : [`${head}${sentence(language, inPeoplesWords(one.reason, nameOf))}`];
    });
  const over = advice.trend
    .filter((one) => one.species === species && one.trend !== null)
    .map((one) => trendSentence({ ...one, species: words.trendHead }, confidence));
  return [...since, ...over].map(ended).join(' ');
}

function healthy(species: string, { status }: ReportAdvice, language: Language): string {
  const own = status.find(({ density }) => density.species === species);
  if (own === undefined || own.comparisons.length === 0) return adviceWords(language).noReference;
  const compared = { ...own, comparisons: own.comparisons.filter(({ held }) => held === null) };
  return statusSentences(compared.comparisons.length === 0 ? own : compared).join(' ');
}

function mayBeTaken(species: string, { harvest, rates }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const own = harvest.find((one) => one.species === species);
  if (own === undefined) return words.noCatchShort;
  const closure = own.closure === null ? [] : [closureSentence(own.closure)];
  if (own.closure?.closed) return closure.join(' ');
  if (own.reason !== null) return [...closure, ended(sentence(language, own.reason))].join(' ');
  if (own.catches.length === 0)
    return [...closure, rates === 0 ? words.noCatchShort : words.fewRates].join(' ');
  const options = own.catches.map(
    ({ rate, animals }) => `${formatCount(animals)} animals a year at ${percent(rate)}`,
  );
  return [...closure, ended(capital(options.join(', '))), words.decision].join(' ');
}
