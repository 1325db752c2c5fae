/** The four questions people ask, for the species that matter, each answered in a sentence. */

import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import type { Comparison, StatusAnswer } from '../../../estimates/status/status-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { briefPhrases } from '../../catalogue/brief-phrases.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { changeInNumbers, toldInWords } from '../../catalogue/change-sentences.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { statusPhrases } from '../../catalogue/status-phrases.ts';
import { answerSentence } from '../../density-words.ts';
import { escapeText } from '../../escape.ts';
import { ruleSentences } from '../../harvest-lines.ts';
import { percent } from '../../harvest-option-lines.ts';
import { headlineSpecies } from '../../headline-species.ts';
import { paragraph, section } from '../../html.ts';
import { formatCount, formatInterval, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { inPeoplesWords, type SpeciesName, speciesNames } from '../../species-names.ts';
import { comparisonSentence, referenceInWords } from '../../status-words.ts';
import { trendInBrief } from '../../trend-lines.ts';
import { nameMarkup } from '../answer.ts';
import { briefAnswers } from './brief-answers.ts';
import { capital, counted, ended, twoCounted } from './words-of-advice.ts';

/** The first page: four short lines for each species that matters. */
export function fourQuestionsSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const nameOf = speciesNames(input.species);
  const named = headlineSpecies(advice);
  const entries = named.map((species) =>
    entry(nameOf(species), briefAnswers(species, { input, advice, language })),
  );
  return section('four-questions', adviceWords(language).four, [
    paragraph(briefPhrases(language).which),
    ...comparedWithLimits(input, advice, language),
    `<dl class="brief">${entries.join('\n')}</dl>`,
    ...(advice.status.some(
      ({ density, comparisons }) => named.includes(density.species) && comparisons.some(isFromMemory),
    )
      ? [paragraph(statusPhrases(language).paper.memoryNote, 'quiet')]
      : []),
  ]);
}

function isFromMemory({ held, reference }: Comparison): boolean {
  return held === null && reference.status === 'memory';
}

/** Belts of another width, another season, other people: said where the change is read. */
function comparedWithLimits(input: ReportInput, { change }: ReportAdvice, language: Language): string[] {
  const nameOf = speciesNames(input.species);
  const limits = (change?.comparability.aspects ?? []).flatMap(({ verdict, reason }) =>
    verdict === 'same' || verdict === 'not known' || reason === null
      ? []
      : [ended(sentenceOnPaper(language, inPeoplesWords(reason, nameOf)))],
  );
  return limits.length === 0 ? [] : [paragraph(briefPhrases(language).limits(limits.join(' ')))];
}

/** The same species question by question, with zones, chances and sources. */
export function inFullSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const entries = headlineSpecies(advice).map((species) =>
    entry(nameOf(species), [
      [words.howMuch, howMuch(species, input, advice, language)],
      [words.upOrDown, upOrDown(species, input, advice, language)],
      [words.healthy, healthy(species, advice, language)],
      [words.take, mayBeTaken(species, input, advice, language)],
    ]),
  );
  return section('in-full', words.inFull, [paragraph(words.commonPart), `<dl>${entries.join('\n')}</dl>`]);
}

function entry(name: SpeciesName, told: readonly (readonly [question: string, answer: string])[]): string {
  const lines = told.map(
    ([question, answer]) => `<p><b>${escapeText(question)}</b> ${escapeText(answer)}</p>`,
  );
  return `<div><dt>${nameMarkup(name)}</dt><dd>${lines.join('')}</dd></div>`;
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
  const changes = [
    ...advice.change.answers,
    ...advice.changeByZone.filter(({ told }) => told !== 'cannot tell'),
  ].filter((one) => one.species === species);
  const since = changes.flatMap((one) => {
    const said = changeTold(one, { nameOf, confidence, language });
    if (said === null) return [];
    const zone = one.scope.by === 'survey' ? null : phrases.inZone(one.scope.name);
    return [zone === null ? said : phrases.colon(zone, said)];
  });
  const { from, to } = advice.change;
  const lately =
    since.length === 0 ? [] : [phrases.colon(words.told(from, to), since.join(phrases.semicolon))];
  const over = advice.trend
    .filter((one) => one.species === species && one.trend !== null)
    .map((one) => trendInBrief({ ...one, species: words.trendHead }, confidence, language));
  return [...lately, ...over].map(ended).join(' ');
}

interface Telling {
  readonly nameOf: ReturnType<typeof speciesNames>;
  readonly confidence: number;
  readonly language: Language;
}

/** What can be told of a change; where nothing can, what was seen; null where there is nothing to say. */
function changeTold(one: ChangeAnswer, { nameOf, confidence, language }: Telling): string | null {
  const phrases = changePhrases(language);
  if (one.told !== null)
    return phrases.toldWith(toldInWords(one.told, confidence, language), changeInNumbers(one, language));
  if (one.densityPerHa !== null && one.densityPerHa.from > 0) {
    const { from, to } = one.densityPerHa;
    const perHa = (value: number) => formatSignificant(value, 3, language);
    const seen = phrases.perHaSeen(perHa(from), perHa(to), twoCounted(one, language));
    return `${seen}, ${adviceWords(language).noSpread}`;
  }
  return one.reason === null ? null : sentenceOnPaper(language, inPeoplesWords(one.reason, nameOf));
}

function healthy(species: string, { status }: ReportAdvice, language: Language): string {
  const own = status.find(({ density }) => density.species === species);
  if (own === undefined || own.comparisons.length === 0) return adviceWords(language).noReference;
  const compared = { ...own, comparisons: own.comparisons.filter(({ held }) => held === null) };
  return statusSentences(compared.comparisons.length === 0 ? own : compared, language).join(' ');
}

function mayBeTaken(...[species, input, { harvest, rates }, language]: Asked): string {
  const words = adviceWords(language);
  const own = harvest.find((one) => one.species === species);
  if (own === undefined) return words.noCatchShort;
  const closure = ruleSentences(own, language);
  if (own.closure?.closed) return closure.join(' ');
  if (own.reason !== null)
    return [
      ...closure,
      ended(sentenceOnPaper(language, inPeoplesWords(own.reason, speciesNames(input.species)))),
    ].join(' ');
  if (own.catches.length === 0)
    return [...closure, rates === 0 ? words.noCatchShort : words.fewRates].join(' ');
  const { option } = harvestPhrases(language);
  const options = own.catches.map(({ rate, animals }) =>
    option(formatCount(animals), percent(rate, language)),
  );
  return [...closure, ended(capital(options.join(', '))), words.decision].join(' ');
}

/** Those it can be compared with first; then each reason once, with the densities it holds back. */
function statusSentences({ comparisons }: StatusAnswer, language: Language): string[] {
  const compared = comparisons.filter(({ held }) => held === null);
  const byReason = Map.groupBy(
    comparisons.filter(({ held }) => held !== null),
    ({ held }) => sentenceOnPaper(language, held!),
  );
  const held = [...byReason].map(([reason, those]) => {
    const against = those.map((one) => referenceInWords(one.reference, language)).join(', ');
    return statusPhrases(language).notComparedWith(against, reason);
  });
  return [...compared.map((one) => capital(comparisonSentence(one, language))), ...held].map(ended);
}
