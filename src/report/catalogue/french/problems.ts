/** Every problem as a French sentence, spaced as French is, from one file per theme. */

import { coordinateProblems } from '../position-words.ts';
import type { ProblemCatalogue } from '../problem-sentence.ts';
import { mapWordsFr } from './map-words.ts';
import { frenchParameter } from './parameters.ts';
import { positionWordsFr } from './position-words.ts';
import { problemsChecksFr } from './problems-checks.ts';
import { problemsMappingFr } from './problems-mapping.ts';
import { problemsReadingFr } from './problems-reading.ts';
import { problemsRowsFr } from './problems-rows.ts';
import { problemsSurveyFr } from './problems-survey.ts';
import { problemsValuesFr } from './problems-values.ts';
import { frenchSpaced } from './typography.ts';

const problems: ProblemCatalogue['problems'] = {
  ...problemsReadingFr,
  ...coordinateProblems(positionWordsFr, 'est-ce {suggestion} ?', ' '),
  ...problemsRowsFr,
  ...problemsSurveyFr,
  ...problemsMappingFr,
  ...problemsChecksFr,
  ...mapWordsFr,
  ...problemsValuesFr,
};

export const frenchProblems: ProblemCatalogue = {
  language: 'fr',
  problems: frenchSpaced(problems),
  notGiven: 'non indiqué',
  parameter: frenchParameter,
};
