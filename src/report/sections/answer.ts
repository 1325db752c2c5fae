/** The answer in a few sentences, before any table: first what was found altogether, then each species. */

import type { DensityAnswer } from '../../estimates/answers.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { type Language, sentence } from '../catalogue/sentence.ts';
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
    paragraph(workDone(survey)),
    paragraph(whatWasFound(survey)),
    ...sharedCautions(survey, language).map((text) => paragraph(text, 'quiet')),
    ...fewStations(answers.filter(hasFewStations).map((answer) => nameOf(answer.species).label)),
    `<dl>${entries.join('\n')}</dl>`,
  ]);
}

/** "In 875 ha of reef, 21 stations were worked on 5 days and 10 080 m² were searched." */
function workDone({ inHand, strata }: ReportSurvey): string {
  const whole = effortRows(inHand, strata).at(-1)!;
  const where =
    whole.areaHa === null
      ? `In ${counted(strata.length, 'stratum', 'strata')}`
      : `In ${formatShort(whole.areaHa)} ha of ${counted(strata.length, 'stratum', 'strata')}`;
  return `${where}, ${counted(whole.stations, 'station was', 'stations were')} worked on ${counted(whole.days, 'day', 'days')} and ${formatCount(whole.searchedAreaM2)} m² were searched.`;
}

function whatWasFound({ densityBySurvey }: ReportSurvey): string {
  const found = densityBySurvey.filter((answer) => (answer.densityPerHa ?? 0) > 0).length;
  const zero = densityBySurvey.filter((answer) => answer.densityPerHa === 0).length;
  const open = densityBySurvey.length - found - zero;
  const parts = [`${formatCount(found)} ${found === 1 ? 'has' : 'have'} an estimate`];
  if (zero > 0) parts.push(`${formatCount(zero)} ${zero === 1 ? 'was' : 'were'} looked for and not recorded`);
  if (open > 0)
    parts.push(
      `${formatCount(open)} ${open === 1 ? 'has' : 'have'} no answer yet, for the reason that stands with it`,
    );
  return `Of ${counted(densityBySurvey.length, 'species', 'species')} asked about, ${parts.join(', ')}.`;
}

function hasFewStations({ densityPerHa, cautions }: DensityAnswer): boolean {
  return densityPerHa !== null && cautions.some((caution) => caution.code === 'few-positive-stations');
}

/** Said once for all species it holds for, where the number is read. */
function fewStations(labels: readonly string[]): string[] {
  if (labels.length === 0) return [];
  const words = `Found at fewer than 10 stations, so that the real uncertainty may be larger than the interval: ${labels.join(', ')}.`;
  return [paragraph(words, 'quiet')];
}

/** What was let through, and other cautions that hold for every species, said once. */
function sharedCautions({ densityBySurvey }: ReportSurvey, language: Language): string[] {
  const saidElsewhere = new Set(['few-positive-stations', 'accepted', 'zero-bound']);
  const shared = ({ cautions }: DensityAnswer) => cautions.filter(({ code }) => !saidElsewhere.has(code));
  const times = new Map<string, number>();
  for (const answer of densityBySurvey) {
    for (const text of new Set(shared(answer).map((caution) => sentence(language, caution)))) {
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

function counted(count: number, one: string, many: string): string {
  return `${formatCount(count)} ${count === 1 ? one : many}`;
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
