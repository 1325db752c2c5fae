import geomagnetism from 'geomagnetism';
import type { Position } from '../../survey/map-area.ts';
import { fullCircle } from './geodesic.ts';

export type DeclinationCaution =
  /** The date lies outside 2025.0 to 2030.0; the number is the model drawn on beyond its promise. */
  | 'outside-model-validity'
  /** The horizontal field is below 6000 nT: a compass is not to be trusted (the model's own caution zone). */
  | 'weak-horizontal-field';

export interface Declination {
  /** East positive: true bearing = magnetic bearing + declination. */
  readonly declinationDeg: number;
  readonly horizontalNanotesla: number;
  readonly model: 'WMM2025';
  readonly year: number;
  readonly validFromYear: number;
  readonly validToYear: number;
  readonly cautions: readonly DeclinationCaution[];
}

const validFromYear = 2025;
const validToYear = 2030;
const cautionNanotesla = 6000;

/**
 * Magnetic declination in degrees, east positive.
 *
 * Answers "how far off true north does the compass point at this place on this day?". World Magnetic Model 2025,
 * at sea level unless a height is given. The model's field changes in a straight line with time, so it
 * is taken from the kept library at the starts of 2025 and 2026 and drawn on from there. (The library itself
 * stops a few weeks before the model does, and counts leap years with 365 days.) Local iron, volcanic rock and
 * the boat are not in it. Outside 2025.0 to 2030.0 the number stands with a caution.
 * Source: NOAA/NCEI and BGS, World Magnetic Model 2025; caution below 6000 nT from memory.
 */
export function declinationAt(
  position: Position,
  when: { readonly isoDate: string } | { readonly year: number },
  heightKm = 0,
): Declination {
  const year = 'year' in when ? when.year : yearOf(when.isoDate);
  const start = fieldAtStartOf(2025, position, heightKm);
  const later = fieldAtStartOf(2026, position, heightKm);
  const northNanotesla = start.x + (year - 2025) * (later.x - start.x);
  const eastNanotesla = start.y + (year - 2025) * (later.y - start.y);
  const horizontalNanotesla = Math.hypot(northNanotesla, eastNanotesla);
  return {
    declinationDeg: (Math.atan2(eastNanotesla, northNanotesla) * 180) / Math.PI,
    horizontalNanotesla,
    model: 'WMM2025',
    year,
    validFromYear,
    validToYear,
    cautions: cautionsOf(year, horizontalNanotesla),
  };
}

function fieldAtStartOf(year: number, position: Position, heightKm: number) {
  const model = geomagnetism.model(new Date(Date.UTC(year, 0, 1)));
  return model.point([position.latitudeDeg, position.longitudeDeg, heightKm]);
}

function cautionsOf(year: number, horizontalNanotesla: number): DeclinationCaution[] {
  const cautions: DeclinationCaution[] = [];
  if (year < validFromYear || year > validToYear) cautions.push('outside-model-validity');
  if (horizontalNanotesla < cautionNanotesla) cautions.push('weak-horizontal-field');
  return cautions;
}

/** A day as a decimal year: 2 July 2026 is about 2026.5. */
export function yearOf(isoDate: string): number {
  const year = Number(isoDate.slice(0, 4));
  const start = Date.UTC(year, 0, 1);
  return year + (Date.parse(`${isoDate}T00:00:00Z`) - start) / (Date.UTC(year + 1, 0, 1) - start);
}

/** What the compass shows on a true bearing. */
export function magneticBearingDeg(trueBearingDeg: number, declinationDeg: number): number {
  return fullCircle(trueBearingDeg - declinationDeg);
}

/** The true bearing of what the compass shows. */
export function trueBearingDeg(magneticDeg: number, declinationDeg: number): number {
  return fullCircle(magneticDeg + declinationDeg);
}
