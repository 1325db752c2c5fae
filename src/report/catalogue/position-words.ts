/** What was taken for granted while a position was read, and why a text gives none. */

import {
  type CoordinateProblemCode,
  coordinateFindingSeverities,
  type PositionCaution,
  type PositionRefusal,
} from '../../survey/position-words.ts';

/** `{value}` is the text as typed. */
export const positionWords = {
  // taken for granted
  'no-hemisphere': '“{value}” says neither N nor S, E nor W; it was read as north and east: is that right?',
  'sign-and-letter': '“{value}” has a minus and the letter that says the same; it was read as one of them',
  'whole-degrees': '“{value}” gives whole degrees only, 111 km from one to the next; are minutes missing?',
  'mixed-notations': '“{value}” has latitude and longitude in two notations; is each of them right?',
  'joined-minutes': '“{value}” was read as degrees and minutes written together (1745.30 is 17° 45.30′)',
  'seconds-or-decimals':
    '“{value}” was read as degrees, minutes and seconds; are the last figures decimals of a minute?',
  'utm-letter-as-hemisphere':
    'the letter S in “{value}” was read as the southern half of the earth, not as the band from 32 to 40° N; is that right?',
  // no position
  empty: 'no position is written; write one as in 17 45.30 S 177 24.00 E',
  'not-understood': '“{value}” is no position; write one as in 17 45.30 S 177 24.00 E',
  'one-coordinate-only': '“{value}” has one coordinate; a position is a latitude and a longitude',
  'too-many-numbers': '“{value}” has more numbers than a position; write one as in 17 45.30 S 177 24.00 E',
  'letters-do-not-fit':
    'the letters in “{value}” do not make a latitude and a longitude: one of N or S, and one of E or W',
  'ambiguous-commas':
    'the commas in “{value}” could stand for points or between numbers; write 17.750 S 177.400 E',
  'sign-against-letter': '“{value}” has a minus beside N or E; which of the two is right?',
  'letter-o': 'the letter O in “{value}” is west in French and east in German; write W or E',
  'minutes-out-of-range': '“{value}” has minutes or seconds of 60 or more; which figure is right?',
  'degrees-out-of-range': '“{value}” goes beyond 90° of latitude or 180° of longitude; are they exchanged?',
  'fraction-before-last-part':
    '“{value}” has a fraction before its last part; only the last of degrees, minutes and seconds has one',
  'utm-out-of-range': '“{value}” is outside its UTM zone; is the zone right, or a digit missing?',
  'utm-without-hemisphere': '“{value}” gives a UTM zone without its letter; north or south of the equator?',
  'utm-not-converted': '“{value}” is a UTM position, which cannot be read here; write degrees',
} as const satisfies Record<PositionCaution | PositionRefusal, string>;

/** What an import says of a cell: its column, the sentence about the text, and what was most likely meant. */
export function coordinateProblems(
  words: Readonly<Record<PositionCaution | PositionRefusal, string>>,
  didYouMean: string,
  /** What stands before : ; and ? in this language. */
  gap: '' | ' ' = '',
): Readonly<Record<CoordinateProblemCode, string>> {
  const codes = Object.keys(coordinateFindingSeverities) as CoordinateProblemCode[];
  const entries = codes.map((code) => {
    const its = words[code.slice('coordinates-'.length) as PositionCaution | PositionRefusal];
    const asked = its.endsWith('?') ? its.slice(0, -1).trimEnd() : null;
    const sentence =
      asked === null ? `${its}[${gap}; ${didYouMean}]` : `${asked}[${gap}: {suggestion}]${gap}?`;
    return [code, `{column}${gap}: ${sentence}`];
  });
  return Object.fromEntries(entries) as Record<CoordinateProblemCode, string>;
}
