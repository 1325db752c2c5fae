/** The same species from survey to survey; nothing where there is only one. */

import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import type { BandRow } from '../fading-band.ts';
import { paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { ReportInput } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { nameMarkup } from './answer.ts';
import { bandFigure } from './density.ts';

export function surveysSection(input: ReportInput, language: Language): string {
  if (input.surveys.length < 2) return '';
  const words = reportWords(language);
  const nameOf = speciesNames(input.species);
  const all = [
    ...new Set(input.surveys.flatMap((survey) => survey.densityBySurvey.map((answer) => answer.species))),
  ];
  const blocks = sortBySpecies(
    all.map((species) => ({ species })),
    input,
  ).flatMap(({ species }, i) => {
    const rows = rowsOf(input, species);
    if (rows.length < 2) return [];
    const inWords = `${fullName(nameOf(species))}: densities in ${rows.length} surveys`;
    const drawn = bandFigure(rows, { name: `surveys-${i + 1}`, inWords, language });
    return [`<h3>${nameMarkup(nameOf(species))}</h3>\n${drawn}`];
  });
  return blocks.length === 0
    ? ''
    : section('surveys', words.surveys, [paragraph(words.surveysCaution), ...blocks]);
}

function rowsOf(input: ReportInput, species: string): BandRow[] {
  return input.surveys.flatMap((survey) => {
    const answer = survey.densityBySurvey.find((each) => each.species === species);
    const note = `${formatCount(survey.inHand.stations.length)} stations`;
    return answer === undefined ? [] : [{ label: survey.inHand.survey.name, note, answer }];
  });
}
