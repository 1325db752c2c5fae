/**
 * Messages as values: a code with parameters. The sentence comes from the catalogue
 * in `report`, in the reader's language, at the very edge.
 */

import type { ProblemCode } from './problem-codes.ts';
import type { ReasonCode } from './reason-codes.ts';

export type Parameters = Readonly<Record<string, string | number>>;

/** Why something cannot be known, or was left out. */
export interface Reason {
  readonly code: ReasonCode;
  readonly parameters: Parameters;
}

export type Severity = 'stop' | 'explain' | 'note';

/** Where a problem sits: in a file, in the survey, or both. Rows count from 1 and include the header row. */
export interface Place {
  readonly file?: string;
  readonly sheet?: string;
  readonly row?: number;
  readonly column?: string;
  readonly survey?: string;
  readonly station?: string;
  readonly transect?: string;
  readonly swim?: number;
  readonly species?: string;
}

/** A finding about the data. It is a value; readers never throw on bad content. */
export interface Problem {
  readonly code: ProblemCode;
  readonly severity: Severity;
  readonly place: Place;
  /** What stands there, as written; null when the point is that nothing does. */
  readonly value: string | number | null;
  readonly parameters: Parameters;
  /** The most likely correction, as it would be typed; null when there is none. */
  readonly suggestion: string | null;
}

/** What a reader gives back: all it understood, and every problem it met. */
export interface WithProblems<Value> {
  readonly value: Value;
  readonly problems: readonly Problem[];
}

export type { ProblemCode };
