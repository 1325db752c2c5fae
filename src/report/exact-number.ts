/** A number as it enters a formula. */

import type { Language } from './catalogue/language.ts';
import { withDecimalMark } from './numbers.ts';

/** Six digits without an exponent: what is printed here can be added up again. */
export function exact(value: number, language: Language = 'en'): string {
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value)));
  const rounded = Number(value.toPrecision(6));
  const text = rounded.toFixed(Math.min(20, Math.max(0, 5 - size)));
  return withDecimalMark(text.includes('.') ? text.replace(/\.?0+$/, '') : text, language);
}
