/**
 * A failure the person can do something about: one error type with a code and parameters.
 * The sentence comes from the catalogue in `report`, the exit code and HTTP status from one table at the edge.
 * What a person cannot mend is a mistake of ours and is thrown as a plain Error.
 */

import type { Parameters } from './message.ts';

/** Every failure, with the names of its parameters, so that a test can hold the catalogue against it. */
export const failureParameters = {
  // the survey book as a folder
  'no-book-here': ['folder'],
  'book-exists': ['folder'],
  /** Made by a later version of the program: nothing was touched. */
  'book-newer': ['folder', 'version', 'known'],
  'book-damaged': ['folder', 'detail'],
  'book-locked': ['folder'],
  'read-only': ['folder'],
  'disk-full': ['folder'],
  'disk-fault': ['folder', 'detail'],
  /** The book was there when it was opened and is not any more: a stick pulled out, a folder moved. */
  'folder-gone': ['folder'],
  // copies of a book
  'book-is-backup': ['folder'],
  'no-backup-here': ['path'],
  'backup-damaged': ['path', 'detail'],
  'backup-failed': ['path', 'detail'],
  'folder-not-empty': ['folder'],
  // the book as it stood
  'nothing-yet': ['moment', 'first'],
  'past-stays': ['moment'],
  'nothing-in-history': ['asked'],
  // what a change would do to the records; nothing was written
  'record-invalid': ['kind', 'recordId', 'field', 'detail'],
  'already-there': ['kind', 'key'],
  /** The record names another one that is not in the book, or would leave it. */
  'refers-to-nothing': ['kind', 'recordId', 'missing'],
  // what a person asked for by name and the book does not hold; `nearest` and `known` may be empty
  'unknown-survey-name': ['name', 'nearest', 'known'],
  'unknown-species-name': ['name', 'nearest', 'known'],
  'unknown-stratum-name': ['name', 'nearest', 'known'],
  'unknown-scope-name': ['scope', 'name', 'nearest', 'known'],
  'unknown-plan-name': ['name', 'nearest', 'known'],
  'area-name-of-several': ['name', 'roles'],
  'unknown-area-name': ['name', 'nearest', 'known'],
  'mask-reason-missing': ['count'],
  'no-survey-yet': [],
  // answers; `nearest` and `known` may be empty
  'no-such-question': ['code', 'nearest', 'known'],
  'several-questions': ['code', 'count', 'known'],
  'stop-not-answerable': ['code'],
  /** "None seen" said of a station that has no belt to mark. */
  'belts-not-entered': ['station'],
  'path-not-found': ['path'],
  'not-a-demo-book': ['folder'],
  'cannot-write': ['path', 'detail'],
  // serving the screens
  'not-loopback': ['host'],
  'port-taken': ['port'],
  // surveys set against each other
  'one-survey-only': ['survey'],
  'same-survey-twice': ['survey'],
  'surveys-backwards': ['earlier', 'later'],
  'trend-needs-three': ['surveys'],
  'impact-needs-control': [],
  'no-such-place-in-both': ['name', 'known'],
  // own values; `nearest` and `known` may be empty
  'no-such-own-value': ['name', 'species', 'nearest', 'known'],
  'several-own-values': ['name', 'known'],
  'withdraw-needs': ['name', 'missing'],
} as const satisfies Record<string, readonly string[]>;

export type FailureCode = keyof typeof failureParameters;

export class Failure extends Error {
  readonly code: FailureCode;
  readonly parameters: Parameters;

  constructor(code: FailureCode, parameters: Parameters, cause?: unknown) {
    super(`${code} ${JSON.stringify(parameters)}`, { cause });
    this.name = 'Failure';
    this.code = code;
    this.parameters = parameters;
  }
}
