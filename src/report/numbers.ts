/**
 * Numbers as people read them: two or three significant digits, never an exponent.
 *
 * Thousands are parted by a narrow no-break space (U+202F), because in half of the places where
 * these papers are read a comma is the decimal mark, and 1,480 would be read as one and a half.
 *
 * Each takes the language it is read in, English where none is given. The comma is for people only:
 * a table that another program reads keeps its points.
 */

import type { Language } from './catalogue/language.ts';

const thousandsGap = '\u202f';
/** Below this a density or length says nothing more than "very small". */
const smallestShown = 0.001;

/**
 * A number to so many significant digits. 0 is "0"; 1483.2 is "1 480"; 0.00004 is "< 0.001".
 * A number that is not finite is a mistake of ours: unknown is null and has a reason.
 */
export function formatSignificant(
  value: number,
  digits: 1 | 2 | 3 | 4 | 5 = 3,
  language: Language = 'en',
): string {
  if (!Number.isFinite(value)) throw new Error('formatSignificant requires a finite number');
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < smallestShown)
    return `${value < 0 ? '> −' : '< '}${withDecimalMark(`${smallestShown}`, language)}`;
  const rounded = Number(size.toPrecision(digits));
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(rounded)));
  const text = rounded >= 1e21 ? BigInt(rounded).toString() : rounded.toFixed(decimals);
  return (value < 0 ? '−' : '') + withDecimalMark(groupThousands(text), language);
}

/** A number as short as it can be said: whole numbers in full, others to three digits without idle zeros. */
export function formatShort(value: number, language: Language = 'en'): string {
  if (Number.isInteger(value)) return formatCount(value);
  const text = formatSignificant(value, 3);
  return withDecimalMark(text.includes('.') ? text.replace(/\.?0+$/, '') : text, language);
}

/** An area in hectares: whole ones in full, so that strata add up to their sum within a hectare; patches of a hectare keep their decimals. */
export function formatHectares(value: number, language: Language = 'en'): string {
  return value >= 100 ? formatCount(value) : formatSignificant(value, 3, language);
}

/** A count in full: every animal and station is written out. */
export function formatCount(count: number): string {
  if (!Number.isFinite(count)) throw new Error('formatCount requires a finite number');
  const whole = Math.round(count);
  const text = Math.abs(whole) >= 1e21 ? BigInt(Math.abs(whole)).toString() : Math.abs(whole).toFixed(0);
  return (whole < 0 ? '−' : '') + groupThousands(text);
}

/** Both ends of an interval, rounded alike: "820 to 2 900". */
export function formatInterval(
  interval: readonly [number, number],
  digits: 2 | 3 = 2,
  language: Language = 'en',
): string {
  const [low, high] = interval.map((end) => formatSignificant(end, digits, language));
  return `${low}\u00a0${language === 'fr' ? 'à' : 'to'}\u00a0${high}`;
}

/** A share of the whole in per cent: "38 %"; never "0 %" or "100 %" for what is merely near it. */
export function formatShare(share: number): string {
  if (!Number.isFinite(share)) throw new Error('formatShare requires a finite number');
  const percent = share * 100;
  if (percent > 0 && percent < 1) return '< 1\u00a0%';
  if (percent < 100 && percent > 99) return '> 99\u00a0%';
  return `${Math.round(percent)}\u00a0%`;
}

/** A stock in a sentence: "about" is for the writer; here 1 234 000 becomes "1.2 million". */
export function formatStockInWords(animals: number, language: Language = 'en'): string {
  if (animals < 999_500) return formatSignificant(animals, 2, language);
  const [unit, name] =
    animals < 999_500_000 ? ([1e6, 'million'] as const) : ([1e9, 'thousand million'] as const);
  const figure = formatSignificant(animals / unit, 2, language);
  if (language === 'en') return `${figure}\u00a0${name}`;
  // In French the plural begins at two, and what is counted follows with "de".
  const stem = unit === 1e6 ? 'million' : 'milliard';
  return `${figure}\u00a0${stem}${Number(formatSignificant(animals / unit, 2)) >= 2 ? 's' : ''}`;
}

/** A number that is written already, with the decimal mark of the language; thousands are parted alike in both. */
export function withDecimalMark(text: string, language: Language): string {
  return language === 'fr' ? text.replace('.', ',') : text;
}

function groupThousands(text: string): string {
  const [whole, fraction] = text.split('.') as [string, string?];
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, thousandsGap);
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
