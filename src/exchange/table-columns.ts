/** What a column of an import table can hold. The definitions themselves are in `table-definitions.ts`. */

import type { Axis } from '../survey/coordinate-notation.ts';

/** Bounds of a number; `above` is a bound the number may not touch. */
export interface NumberRange {
  readonly atLeast?: number;
  readonly above?: number;
  readonly atMost?: number;
}

export type ColumnKind =
  | { readonly is: 'text' }
  /** With an axis: degrees, which people also write with minutes, seconds and letters. */
  | ({ readonly is: 'number'; readonly axis?: Axis } & NumberRange)
  | ({ readonly is: 'whole number' } & NumberRange)
  /** A whole position, of which the column takes one half. */
  | { readonly is: 'position'; readonly half: Axis }
  | { readonly is: 'date' }
  | { readonly is: 'time' }
  | { readonly is: 'yes' }
  | { readonly is: 'one of'; readonly options: readonly string[] }
  /** Names, with `;` between. */
  | { readonly is: 'list' }
  /** `name:percent`, with `;` between. */
  | { readonly is: 'cover' };

export interface CoverPart {
  readonly name: string;
  readonly percent: number;
}

/** Everything a cell can turn into. */
export type CellContent = string | number | boolean | null | readonly string[] | readonly CoverPart[];

export interface ColumnDefinition {
  /** The name in the header row: a contract. */
  readonly column: string;
  /** Where the value lands in the row types of `survey/table-rows.ts`. */
  readonly field: string;
  readonly kind: ColumnKind;
  /** The column must be there. */
  readonly required: boolean;
  /** The cell must be filled. */
  readonly filled: boolean;
  /** What an empty cell means. */
  readonly whenEmpty: CellContent;
  /** The same quantity under another name, its value being `10 ** shift` of our unit; read only, never written. */
  readonly alternative?: AlternativeColumn;
}

export interface AlternativeColumn {
  readonly column: string;
  readonly shift: number;
  /** Where it holds something else than the column itself. */
  readonly kind?: ColumnKind;
}

export interface TableDefinition {
  readonly columns: readonly ColumnDefinition[];
  /** Columns that together name a row; null where equal rows are two facts. */
  readonly key: readonly string[] | null;
}

export const text: ColumnKind = { is: 'text' };
export const number: ColumnKind = { is: 'number' };
export const positive: ColumnKind = { is: 'number', above: 0 };
export const notNegative: ColumnKind = { is: 'number', atLeast: 0 };
export const countingNumber: ColumnKind = { is: 'whole number', atLeast: 1 };
export const date: ColumnKind = { is: 'date' };
export const time: ColumnKind = { is: 'time' };
export const yes: ColumnKind = { is: 'yes' };
export const list: ColumnKind = { is: 'list' };
const latitude: ColumnKind = { is: 'number', axis: 'latitude', atLeast: -90, atMost: 90 };
const longitude: ColumnKind = { is: 'number', axis: 'longitude', atLeast: -180, atMost: 180 };

export function oneOf(options: readonly string[]): ColumnKind {
  return { is: 'one of', options };
}

/** A column that must be there and filled. */
export function required(column: string, kind: ColumnKind, field = column): ColumnDefinition {
  return { column, field, kind, required: true, filled: true, whenEmpty: null };
}

/** A column that may be absent or empty; an empty cell means `whenEmpty`. */
export function optional(
  column: string,
  kind: ColumnKind,
  field = column,
  whenEmpty: CellContent = null,
): ColumnDefinition {
  return { column, field, kind, required: false, filled: false, whenEmpty };
}

/** Degrees under their own name, or half of a position that stands in one cell. */
export function degrees(column: string, field: string, half: Axis, position: string): ColumnDefinition {
  return {
    ...optional(column, half === 'latitude' ? latitude : longitude, field),
    alternative: { column: position, shift: 0, kind: { is: 'position', half } },
  };
}

/** The alternative as a column of its own; null where there is none. */
export function alternativeOf(definition: ColumnDefinition): ColumnDefinition | null {
  const other = definition.alternative;
  return other === undefined
    ? null
    : { ...definition, column: other.column, kind: other.kind ?? definition.kind };
}

/** Every column name that reading knows, each once. */
export function namesRead({ columns }: TableDefinition): string[] {
  return [
    ...new Set(columns.flatMap((c) => (c.alternative ? [c.column, c.alternative.column] : [c.column]))),
  ];
}
