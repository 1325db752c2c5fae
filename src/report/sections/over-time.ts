/** Each species from survey to survey on a true axis of time; the numbers as a table where they do not fit under it. */

import type { ComparedAspect } from '../../estimates/change/comparability.ts';
import { changePhrases } from '../catalogue/change-phrases.ts';
import { densityPhrases } from '../catalogue/density-phrases.ts';
import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { sentenceOnPaper } from '../catalogue/sentence.ts';
import { densityTable } from '../density-table.ts';
import { answerInBrief } from '../density-words.ts';
import { standsBelowDarkest } from '../fading-band.ts';
import { list, paragraph, phoneWidth } from '../html.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { type TimeRow, timeBands, timeBandsFit } from '../time-bands.ts';
import { nameMarkup } from './answer.ts';

/** Empty where no species was looked for in two surveys. */
export function overTime(input: ReportInput, drawing: Drawing): readonly string[] {
  const { language } = drawing;
  const all = new Set(
    input.surveys.flatMap(({ densityBySurvey }) => densityBySurvey.map((one) => one.species)),
  );
  const groups = sortBySpecies(
    [...all].map((species) => ({ species, rows: rowsOf(input, species) })),
    input,
  ).filter(({ rows }) => rows.length > 1);
  if (groups.length === 0) return [];
  const nameOf = speciesNames(input.species);
  const figures = groups.map(({ species, rows }, i) => {
    const inWords = rowsInWords(fullName(nameOf(species)), rows, language);
    const drawn = timeBands(rows, { width: phoneWidth, name: `time-${i + 1}`, language, inWords });
    return `<figure><h4>${nameMarkup(nameOf(species))}</h4>${drawn}</figure>`;
  });
  const isFewSeen = groups.some(({ rows }) => rows.some(({ answer }) => standsBelowDarkest(answer)));
  const few = isFewSeen ? densityPhrases(language).tickBelowDarkest : '';
  const words = reportWords(language);
  return [
    paragraph([words.timeExplained, few].filter((text) => text !== '').join(' '), 'quiet'),
    ...breaks(input, language),
    `<div class="pairs">${figures.join('\n')}</div>`,
    ...(groups.some(({ rows }) => !timeBandsFit(rows.length, phoneWidth)) ? [table(input, drawing)] : []),
  ];
}

function rowsOf(input: ReportInput, species: string): readonly TimeRow[] {
  return input.surveys.flatMap((survey, i) => {
    const answer = survey.densityBySurvey.find((one) => one.species === species);
    const days = survey.inHand.stations.map(({ record }) => record.date).toSorted();
    const [from, to] = [days[0], days.at(-1)];
    if (answer === undefined || from === undefined || to === undefined) return [];
    const before = input.surveys[i - 1];
    const countedBefore = before === undefined ? 'not known' : countedAs(input, before, survey);
    return [{ survey: survey.inHand.survey.name, from, to, answer, countedBefore }];
  });
}

/** Another way of counting, another belt or another way of moving finds other animals. */
const waysOfCounting: ReadonlySet<ComparedAspect['aspect']> = new Set(['method', 'belt width', 'mode']);

function countedAs(
  input: ReportInput,
  { inHand: before }: ReportSurvey,
  { inHand: after }: ReportSurvey,
): TimeRow['countedBefore'] {
  const pair = input.comparisons?.find(
    ({ from, to }) => from === before.survey.name && to === after.survey.name,
  );
  if (pair === undefined) return 'not known';
  return changesOfWay(pair.aspects).length === 0 ? 'alike' : 'otherwise';
}

function changesOfWay(aspects: readonly ComparedAspect[]): readonly ComparedAspect[] {
  return aspects.filter(
    ({ aspect, verdict }) => verdict === 'held' || (verdict === 'limited' && waysOfCounting.has(aspect)),
  );
}

/** Where the line is broken, and why: once for all species. */
function breaks({ comparisons = [] }: ReportInput, language: Drawing['language']): readonly string[] {
  const said = comparisons.flatMap(({ to, aspects }) =>
    changesOfWay(aspects).flatMap(({ reason }) =>
      reason === null ? [] : [changePhrases(language).brokenBefore(to, sentenceOnPaper(language, reason))],
    ),
  );
  return said.length === 0 ? [] : [`<div class="quiet notes">${list(said)}</div>`];
}

/** "Sandfish (Holothuria scabra): Lorrin 2022: 24.6 per ha, 7.6 to 330 · 4 of 24 st.; …". */
function rowsInWords(name: string, rows: readonly TimeRow[], language: Drawing['language']): string {
  const { colon, semicolon } = changePhrases(language);
  const told = rows.map(({ survey, answer }) => colon(survey, answerInBrief(answer, language).join(', ')));
  return colon(name, told.join(semicolon));
}

function table(input: ReportInput, { language }: Drawing): string {
  const nameOf = speciesNames(input.species);
  const answers = sortBySpecies(
    input.surveys.flatMap(({ densityBySurvey }) => densityBySurvey),
    input,
  );
  const { density, heads } = reportPhrases(language);
  return densityTable(answers, {
    caption: density.bySurvey,
    head: heads.survey,
    label: ({ survey }) => survey,
    speciesLabel: ({ species }) => nameOf(species).label,
    bySpecies: true,
    confidence: input.settings.confidence,
    language,
  });
}
