/** Reads a number cell, or says why it cannot be one: text, two meanings, an uncertain sign, a stand-in for nothing. */

import { likelyDecimal, readDecimal } from './decimal.ts';
import { type CommaHabit, withoutCommas } from './habits.ts';
import { type Reading, refused } from './refusal.ts';
import type { ColumnDefinition, ColumnKind, NumberRange } from './table-columns.ts';
import { numberByRule, readApproximate } from './written-number.ts';

type NumberKind = NumberRange & { readonly is: ColumnKind['is'] };

export interface NumberSettings {
  /** The cell's number is ten to this power of our unit. */
  readonly shift: number;
  /** What commas mean in this file; null when nothing proves it. */
  readonly commas: CommaHabit | null;
}

export function readNumber(
  column: ColumnDefinition,
  kind: NumberKind,
  text: string,
  { shift, commas }: NumberSettings,
): Reading {
  const plain = commas === null ? text : withoutCommas(text, commas);
  const value = readDecimal(plain, shift);
  if (value === null) return notPlain(column, text, shift);
  if (kind.is === 'whole number' && !Number.isInteger(value)) return refused('not-a-whole-number', column);
  if (isOutside(value, kind) || (kind.is === 'whole number' && !Number.isSafeInteger(value))) {
    return refused('number-out-of-range', column, { range: rangeInSigns(kind) });
  }
  return standsForNothing(value, column) ? questioned(value, column) : { value, refusal: null };
}

function notPlain(column: ColumnDefinition, text: string, shift: number): Reading {
  if (/^[+-]?\d{1,3}(,\d{3})+$/.test(text)) {
    const parameters = { asDecimal: text.replace(',', '.'), asThousands: text.replaceAll(',', '') };
    return refused('comma-unclear', column, parameters);
  }
  const approximate = readApproximate(text);
  if (approximate !== null) {
    const middle = approximate.is === 'range' ? numberByRule(text, { range: 'middle' }) : approximate.number;
    return refused('number-approximate', column, { kind: approximate.is }, middle);
  }
  return refused('not-a-number', column, {}, withItsUnit(text, column, shift) ?? likelyDecimal(text));
}

/** `18 cm` in a column of millimetres means 180, not 18. */
function withItsUnit(text: string, column: ColumnDefinition, shift: number): string | null {
  const parts = /^([\d.,]+)\s*(mm|cm|m)$/i.exec(text);
  if (parts === null || !column.column.endsWith('_mm') || shift !== 0) return null;
  const powers: Readonly<Record<string, number>> = { mm: 0, cm: 1, m: 3 };
  const value = readDecimal(parts[1]!.replace(',', '.'), powers[parts[2]!.toLowerCase()]);
  return value === null ? null : String(value);
}

function isOutside(value: number, range: NumberRange): boolean {
  if (range.atLeast !== undefined && value < range.atLeast) return true;
  if (range.above !== undefined && value <= range.above) return true;
  return range.atMost !== undefined && value > range.atMost;
}

/** A range in signs that need no translation: `> 0`, `≥ 1`, `-90 … 90`. */
function rangeInSigns(range: NumberRange): string {
  if (range.atLeast !== undefined && range.atMost !== undefined) return `${range.atLeast} … ${range.atMost}`;
  if (range.above !== undefined) return `> ${range.above}`;
  return `≥ ${range.atLeast ?? 0}`;
}

/** Numbers that programs and people write for "nothing there"; common practice. An animal of a tenth of a millimetre is none. */
function standsForNothing(value: number, column: ColumnDefinition): boolean {
  const size = Math.abs(value);
  if (size === 999 || size === 9999 || size === 99_999) return true;
  return column.field === 'lengthMm' && (value <= 0.1 || value === 9990 || value === 99_990);
}

/** The value is kept, and a person is asked. */
function questioned(value: number, column: ColumnDefinition): Reading {
  const parameters = { column: column.column };
  return { value, refusal: { code: 'looks-like-missing', parameters, suggestion: null, keepsValue: true } };
}
