import type { FailureCode } from '../survey/failure.ts';

/** What a shell is told. Questions of severity explain or note do not change 0. */
export const exitCodes = {
  /** Answered; some of many rows may have a reason in place of a number. */
  done: 0,
  /**
   * A stop problem, or an answer is held until somebody answers for it, or the one thing that was asked by name has no
   * number at all, or something outside the program stood in the way.
   */
  held: 1,
  /** An option, or a name in it (survey, species, stratum, zone, plan), that is not there. */
  wrongUse: 2,
  ourFault: 70,
} as const;

/** Of a verb that estimates: held rows, or a species asked for by name and not one row with a number. */
export function exitCodeOfAnswers<Answer>(
  answers: readonly Answer[],
  told: {
    readonly isHeld: (answer: Answer) => boolean;
    readonly isKnown: (answer: Answer) => boolean;
    /** The species that was named; undefined where all were asked for. */
    readonly species: string | undefined;
  },
): number {
  const isUnanswered = told.species !== undefined && !answers.some(told.isKnown);
  return isUnanswered || answers.some(told.isHeld) ? exitCodes.held : exitCodes.done;
}

const askedWrongly: ReadonlySet<FailureCode> = new Set([
  'no-book-here',
  'book-exists',
  'unknown-survey-name',
  'unknown-species-name',
  'unknown-stratum-name',
  'unknown-scope-name',
  'unknown-plan-name',
  'area-name-of-several',
  'unknown-area-name',
  'mask-reason-missing',
  'no-survey-yet',
  'no-such-question',
  'several-questions',
  'stop-not-answerable',
  'belts-not-entered',
  'path-not-found',
  'not-a-demo-book',
  'book-is-backup',
  'no-backup-here',
  'folder-not-empty',
  'nothing-yet',
  'nothing-in-history',
  'not-loopback',
  'port-taken',
  'one-survey-only',
  'same-survey-twice',
  'surveys-backwards',
  'trend-needs-three',
  'impact-needs-control',
  'no-such-place-in-both',
  'no-such-own-value',
  'several-own-values',
  'withdraw-needs',
]);

export function exitCodeOfFailure(code: FailureCode): number {
  return askedWrongly.has(code) ? exitCodes.wrongUse : exitCodes.held;
}
