/**
 * Numbers as people read them: two or three significant digits, never an exponent.
 *
 * Thousands are parted by a narrow no-break space (U+202F), because in half of the places where
 * these papers are read a comma is the decimal mark, and 1,480 would be read as one and a half.
 */

const thousandsGap = '\u202f';
/** Below this a density or length says nothing more than "very small". */
const smallestShown = 0.001;

/**
 * A number to so many significant digits. 0 is "0"; 1483.2 is "1 480"; 0.00004 is "< 0.001".
 * A number that is not finite is a mistake of ours: unknown is null and has a reason.
 */
export function formatSignificant(value: number, digits: 2 | 3 = 3): string {
  if (!Number.isFinite(value)) throw new Error('formatSignificant requires a finite number');
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < smallestShown) return `${value < 0 ? '> −' : '< '}${smallestShown}`;
  const rounded = Number(size.toPrecision(digits));
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(rounded)));
  const text = rounded >= 1e21 ? BigInt(rounded).toString() : rounded.toFixed(decimals);
  return (value < 0 ? '−' : '') + groupThousands(text);
}

/** A number as short as it can be said: whole numbers in full, others to three digits without idle zeros. */
export function formatShort(value: number): string {
  if (Number.isInteger(value)) return formatCount(value);
  const text = formatSignificant(value, 3);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** A count in full: every animal and station is written out. */
export function formatCount(count: number): string {
  if (!Number.isFinite(count)) throw new Error('formatCount requires a finite number');
  const whole = Math.round(count);
  const text = Math.abs(whole) >= 1e21 ? BigInt(Math.abs(whole)).toString() : Math.abs(whole).toFixed(0);
  return (whole < 0 ? '−' : '') + groupThousands(text);
}

/** Both ends of an interval, rounded alike: "820 to 2 900". */
export function formatInterval(interval: readonly [number, number], digits: 2 | 3 = 2): string {
  return `${formatSignificant(interval[0], digits)}\u00a0to\u00a0${formatSignificant(interval[1], digits)}`;
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
export function formatStockInWords(animals: number): string {
  if (animals < 999_500) return formatSignificant(animals, 2);
  if (animals < 999_500_000) return `${formatSignificant(animals / 1e6, 2)}\u00a0million`;
  return `${formatSignificant(animals / 1e9, 2)}\u00a0thousand million`;
}

function groupThousands(text: string): string {
  const [whole, fraction] = text.split('.') as [string, string?];
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, thousandsGap);
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
