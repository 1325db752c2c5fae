/**
 * Reads a position in every notation divers, charts and receivers use, and writes it in one.
 *
 * Nothing is corrected in silence: what was taken for granted comes back as a caution, and what has two
 * meanings is refused with both named.
 */

import { type Axis, readCoordinate } from './coordinate-notation.ts';
import type { Position } from './map-area.ts';
import type { CoordinateNotation, PositionCaution, PositionRefusal } from './position-words.ts';
import { splitPosition } from './split-position.ts';
import { tidyNotation } from './tidy-notation.ts';
import { readUtm } from './utm-notation.ts';

export interface UtmPosition {
  readonly zone: number;
  readonly hemisphere: 'N' | 'S';
  readonly eastingM: number;
  readonly northingM: number;
}

export interface PositionReading {
  /** Null when it was refused. */
  readonly position: Position | null;
  readonly notation: CoordinateNotation | 'UTM' | null;
  readonly cautions: readonly PositionCaution[];
  readonly refusal: PositionRefusal | null;
  /** What was most likely meant, in the one written form; null when nobody can tell. */
  readonly suggestion: string | null;
}

/**
 * The position a text stands for, as WGS84 degrees.
 *
 * Understood: decimal degrees, degrees and decimal minutes, degrees minutes seconds, joined ddmm.mmm with a letter,
 * UTM (the way to degrees is given by the caller: `positionOfUtm` in planning); hemisphere letters before or after,
 * or signs; degree, minute and second signs in print and from the keyboard; decimal commas. Latitude first unless the
 * letters say otherwise. A number without sign or letter is read as north or east, with a caution.
 */
export function readPosition(
  text: string,
  toPosition: ((utm: UtmPosition) => Position) | null = null,
): PositionReading {
  const tidy = tidyNotation(text);
  if (tidy === '') return refused('empty');
  const utm = readUtm(tidy);
  if (utm !== null) return readingOfUtm(utm, toPosition);
  const halves = splitPosition(tidy);
  if (typeof halves === 'string') return refused(halves);
  const latitude = readCoordinate(halves.latitude, 'latitude');
  const longitude = readCoordinate(halves.longitude, 'longitude');
  if (latitude.degrees === null || longitude.degrees === null) {
    return refused(latitude.refusal ?? longitude.refusal ?? 'not-understood', exchangedSuggestion(halves));
  }
  const cautions = new Set([...latitude.cautions, ...longitude.cautions]);
  if (latitude.notation !== longitude.notation) cautions.add('mixed-notations');
  return {
    position: { latitudeDeg: latitude.degrees, longitudeDeg: longitude.degrees },
    notation: latitude.notation,
    cautions: [...cautions],
    refusal: null,
    suggestion: null,
  };
}

function readingOfUtm(
  utm: NonNullable<ReturnType<typeof readUtm>>,
  toPosition: ((utm: UtmPosition) => Position) | null,
): PositionReading {
  if (utm.refusal !== null) return refused(utm.refusal);
  if (toPosition === null) return refused('utm-not-converted');
  return {
    position: toPosition(utm.value),
    notation: 'UTM',
    cautions: utm.cautions,
    refusal: null,
    suggestion: null,
  };
}

function refused(refusal: PositionRefusal, suggestion: string | null = null): PositionReading {
  return { position: null, notation: null, cautions: [], refusal, suggestion };
}

/** Longitude written first: -177.4 cannot be a latitude, but the two exchanged make a position. */
function exchangedSuggestion(halves: {
  readonly latitude: string;
  readonly longitude: string;
}): string | null {
  const latitude = readCoordinate(halves.longitude, 'latitude').degrees;
  const longitude = readCoordinate(halves.latitude, 'longitude').degrees;
  if (latitude === null || longitude === null) return null;
  return writePosition({ latitudeDeg: latitude, longitudeDeg: longitude });
}

/** The one written form: degrees and decimal minutes with hemisphere letters, "17° 45.300′ S, 177° 24.000′ E". */
export function writePosition(position: Position, decimals = 3): string {
  const latitude = writeDegreesMinutes(position.latitudeDeg, 'latitude', decimals);
  return `${latitude}, ${writeDegreesMinutes(position.longitudeDeg, 'longitude', decimals)}`;
}

/** One half of it. Three decimals of a minute are 1.9 m. Zero degrees are written N and E. */
export function writeDegreesMinutes(degrees: number, axis: Axis, decimals = 3): string {
  const steps = 10 ** decimals;
  // Rounded before it is split: 17° 59.9996′ is 18° 00.000′, never 17° 60.000′.
  const minutes = Math.round(Math.abs(degrees) * 60 * steps);
  const whole = Math.floor(minutes / (60 * steps));
  const rest = ((minutes - whole * 60 * steps) / steps).toFixed(decimals);
  const width = decimals === 0 ? 2 : decimals + 3;
  const negative = degrees < 0 && minutes > 0;
  const letter = axis === 'latitude' ? (negative ? 'S' : 'N') : negative ? 'W' : 'E';
  return `${String(whole).padStart(axis === 'latitude' ? 2 : 3, '0')}° ${rest.padStart(width, '0')}′ ${letter}`;
}

/** "-17.75500, 177.40000"; five decimals of a degree are 1.1 m. */
export function writeDecimalDegrees(position: Position, decimals = 5): string {
  const write = (degrees: number) => degrees.toFixed(decimals).replace(/^-(0\.?0*)$/, '$1');
  return `${write(position.latitudeDeg)}, ${write(position.longitudeDeg)}`;
}
