import type { CheckedProblem } from '../tasks/check-survey.ts';
import { problemRow } from './json-output.ts';

/** A problem as the contract shows it, with what a person said about it; null while it is open. */
export function checkedRow({ problem, answer }: CheckedProblem): Readonly<Record<string, unknown>> {
  const said =
    answer === null
      ? null
      : { answer: answer.answer, who: answer.who, why: answer.why, answeredAt: answer.answeredAt };
  return { ...problemRow(problem), answer: said };
}
