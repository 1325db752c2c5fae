/** Reads latitude and longitude as people write them beside decimal degrees: minutes, seconds, letters, UTM. */

import { positionOfUtm } from '../planning/ground/utm.ts';
import {
  type Axis,
  type CoordinateReading,
  decimalMinutesInstead,
  readCoordinate,
} from '../survey/coordinate-notation.ts';
import { readPosition } from '../survey/position-notation.ts';
import type { CoordinateProblemCode, PositionCaution, PositionRefusal } from '../survey/position-words.ts';
import { type Reading, type Refusal, refused } from './refusal.ts';
import type { ColumnDefinition } from './table-columns.ts';

/**
 * One coordinate that is no plain number. What was taken for granted is asked about, what has two meanings is a
 * stop. `number` is what reading it as a number said: it stands where the text is no coordinate either.
 */
export function readDegrees(column: ColumnDefinition, axis: Axis, text: string, number: Reading): Reading {
  // A plain number that is out of range, or approximate (12-14), is no question of notation.
  if (number.refusal?.code !== 'not-a-number' && number.refusal?.code !== 'comma-unclear') return number;
  if (!mayBeCoordinate.test(text)) return number;
  const reading = readCoordinate(text, axis);
  if (reading.degrees !== null) return inDoubt(tidied(reading), cautionsOf(reading, text), column, text);
  if (reading.refusal === null || reading.refusal === 'not-understood') return number;
  return stopped(reading.refusal, column, text);
}

/** Figures, with no other letters than those of a hemisphere and the words for it and for degrees. */
const mayBeCoordinate =
  /^(?=.*\d)(?:[^\p{L}]|\b[NSEWO]\b|(?<=\d)[NSEWO]\b|\b[NSEWO](?=\d)|north|south|east|west|deg(?:ree)?s?|min(?:ute)?s?|sec(?:ond)?s?|º)+$/iu;

/** One half of a position in one cell, in any notation, UTM included. */
export function readHalf(column: ColumnDefinition, half: Axis, text: string): Reading {
  const reading = readPosition(text, positionOfUtm);
  const { position, refusal, cautions, notation, suggestion } = reading;
  if (position === null) return stopped(refusal ?? 'not-understood', column, text, suggestion);
  const degrees = half === 'latitude' ? position.latitudeDeg : position.longitudeDeg;
  const isPlain = notation === 'decimal degrees';
  // Two numbers without letters are decimal degrees with their signs, as in two columns.
  const asked = cautions.filter((one) => !(one === 'no-hemisphere' && isPlain && !/[^\d\s.,;+-]/.test(text)));
  return inDoubt(isPlain ? degrees : rounded(degrees), asked, column, text);
}

/** A comma for the point alone makes no doubt of the hemisphere: 17,755 is what 17.755 is. */
function cautionsOf({ cautions }: CoordinateReading, text: string): readonly PositionCaution[] {
  return /^\d+,\d+$/.test(text) ? [] : cautions;
}

function tidied({ degrees, notation }: CoordinateReading): number {
  return notation === 'decimal degrees' ? degrees! : rounded(degrees!);
}

/** A millimetre: 17 45.30 is kept as 17.755, not with the sixteenth digit of a division by 60. */
function rounded(degrees: number): number {
  return Number(degrees.toFixed(8)) + 0;
}

function inDoubt(
  value: number,
  cautions: readonly PositionCaution[],
  column: ColumnDefinition,
  text: string,
): Reading {
  const [first, ...others] = cautions.map((caution): Refusal => {
    const instead = caution === 'seconds-or-decimals' ? decimalMinutesInstead(text) : null;
    return { ...refusalOf(caution, column, instead), keepsValue: true };
  });
  return { value, refusal: first === undefined ? null : { ...first, also: others } };
}

/** Sixty and more can be no seconds, but decimals of a minute. */
function stopped(
  refusal: PositionRefusal,
  column: ColumnDefinition,
  text: string,
  suggestion: string | null = null,
): Reading {
  const instead = refusal === 'minutes-out-of-range' ? decimalMinutesInstead(text) : suggestion;
  return { value: null, refusal: refusalOf(refusal, column, instead) };
}

function refusalOf(
  finding: PositionCaution | PositionRefusal,
  column: ColumnDefinition,
  suggestion: string | null,
): Refusal {
  const known = finding === 'empty' || finding === 'utm-not-converted' ? 'not-understood' : finding;
  const code: CoordinateProblemCode = `coordinates-${known}`;
  return refused(code, column, {}, suggestion).refusal!;
}
