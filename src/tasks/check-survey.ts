/** The questions that an import and an estimate need answered, and the whole evening's round of checks. */

import type { Problem } from '../survey/message.ts';
import { problemKeyOf, problemValueOf } from '../survey/problem-key.ts';
import type { Store } from '../survey/store.ts';
import type { Answer } from '../survey/words.ts';
import { allChecks, estimateChecks } from './checks/all-checks.ts';
import type { CheckContext } from './checks/check.ts';
import { type CheckGround, noGround, readCheckGround, withPlannedPositions } from './checks/ground.ts';
import {
  type BookWords,
  readBookWords,
  type SurveyOpened,
  surveysAsked,
  takeInHand,
} from './take-in-hand.ts';

export interface CheckRequest {
  /** Null for every survey of the book. */
  readonly survey: string | null;
  /** ISO day, by the clock of whoever asks. */
  readonly today: string;
  /** Told the name of each survey before it is read. */
  readonly onSurvey?: (name: string) => void;
}

export interface CheckedProblem {
  readonly problem: Problem;
  /** What a person said about it, for as long as the value it was said of stands; null while it is open. */
  readonly answer: Answer | null;
}

export interface CheckResult {
  readonly checked: readonly CheckedProblem[];
  readonly dataVersion: string;
}

/** Every check over the surveys asked for, lengths and all. One pass a check; one survey at a time in memory. */
export async function checkSurveys(store: Store, request: CheckRequest): Promise<CheckResult> {
  const words = await readBookWords(store);
  const { invented } = await store.info();
  const answers = new Map((await store.all('answer')).map((answer) => [answer.problemKey, answer]));
  const ground = await readCheckGround(store);
  const checked: CheckedProblem[] = [];
  for (const survey of surveysAsked(words, request.survey)) {
    request.onSurvey?.(survey.name);
    const opened = await takeInHand(store, words, survey, { lengths: true });
    const found = problemsOf(opened, words, invented ? null : request.today, ground);
    checked.push(...found.map((problem) => ({ problem, answer: answerTo(problem, answers) })));
  }
  return { checked, dataVersion: await store.dataVersion() };
}

/** Every check over one survey that was opened with its lengths. */
export function problemsOf(
  { inHand, targetList }: SurveyOpened,
  words: Pick<BookWords, 'species'>,
  today: string | null,
  ground: CheckGround = noGround,
): readonly Problem[] {
  const species = new Map(words.species.map((one) => [one.id, one]));
  const withPlans = withPlannedPositions(inHand, ground);
  const context: CheckContext = { inHand: withPlans, targetList, species, today, ground };
  return allChecks.flatMap((check) => check.run(context));
}

/** What an estimate of one opened survey needs answered. Cheap: no length is looked at. */
export function askedOf({ inHand, targetList }: SurveyOpened): readonly Problem[] {
  const context: CheckContext = { inHand, targetList, species: new Map(), today: null, ground: noGround };
  return estimateChecks.flatMap((check) => check.run(context));
}

/** A stop is never answered away; a changed value opens its question again. */
function answerTo(problem: Problem, answers: ReadonlyMap<string, Answer>): Answer | null {
  if (problem.severity === 'stop') return null;
  const answer = answers.get(problemKeyOf(problem));
  return answer !== undefined && answer.value === problemValueOf(problem) ? answer : null;
}
