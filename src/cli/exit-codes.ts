import type { FailureCode } from '../survey/failure.ts';

/** What a shell is told. Questions of severity explain or note do not change 0. */
export const exitCodes = {
  done: 0,
  /** A stop problem, or the answer is held, or something outside the program stood in the way. */
  held: 1,
  wrongUse: 2,
  ourFault: 70,
} as const;

const askedWrongly: ReadonlySet<FailureCode> = new Set([
  'no-book-here',
  'book-exists',
  'unknown-survey-name',
  'unknown-species-name',
  'unknown-stratum-name',
  'unknown-scope-name',
  'unknown-plan-name',
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
