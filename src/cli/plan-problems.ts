/** Findings about a plan for programs, in the keys that every problem has. */

import type { PlanProblem } from '../planning/size/plan-problem.ts';
import { planSentence } from '../report/catalogue/plan-words.ts';

export function planProblemRow(problem: PlanProblem): Readonly<Record<string, unknown>> {
  const { code, severity, parameters } = problem;
  const nowhere = { survey: null, station: null, transect: null, swim: null, species: null };
  return {
    ...{ code, severity, ...nowhere },
    value: parameters['value'] ?? null,
    message: planSentence(problem),
    suggestion: null,
    ...{ file: null, sheet: null, row: null, column: null },
  };
}
