import type { CoordinateNotation, PositionCaution, PositionRefusal } from './position-words.ts';
import { tidyNotation } from './tidy-notation.ts';

export type Axis = 'latitude' | 'longitude';

export interface CoordinateReading {
  readonly degrees: number | null;
  readonly notation: CoordinateNotation | null;
  readonly cautions: readonly PositionCaution[];
  readonly refusal: PositionRefusal | null;
}

const letters = { latitude: 'NS', longitude: 'EW' } as const;
const limits = { latitude: 90, longitude: 180 } as const;
const notations = ['decimal degrees', 'degrees and decimal minutes', 'degrees minutes seconds'] as const;

/** One latitude or longitude in any notation; north and east positive. A comma is a decimal comma here. */
export function readCoordinate(text: string, axis: Axis): CoordinateReading {
  const tidy = tidyNotation(text).replace(/(\d),(\d)/g, '$1.$2');
  const found = coordinatePattern.exec(tidy);
  if (found === null) return refused(/O/.test(tidy) ? 'letter-o' : 'not-understood');
  const [, before, sign, first, second, third, after] = found;
  if (before && after) return refused('letters-do-not-fit');
  const letter = before || after || null;
  if (letter === 'O') return refused('letter-o');
  if (letter !== null && !letters[axis].includes(letter)) return refused('letters-do-not-fit');
  const isNegative = letter === 'S' || letter === 'W';
  if (letter !== null && sign === '-' && !isNegative) return refused('sign-against-letter');
  if (letter !== null && sign === '+' && isNegative) return refused('sign-against-letter');
  const parts =
    joinedParts(first!, second, letter, axis) ?? [first!, second, third].filter((part) => part !== undefined);
  const size = sizeOf(parts, axis);
  if (typeof size === 'string') return refused(size);
  const cautions: PositionCaution[] = [];
  if (letter === null && !sign) cautions.push('no-hemisphere');
  if (letter !== null && sign) cautions.push('sign-and-letter');
  if (parts.length === 1 && !first!.includes('.')) cautions.push('whole-degrees');
  if (parts.length === 2 && second === undefined) cautions.push('joined-minutes');
  if (decimalMinutesInstead(tidy) !== null) cautions.push('seconds-or-decimals');
  const degrees = isNegative || sign === '-' ? -size : size;
  return { degrees: degrees + 0, notation: notations[parts.length - 1]!, cautions, refusal: null };
}

/**
 * The same text with its last part as decimals of a minute, 17 45.30 S for 17 45 30 S; null unless it has three whole
 * parts, minutes that can be, and no sign that makes the last one seconds.
 */
export function decimalMinutesInstead(text: string): string | null {
  const found = threeWholeParts.exec(tidyNotation(text));
  if (found === null) return null;
  const [, degrees, minutes, last, letter] = found;
  return Number(minutes) < 60 ? `${degrees}${minutes}.${last}${letter}` : null;
}

const threeWholeParts = /^([NSEWO]?\s*[-+]?\s*\d+\s*[°:\s-]\s*)(\d{1,2})\s*[':\s-]\s*(\d{1,3})(\s*[NSEWO]?)$/;

const number = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
/** Letter, sign, up to three numbers each with its sign or a space, a colon or a dash after it, letter. */
const coordinatePattern = new RegExp(
  String.raw`^([NSEWO]?)\s*([-+]?)\s*${number}\s*[°:\s-]?\s*(?:${number}\s*[':\s-]?\s*(?:${number}\s*["']?)?)?\s*([NSEWO]?)$`,
);

/** Receivers send 1745.300 S and 17724.000 E: two (three) figures of degrees, then minutes. */
function joinedParts(
  first: string,
  second: string | undefined,
  letter: string | null,
  axis: Axis,
): string[] | null {
  const width = axis === 'latitude' ? 2 : 3;
  const whole = first.split('.')[0]!;
  if (second !== undefined || letter === null || whole.length !== width + 2) return null;
  return [first.slice(0, width), first.slice(width)];
}

function sizeOf(parts: readonly string[], axis: Axis): number | PositionRefusal {
  if (parts.slice(0, -1).some((part) => part.includes('.'))) return 'fraction-before-last-part';
  const [degrees, minutes, seconds] = [Number(parts[0]), Number(parts[1] ?? 0), Number(parts[2] ?? 0)];
  if (minutes >= 60 || seconds >= 60) return 'minutes-out-of-range';
  const size = degrees + (minutes + seconds / 60) / 60;
  return size > limits[axis] ? 'degrees-out-of-range' : size;
}

function refused(refusal: PositionRefusal): CoordinateReading {
  return { degrees: null, notation: null, cautions: [], refusal };
}
