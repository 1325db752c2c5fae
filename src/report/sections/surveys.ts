/** The same species from survey to survey; nothing where there is only one. */

import { reportPhrases } from '../catalogue/report-phrases.ts';
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
  const { density } = reportPhrases(drawing.language);
  const nameOf = speciesNames(input.species);
  const all = [
    ...new Set(input.surveys.flatMap((survey) => survey.densityBySurvey.map((answer) => answer.species))),
  ];
  const groups = sortBySpecies(
    all.map((species) => ({ species, rows: rowsOf(input, species, density.stations) })),
    input,
  ).filter(({ rows }) => rows.length > 1);
  if (groups.length === 0) return '';
  const figures = groups.map(({ species, rows }, i) => {
    const inWords = density.surveysInWords(fullName(nameOf(species)), rows.length);
    return smallBands(nameMarkup(nameOf(species)), { name: `surveys-${i + 1}`, inWords, rows }, drawing);
  });
  return section('surveys', words.surveys, [
    paragraph(words.surveysCaution),
    ...fewAnimalsOnce(
      groups.flatMap((group) => group.rows),
      drawing.language,
    ),
    `<div class="pairs">${figures.join('\n')}</div>`,
  ]);
}

function rowsOf(input: ReportInput, species: string, stations: (n: string) => string): BandRow[] {
  return input.surveys.flatMap((survey) => {
    const answer = survey.densityBySurvey.find((each) => each.species === species);
    const note = stations(formatCount(survey.inHand.stations.length));
    return answer === undefined ? [] : [{ label: survey.inHand.survey.name, note, answer }];
  });
}
