/** Why a cell was not understood, or is in doubt; the caller adds the place. */

import type { Parameters, ProblemCode } from '../survey/message.ts';
import type { CellContent, ColumnDefinition } from './table-columns.ts';

export interface Refusal {
  readonly code: ProblemCode;
  readonly parameters: Parameters;
  readonly suggestion: string | null;
  /** A doubt: the value stands while somebody is asked. */
  readonly keepsValue?: true;
  /** Further doubts about the same value. */
  readonly also?: readonly Refusal[];
}

/** A value, or a refusal, or a value that is in doubt. */
export interface Reading {
  readonly value: CellContent;
  readonly refusal: Refusal | null;
}

export function refused(
  code: ProblemCode,
  column: ColumnDefinition,
  parameters: Parameters = {},
  suggestion: string | null = null,
): Reading {
  return { value: null, refusal: { code, parameters: { column: column.column, ...parameters }, suggestion } };
}
