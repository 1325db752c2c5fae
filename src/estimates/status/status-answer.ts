/** Status as the command line, the report and the screens receive it. */

import type { Reason } from '../../survey/message.ts';
import type { CountMethod, ValueOf, ValueStatus } from '../../survey/value-words.ts';
import type { DensityAnswer, SizesAnswer } from '../answers.ts';
import type { StatusClass } from './status-class.ts';

/** A density to compare with: published or the officer's own, never without its source. */
export interface ReferenceUsed {
  readonly content: ValueOf<'reference-density'>;
  readonly source: string;
  readonly status: ValueStatus;
  readonly note: string | null;
}

export interface Comparison {
  readonly reference: ReferenceUsed;
  /** Why the two are not compared; null when they are. */
  readonly held: Reason | null;
  readonly limitations: readonly Reason[];
  /** The chance that is used: of the belief where there is one, else by the design; null where none can be given. */
  readonly probabilityBelow: number | null;
  readonly probabilityFrom: 'clumped-count belief' | 'design' | null;
  /** By the design, beside it (METHODS k1). */
  readonly designProbabilityBelow: number | null;
  readonly statusClass: StatusClass | null;
  /** Nothing seen: the bound that is compared, and whether it lies below the reference. */
  readonly bound: { readonly perHa: number; readonly isBelow: boolean } | null;
}

export interface SizeShare {
  readonly limitMm: number;
  readonly source: string;
  readonly status: ValueStatus;
  readonly share: NonNullable<SizesAnswer['shareAtLeast']> | null;
  /** Why there is no share, or no interval. */
  readonly reason: Reason | null;
}

export interface StatusAnswer {
  readonly density: DensityAnswer;
  /** How the survey counted, against which references are matched. */
  readonly methods: readonly CountMethod[];
  readonly beltWidthsM: readonly number[];
  /** One for each published or typed density; empty where none is known. */
  readonly comparisons: readonly Comparison[];
  /** Of the animals counted: at or above the size at first maturity, once per source. */
  readonly atMaturity: readonly SizeShare[];
  /** At or above the book's own size limit; null where the book has none. */
  readonly atLegalSize: SizeShare | null;
  readonly measured: number;
}
