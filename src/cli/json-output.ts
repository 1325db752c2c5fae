/** The one JSON object every command prints with `--json`: numbers unrounded, sentences in English. */

import type { PlanProblem } from '../planning/size/plan-problem.ts';
import { problemWithoutPlace } from '../report/catalogue/sentence.ts';
import type { Problem } from '../survey/message.ts';
import type { Io } from './io.ts';
import { planProblemRow } from './plan-problems.ts';
import { programVersion } from './program-version.ts';

export interface JsonAnswer {
  readonly command: string;
  /** Null where no book was asked. */
  readonly dataVersion: string | null;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly rows: readonly unknown[];
  readonly problems: readonly Problem[];
  /** Findings about a plan, after those about data. */
  readonly planProblems?: readonly PlanProblem[];
}

export function printJson(io: Io, answer: JsonAnswer): void {
  const { command, dataVersion, settings, rows, problems, planProblems = [] } = answer;
  const object = {
    command,
    version: programVersion(),
    dataVersion,
    settings,
    rows,
    problems: [...problems.map(problemRow), ...planProblems.map(planProblemRow)],
  };
  io.stdout(`${JSON.stringify(object, null, 2)}\n`);
}

/** A problem as the contract shows it, with the place in the file beside the place in the survey. */
export function problemRow(problem: Problem): Readonly<Record<string, unknown>> {
  const { place } = problem;
  return {
    code: problem.code,
    severity: problem.severity,
    survey: place.survey ?? null,
    station: place.station ?? null,
    transect: place.transect ?? null,
    swim: place.swim ?? null,
    species: place.species ?? null,
    value: problem.value,
    message: problemWithoutPlace('en', problem),
    suggestion: problem.suggestion,
    file: place.file ?? null,
    sheet: place.sheet ?? null,
    row: place.row ?? null,
    column: place.column ?? null,
  };
}
