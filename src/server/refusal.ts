/** A request that cannot be served, and the one table from codes to HTTP status. */

import { type FieldFault, fieldName, fieldSentence } from '../report/catalogue/field-words.ts';
import { failureSentence } from '../report/catalogue/sentence.ts';
import { type ScreenLanguage, type ServerCode, serverSentence } from '../report/catalogue/server-words.ts';
import { Failure, type FailureCode } from '../survey/failure.ts';
import type { ErrorAnswer } from '../tasks/sheets/answer-schemas.ts';
import { catalogueLanguage } from '../tasks/sheets/work-orders.ts';

export class Refusal extends Error {
  readonly code: RefusalCode;
  readonly parameters: Readonly<Record<string, string | number>>;
  /** What the answer holds besides the code and the sentence. */
  readonly more: Readonly<Record<string, unknown>>;

  constructor(
    code: RefusalCode,
    parameters: Readonly<Record<string, string | number>> = {},
    more: Readonly<Record<string, unknown>> = {},
  ) {
    super(code);
    this.name = 'Refusal';
    this.code = code;
    this.parameters = parameters;
    this.more = more;
  }
}

/** The first fault in the sentence, all of them beside it. */
export class InvalidRequest extends Refusal {
  readonly faults: readonly FieldFault[];

  constructor(faults: readonly FieldFault[]) {
    super('request-invalid');
    this.faults = faults;
  }
}

export const refusalStatus = {
  'request-invalid': 400,
  'foreign-origin': 403,
  'no-such-address': 404,
  'no-such-survey': 404,
  'no-such-station': 404,
  'no-such-photo': 404,
  'no-such-job': 404,
  'wrong-method': 405,
  'sheet-changed': 409,
  'sheet-not-as-seen': 409,
  'photos-on-station': 409,
  'day-changed': 409,
  'answer-changed': 409,
  'photo-changed': 409,
  'job-not-ended': 409,
  'job-without-result': 409,
  'too-large': 413,
  'not-json': 415,
  'not-a-picture': 415,
  'not-a-file': 415,
  'wrong-host': 421,
  'too-many-jobs': 429,
  'screens-not-built': 503,
  'internal-error': 500,
} as const satisfies Partial<Record<ServerCode, number>>;
export type RefusalCode = keyof typeof refusalStatus;

/** Everything else about the disk or the book is 500, with its sentence. */
const failureStatus: Readonly<Partial<Record<FailureCode, number>>> = {
  'unknown-survey-name': 404,
  'unknown-species-name': 404,
  'unknown-stratum-name': 404,
  'no-survey-yet': 404,
  'no-such-question': 404,
  'nothing-in-history': 404,
  'already-there': 409,
  'several-questions': 409,
  'record-invalid': 422,
  'refers-to-nothing': 422,
  'stop-not-answerable': 422,
  'belts-not-entered': 422,
  'book-locked': 503,
  'disk-full': 507,
};

/** What a person is told; a fault of ours is logged whole and told in one sentence. */
export function refusalAnswer(
  error: unknown,
  language: ScreenLanguage,
  log: (error: unknown) => void,
): { readonly status: number; readonly body: ErrorAnswer } {
  if (error instanceof InvalidRequest) return invalidAnswer(error, language);
  if (error instanceof Refusal) {
    const message = serverSentence(language, error.code, error.parameters);
    return { status: refusalStatus[error.code], body: { code: error.code, message, ...error.more } };
  }
  if (error instanceof Failure) {
    const message = failureSentence(catalogueLanguage(language), error);
    return { status: failureStatus[error.code] ?? 500, body: { code: error.code, message } };
  }
  log(error);
  return {
    status: 500,
    body: { code: 'internal-error', message: serverSentence(language, 'internal-error') },
  };
}

function invalidAnswer(
  { code, faults }: InvalidRequest,
  language: ScreenLanguage,
): { readonly status: number; readonly body: ErrorAnswer } {
  const [first] = faults;
  const parameters =
    first === undefined
      ? {}
      : { field: fieldName(language, first.path), detail: fieldSentence(language, first) };
  const fields = faults.map((fault) => ({
    field: fault.path.map(String).join('.'),
    message: fieldSentence(language, fault),
  }));
  const message = serverSentence(language, code, parameters);
  return { status: refusalStatus[code], body: { code, message, fields } };
}
