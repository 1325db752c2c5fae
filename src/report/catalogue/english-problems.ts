/** Every problem as an English sentence, from one file per theme. */

import { mapWords } from './map-words.ts';
import { coordinateProblems, positionWords } from './position-words.ts';
import type { ProblemCatalogue } from './problem-sentence.ts';
import { problemsChecks } from './problems-checks.ts';
import { problemsMapping } from './problems-mapping.ts';
import { problemsReading } from './problems-reading.ts';
import { problemsRows } from './problems-rows.ts';
import { problemsSurvey } from './problems-survey.ts';
import { problemsValues } from './problems-values.ts';

export const englishProblems: ProblemCatalogue = {
  language: 'en',
  problems: {
    ...problemsReading,
    ...coordinateProblems(positionWords, 'did you mean {suggestion}?'),
    ...problemsRows,
    ...problemsSurvey,
    ...problemsMapping,
    ...problemsChecks,
    ...mapWords,
    ...problemsValues,
  },
};
