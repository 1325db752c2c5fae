import type { Position } from './map-area.ts';
import { readPosition, writePosition } from './position-notation.ts';

export type PositionSlip =
  | 'digits-swapped'
  | 'latitude-longitude-exchanged'
  | 'hemisphere-missing'
  /** 17 45.30 typed as 17 45 30. */
  | 'decimal-minutes-typed-as-seconds'
  | 'seconds-typed-as-decimal-minutes'
  /** 17 45.30 typed as 17.4530. */
  | 'minutes-typed-as-decimal-degrees';

export interface SlipSuggestion {
  readonly slip: PositionSlip;
  readonly position: Position;
  /** As it would be typed, in the notation of the one who typed it where that is known. */
  readonly text: string;
  readonly distanceM: number;
}

export interface SlipReview {
  /** Null when the typed text is no position. */
  readonly typedDistanceM: number | null;
  /** Nearest to the plan first, at most three; empty when the typed position is near or nothing comes nearer. */
  readonly suggestions: readonly SlipSuggestion[];
}

export interface SlipQuestion {
  readonly latitude: string;
  readonly longitude: string;
  readonly planned: Position;
  /** Distance on the earth, from planning (`distanceBetweenM`). */
  readonly distanceM: (a: Position, b: Position) => number;
  /** A station this near its plan needs no question. */
  readonly nearM?: number;
}

const usualNearM = 50;
/** A slip explains the distance only if undoing it takes most of it away; our own choice. */
const enoughNearer = 0.1;
const suggestionsKept = 3;

/**
 * What was probably meant by a position that lies away from its plan. Nothing is changed: these are questions.
 *
 * One slip is undone at a time: two neighbouring figures exchanged, latitude and longitude exchanged, a missing sign,
 * minutes and seconds taken for one another. A suggestion must bring the position within a tenth of the distance
 * to the plan, or within `nearM` (50 m) of it.
 */
export function reviewSlips(question: SlipQuestion): SlipReview {
  const { planned, distanceM, nearM = usualNearM } = question;
  const typed = positionOf(question.latitude, question.longitude);
  const typedDistanceM = typed === null ? null : distanceM(typed, planned);
  if (typedDistanceM !== null && typedDistanceM <= nearM) return { typedDistanceM, suggestions: [] };
  const limitM = Math.max(nearM, (typedDistanceM ?? 0) * enoughNearer);
  const suggestions: SlipSuggestion[] = [];
  for (const { slip, latitude, longitude } of corrections(question)) {
    const position = positionOf(latitude, longitude);
    if (position === null) continue;
    const away = distanceM(position, planned);
    if (away > limitM || suggestions.some((other) => distanceM(other.position, position) < 1)) continue;
    suggestions.push({ slip, position, text: `${latitude}, ${longitude}`, distanceM: away });
  }
  suggestions.sort((a, b) => a.distanceM - b.distanceM);
  return { typedDistanceM, suggestions: suggestions.slice(0, suggestionsKept) };
}

function positionOf(latitude: string, longitude: string): Position | null {
  return readPosition(`LAT ${latitude} LON ${longitude}`).position;
}

interface Correction {
  readonly slip: PositionSlip;
  readonly latitude: string;
  readonly longitude: string;
}

function* corrections({ latitude, longitude }: SlipQuestion): Generator<Correction> {
  yield { slip: 'latitude-longitude-exchanged', latitude: longitude, longitude: latitude };
  for (const south of otherHemispheres(latitude, 'NS')) {
    yield { slip: 'hemisphere-missing', latitude: south, longitude };
    for (const west of otherHemispheres(longitude, 'EW')) {
      yield { slip: 'hemisphere-missing', latitude: south, longitude: west };
    }
  }
  for (const west of otherHemispheres(longitude, 'EW'))
    yield { slip: 'hemisphere-missing', latitude, longitude: west };
  for (const [slip, change] of rereadings) {
    const [one, other] = [change(latitude), change(longitude)];
    // The same hand wrote both halves: first both, then one of them.
    if (one !== null && other !== null) yield { slip, latitude: one, longitude: other };
    if (one !== null) yield { slip, latitude: one, longitude };
    if (other !== null) yield { slip, latitude, longitude: other };
  }
  for (const text of digitSwaps(latitude)) yield { slip: 'digits-swapped', latitude: text, longitude };
  for (const text of digitSwaps(longitude)) yield { slip: 'digits-swapped', latitude, longitude: text };
}

/** The other side of the equator or of Greenwich, written the same way. */
function otherHemispheres(text: string, letters: 'NS' | 'EW'): string[] {
  const other = { N: 'S', S: 'N', E: 'W', W: 'E' } as const;
  const letter = new RegExp(`[${letters}]`, 'i').exec(text)?.[0];
  if (letter !== undefined) return [text.replace(letter, other[letter.toUpperCase() as keyof typeof other])];
  const bare = text.trim();
  return [/^[-\u2212\u2013]/.test(bare) ? bare.slice(1) : `-${bare.replace(/^\+/, '')}`];
}

const rereadings: readonly (readonly [PositionSlip, (text: string) => string | null])[] = [
  ['decimal-minutes-typed-as-seconds', secondsAsDecimals],
  ['seconds-typed-as-decimal-minutes', decimalsAsSeconds],
  ['minutes-typed-as-decimal-degrees', degreesAsMinutes],
];

/** 17 45' 30" becomes 17 45.30'. */
function secondsAsDecimals(text: string): string | null {
  const found = /^(\D*\d+\D+?\d{1,2})\D+(\d{1,3})\D*?\s*([NSEW]?)\s*$/i.exec(text.trim());
  if (found === null || /\d[.,]\d/.test(found[1]!)) return null;
  return `${found[1]}.${found[2]}' ${found[3]}`.trim();
}

/** 17 45.30' becomes 17 45' 30". */
function decimalsAsSeconds(text: string): string | null {
  const found = /^(\D*\d+[^\d.,]+?\d{1,2})[.,](\d{1,2})\D*?\s*([NSEW]?)\s*$/i.exec(text.trim());
  return found === null ? null : `${found[1]}' ${found[2]!.padEnd(2, '0')}" ${found[3]}`.trim();
}

/** 17.4530 becomes 17 45.30. */
function degreesAsMinutes(text: string): string | null {
  const found = /^([^\d]*\d{1,3})[.,](\d{2})(\d*)\D*?\s*([NSEW]?)\s*$/i.exec(text.trim());
  if (found === null) return null;
  return `${found[1]} ${found[2]}${found[3] === '' ? '' : `.${found[3]}`}' ${found[4]}`.trim();
}

/** Every text in which two neighbouring figures have changed places. */
function digitSwaps(text: string): string[] {
  const swaps: string[] = [];
  for (let i = 0; i + 1 < text.length; i++) {
    // A point between two figures is skipped: 17.75 may have been 1.775 no more than 71.75.
    const [a, b] = [text[i]!, text[i + 1]!];
    if (a === b || !/\d/.test(a) || !/\d/.test(b)) continue;
    swaps.push(`${text.slice(0, i)}${b}${a}${text.slice(i + 2)}`);
  }
  return swaps;
}

/** A suggestion in the one written form. */
export function writeSuggestion(suggestion: SlipSuggestion): string {
  return writePosition(suggestion.position);
}
