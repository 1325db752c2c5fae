/** The answer in a few sentences, before any table: first what was found altogether, then each species. */

import type { DensityAnswer } from '../../estimates/answers.ts';
import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { type Language, sentenceOnPaper } from '../catalogue/sentence.ts';
import { answerSentence } from '../density-words.ts';
import { effortRows } from '../effort.ts';
import { escapeText } from '../escape.ts';
import { paragraph, section } from '../html.ts';
import { formatCount, formatShort } from '../numbers.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { type SpeciesName, sortBySpecies, speciesNames } from '../species-names.ts';

export function answerSection(input: ReportInput, survey: ReportSurvey, language: Language): string {
  const nameOf = speciesNames(input.species);
  const answers = sortBySpecies(survey.densityBySurvey, input);
  const entries = answers.map((answer) => {
    const held = answer.densityPerHa === null ? ' class="question"' : '';
    const text = escapeText(`${upperFirst(answerSentence(answer, input.settings.confidence, language))}.`);
    return `<div><dt>${nameMarkup(nameOf(answer.species))}</dt><dd${held}>${text}</dd></div>`;
  });
  return section('answer', reportWords(language).answer, [
    paragraph(workDone(survey, language)),
    paragraph(whatWasFound(survey, language)),
    ...sharedCautions(survey, language).map((text) => paragraph(text, 'quiet')),
    ...fewStations(
      answers.filter(hasFewStations).map((answer) => nameOf(answer.species).label),
      language,
    ),
    `<dl>${entries.join('\n')}</dl>`,
  ]);
}

/** "In 875 ha of reef, 21 stations were worked on 5 days and 10 080 m² were searched." */
function workDone({ inHand, strata }: ReportSurvey, language: Language): string {
  const { answer } = reportPhrases(language);
  const whole = effortRows(inHand, strata).at(-1)!;
  const counted = (n: number, words: (n: string, one: boolean) => string) => words(formatCount(n), n === 1);
  const ofStrata = counted(strata.length, answer.strata);
  const where =
    whole.areaHa === null
      ? answer.inStrata(ofStrata)
      : answer.inArea(formatShort(whole.areaHa, language), ofStrata);
  const days = counted(whole.days, answer.days);
  return answer.workDone(
    where,
    counted(whole.stations, answer.stations),
    days,
    formatCount(whole.searchedAreaM2),
  );
}

function whatWasFound({ densityBySurvey }: ReportSurvey, language: Language): string {
  const { answer: words } = reportPhrases(language);
  const found = densityBySurvey.filter((answer) => (answer.densityPerHa ?? 0) > 0).length;
  const zero = densityBySurvey.filter((answer) => answer.densityPerHa === 0).length;
  const open = densityBySurvey.length - found - zero;
  const parts = [words.estimated(formatCount(found), found === 1)];
  if (zero > 0) parts.push(words.zero(formatCount(zero), zero === 1));
  if (open > 0) parts.push(words.open(formatCount(open), open === 1));
  return words.asked(formatCount(densityBySurvey.length), parts.join(', '));
}

function hasFewStations({ densityPerHa, cautions }: DensityAnswer): boolean {
  return densityPerHa !== null && cautions.some((caution) => caution.code === 'few-positive-stations');
}

/** Said once for all species it holds for, where the number is read. */
function fewStations(labels: readonly string[], language: Language): string[] {
  if (labels.length === 0) return [];
  return [paragraph(reportPhrases(language).answer.fewStations(labels.join(', ')), 'quiet')];
}

/** What was let through, and other cautions that hold for every species, said once. */
function sharedCautions({ densityBySurvey }: ReportSurvey, language: Language): string[] {
  const saidElsewhere = new Set(['few-positive-stations', 'accepted', 'zero-bound']);
  const shared = ({ cautions }: DensityAnswer) => cautions.filter(({ code }) => !saidElsewhere.has(code));
  const times = new Map<string, number>();
  for (const answer of densityBySurvey) {
    for (const text of new Set(shared(answer).map((caution) => sentenceOnPaper(language, caution)))) {
      times.set(text, (times.get(text) ?? 0) + 1);
    }
  }
  const all = densityBySurvey.length;
  return [...times].filter(([, n]) => all > 1 && n === all).map(([text]) => `${text}.`);
}

export function nameMarkup({ label, scientific }: SpeciesName): string {
  return scientific === ''
    ? `<i>${escapeText(label)}</i>`
    : `${escapeText(label)} <i>${escapeText(scientific)}</i>`;
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
