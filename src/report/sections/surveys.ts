/** The same species from survey to survey; nothing where there is only one. */

import { reportWords } from '../catalogue/report-words.ts';
import type { BandRow } from '../fading-band.ts';
import { paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { nameMarkup } from './answer.ts';
import { fewAnimalsOnce, smallBands } from './density.ts';

export function surveysSection(input: ReportInput, drawing: Drawing): string {
  if (input.surveys.length < 2) return '';
  const words = reportWords(drawing.language);
  const nameOf = speciesNames(input.species);
  const all = [
    ...new Set(input.surveys.flatMap((survey) => survey.densityBySurvey.map((answer) => answer.species))),
  ];
  const groups = sortBySpecies(
    all.map((species) => ({ species, rows: rowsOf(input, species) })),
    input,
  ).filter(({ rows }) => rows.length > 1);
  if (groups.length === 0) return '';
  const figures = groups.map(({ species, rows }, i) => {
    const inWords = `${fullName(nameOf(species))}: densities in ${rows.length} surveys`;
    return smallBands(nameMarkup(nameOf(species)), { name: `surveys-${i + 1}`, inWords, rows }, drawing);
  });
  return section('surveys', words.surveys, [
    paragraph(words.surveysCaution),
    ...fewAnimalsOnce(groups.flatMap((group) => group.rows)),
    `<div class="pairs">${figures.join('\n')}</div>`,
  ]);
}

function rowsOf(input: ReportInput, species: string): BandRow[] {
  return input.surveys.flatMap((survey) => {
    const answer = survey.densityBySurvey.find((each) => each.species === species);
    const note = `${formatCount(survey.inHand.stations.length)} stations`;
    return answer === undefined ? [] : [{ label: survey.inHand.survey.name, note, answer }];
  });
}
