/** The French catalogue: one file per theme, of the same codes as the English, spaced as French is. */

import type { ProblemCode } from '../../../survey/problem-codes.ts';
import { coordinateProblems } from '../position-words.ts';
import { failuresFr } from './failures.ts';
import { mapWordsFr } from './map-words.ts';
import { positionWordsFr } from './position-words.ts';
import { problemsChecksFr } from './problems-checks.ts';
import { problemsMappingFr } from './problems-mapping.ts';
import { problemsReadingFr } from './problems-reading.ts';
import { problemsRowsFr } from './problems-rows.ts';
import { problemsSurveyFr } from './problems-survey.ts';
import { problemsValuesFr } from './problems-values.ts';
import { holdsInWordsFr, reasonsFr } from './reasons.ts';
import { reasonsOnPaperFr } from './reasons-on-paper.ts';
import { frenchSpaced } from './typography.ts';

const problems: Readonly<Record<ProblemCode, string>> = {
  ...problemsReadingFr,
  ...coordinateProblems(positionWordsFr, 'est-ce {suggestion} ?', ' '),
  ...problemsRowsFr,
  ...problemsSurveyFr,
  ...problemsMappingFr,
  ...problemsChecksFr,
  ...mapWordsFr,
  ...problemsValuesFr,
};

export const french = {
  problems: frenchSpaced(problems),
  reasons: frenchSpaced(reasonsFr),
  onPaper: frenchSpaced(reasonsOnPaperFr),
  failures: frenchSpaced(failuresFr),
  holds: holdsInWordsFr,
};
