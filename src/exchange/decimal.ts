/** Reads decimal numbers from text without the small errors of binary arithmetic. */

/**
 * The number a text stands for, times ten to the power of `shift`; null when the text is no plain decimal number.
 *
 * The point is moved in the text and the number read once, so that 0.07 cm are exactly 0.7 mm
 * (0.07 * 10 in binary arithmetic is 0.7000000000000001).
 * Hexadecimal, infinities, thousands separators and decimal commas are no plain decimal numbers.
 */
export function readDecimal(text: string, shift = 0): number | null {
  const parts = decimalPattern.exec(text);
  if (parts === null) return null;
  const exponent = Number(parts[2] ?? 0) + shift;
  const value = Number(exponent === 0 ? parts[1] : `${parts[1]}e${exponent}`);
  // Adding zero turns -0 into 0: no diver means a negative zero.
  return Number.isFinite(value) ? value + 0 : null;
}

const decimalPattern = /^([+-]?(?:\d+\.?\d*|\.\d+))(?:[eE]([+-]?\d{1,3}))?$/;

/** What the writer most likely meant: a decimal comma read as a point, a unit or a space left out. */
export function likelyDecimal(text: string): string | null {
  const bare = text.replace(/\s+/g, '').replace(/(\d),(\d)/, '$1.$2');
  const unitless = bare.replace(/[a-zA-Z%°]+$/, '');
  for (const candidate of [bare, unitless]) {
    if (candidate !== text && readDecimal(candidate) !== null) return candidate;
  }
  return null;
}
