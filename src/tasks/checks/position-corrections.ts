/** What a person may have meant by a position that lies in the wrong place. Nothing here is ever applied. */

import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import { inDegrees, type Spot, spotInWords } from './positions.ts';

export const correctionKinds = [
  'hemisphere-missing',
  'latitude-longitude-exchanged',
  'digits-exchanged',
  'minutes-for-seconds',
] as const;
export type CorrectionKind = (typeof correctionKinds)[number];

export interface Correction {
  readonly kind: CorrectionKind;
  readonly spot: Spot;
  /** As it would be typed: the one number that changes, or both. */
  readonly typed: string;
  readonly distanceM: number;
}

/** Every correction that ends within `withinM` of the reference, nearest first. */
export function likelyCorrections(
  written: Spot,
  reference: Spot,
  { withinM, decimals }: { readonly withinM: number; readonly decimals: number },
): readonly Correction[] {
  const found = new Map<string, Correction>();
  for (const { kind, spot } of candidates(written, decimals)) {
    if (Math.abs(spot.latitudeDeg) > 90 || Math.abs(spot.longitudeDeg) > 180) continue;
    const distanceM = roughDistanceM(spot, reference);
    if (distanceM > withinM) continue;
    const typed = asTyped(spot, written, kind === 'minutes-for-seconds' ? Math.max(5, decimals) : decimals);
    if (!found.has(typed)) found.set(typed, { kind, spot, typed, distanceM });
  }
  return [...found.values()].sort((a, b) => a.distanceM - b.distanceM);
}

/** Positions as they would be typed that usual slips make of this one and that pass; each once. */
export function correctionsThat(
  written: Spot,
  decimals: number,
  passes: (spot: Spot) => boolean,
): readonly string[] {
  const found = new Set<string>();
  for (const { kind, spot } of candidates(written, decimals)) {
    if (Math.abs(spot.latitudeDeg) > 90 || Math.abs(spot.longitudeDeg) > 180 || !passes(spot)) continue;
    found.add(asTyped(spot, written, kind === 'minutes-for-seconds' ? Math.max(5, decimals) : decimals));
  }
  return [...found];
}

interface Candidate {
  readonly kind: CorrectionKind;
  readonly spot: Spot;
}

function* candidates({ latitudeDeg, longitudeDeg }: Spot, decimals: number): Generator<Candidate> {
  const spot = (latitude: number, longitude: number) => ({
    latitudeDeg: latitude,
    longitudeDeg: longitude,
  });
  yield { kind: 'hemisphere-missing', spot: spot(-latitudeDeg, longitudeDeg) };
  yield { kind: 'hemisphere-missing', spot: spot(latitudeDeg, -longitudeDeg) };
  yield { kind: 'hemisphere-missing', spot: spot(-latitudeDeg, -longitudeDeg) };
  yield { kind: 'latitude-longitude-exchanged', spot: spot(longitudeDeg, latitudeDeg) };
  for (const latitude of digitsExchanged(latitudeDeg, decimals)) {
    yield { kind: 'digits-exchanged', spot: spot(latitude, longitudeDeg) };
  }
  for (const longitude of digitsExchanged(longitudeDeg, decimals)) {
    yield { kind: 'digits-exchanged', spot: spot(latitudeDeg, longitude) };
  }
  // The same notation was misread in one number or, more often, in both.
  for (const reread of notations) {
    const latitude = reread(latitudeDeg);
    const longitude = reread(longitudeDeg);
    if (latitude !== null) yield { kind: 'minutes-for-seconds', spot: spot(latitude, longitudeDeg) };
    if (longitude !== null) yield { kind: 'minutes-for-seconds', spot: spot(latitudeDeg, longitude) };
    if (latitude !== null && longitude !== null) {
      yield { kind: 'minutes-for-seconds', spot: spot(latitude, longitude) };
    }
  }
}

/** Every number that two neighbouring digits exchanged make. */
function digitsExchanged(degrees: number, decimals: number): readonly number[] {
  const written = Math.abs(degrees).toFixed(decimals);
  const digits = written.replace('.', '');
  const point = written.length - decimals - (decimals > 0 ? 1 : 0);
  const found: number[] = [];
  for (let i = 0; i + 1 < digits.length; i++) {
    if (digits[i] === digits[i + 1]) continue;
    const turned = digits.slice(0, i) + digits[i + 1] + digits[i] + digits.slice(i + 2);
    found.push(Math.sign(degrees) * Number(`${turned.slice(0, point)}.${turned.slice(point)}`));
  }
  return found;
}

/** Readings of one notation as another, each undone; null where the digits cannot have stood there. */
const notations: readonly ((degrees: number) => number | null)[] = [
  // 45.30' was read as 45' 30"
  (degrees) => reread(degrees, (minutes, rest) => (minutes + 0.6 * rest) / 60),
  // 45' 30" was read as 45.30'
  (degrees) => reread(degrees, (minutes, rest) => (rest < 0.6 ? (minutes + rest / 0.6) / 60 : null)),
  // 45.30' was typed as the decimals of the degree: 17.4530
  (degrees) => ofFraction(degrees, (fraction) => (fraction < 0.6 ? fraction / 0.6 : null)),
  // 45' 30" was typed as the decimals of the degree: 17.4530
  (degrees) =>
    ofFraction(degrees, (fraction) => {
      const minutes = Math.floor(100 * fraction + 1e-7);
      const seconds = 100 * (100 * fraction - minutes);
      return minutes < 60 && seconds < 60 ? minutes / 60 + seconds / 3600 : null;
    }),
  // decimals of the degree were read as minutes: 17.4530 as 45.30'
  (degrees) => ofFraction(degrees, (fraction) => 0.6 * fraction),
];

/** Whole minutes and what is left of the last one, as a share of it. */
function reread(degrees: number, meant: (minutes: number, rest: number) => number | null): number | null {
  return ofFraction(degrees, (fraction) => {
    const minutes = Math.floor(60 * fraction + 1e-7);
    return meant(minutes, Math.max(0, 60 * fraction - minutes));
  });
}

function ofFraction(degrees: number, meant: (fraction: number) => number | null): number | null {
  const whole = Math.floor(Math.abs(degrees));
  const fraction = meant(Math.abs(degrees) - whole);
  return fraction === null ? null : Math.sign(degrees) * (whole + fraction);
}

function asTyped(spot: Spot, written: Spot, decimals: number): string {
  if (spot.longitudeDeg === written.longitudeDeg) return inDegrees(spot.latitudeDeg, decimals);
  if (spot.latitudeDeg === written.latitudeDeg) return inDegrees(spot.longitudeDeg, decimals);
  return spotInWords(spot, decimals);
}
