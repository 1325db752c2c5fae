/** Intervals of a share between 0 and 1: of plain stations, and of a share estimated with a design. */

import { betaQuantile, tQuantile, twoSidedQuantile } from '../maths/distributions.ts';
import type { Interval } from './shapes.ts';

/**
 * Wilson's interval for the share of stations where a species was seen.
 *
 * Holds its promise for few stations and for none or all of them, where the plain interval collapses.
 * `positive` may be fractional (a weighted share times the stations). Null without stations.
 * Source: Wilson 1927; Newcombe 1998 (from memory); R prop.test(correct = FALSE).
 */
export function wilsonInterval(seen: StationsSeen, confidence = 0.95): Interval | null {
  const { positive, stations } = seen;
  if (stations === 0) return null;
  const z2 = twoSidedQuantile(confidence, null)! ** 2;
  const share = positive / stations;
  const middle = share + z2 / (2 * stations);
  const half = Math.sqrt(z2 * ((share * (1 - share)) / stations + z2 / (4 * stations ** 2)));
  const scale = 1 + z2 / stations;
  // Rounding gives -1e-17 at no station and 1 - 1e-16 at all of them.
  const low = positive === 0 ? 0 : Math.max(0, (middle - half) / scale);
  const high = positive === stations ? 1 : Math.min(1, (middle + half) / scale);
  return [low, high];
}

export interface StationsSeen {
  readonly positive: number;
  readonly stations: number;
}

/**
 * Clopper and Pearson's exact interval for the same share: never below its promise, hence wide.
 * Null without stations. Source: Clopper and Pearson 1934 (from memory); R binom.test.
 */
export function clopperPearsonInterval(seen: StationsSeen, confidence = 0.95): Interval | null {
  const { positive, stations } = seen;
  if (stations === 0) return null;
  const tail = (1 - confidence) / 2;
  const low = positive === 0 ? 0 : betaQuantile(tail, { alpha: positive, beta: stations - positive + 1 });
  const high =
    positive === stations ? 1 : betaQuantile(1 - tail, { alpha: positive + 1, beta: stations - positive });
  return [low, high];
}

/**
 * Interval of a share estimated with a design, on the logit scale so that it stays within 0 and 1.
 * Null where the logit does not exist (share 0 or 1) or the spread is unknown or zero.
 * Source: R survey svyciprop(method = "logit").
 */
export function logitInterval(share: DesignShare, confidence = 0.95): Interval | null {
  const { value, standardError } = share;
  const q = twoSidedQuantile(confidence, share.degreesOfFreedom);
  if (q === null || !hasSpread(share)) return null;
  const logit = Math.log(value / (1 - value));
  const half = (q * standardError!) / (value * (1 - value));
  return [1 / (1 + Math.exp(half - logit)), 1 / (1 + Math.exp(-half - logit))];
}

export interface DesignShare {
  readonly value: number;
  readonly standardError: number | null;
  readonly degreesOfFreedom: number;
}

/**
 * Clopper and Pearson's interval with the stations counted at their effective number.
 * `observations` is the number of rows behind the share. Null as for the logit interval.
 * Source: Korn and Graubard 1998 (from memory); R survey svyciprop(method = "beta").
 */
export function betaInterval(share: DesignShare, observations: number, confidence = 0.95): Interval | null {
  const { value, standardError, degreesOfFreedom } = share;
  if (!hasSpread(share) || degreesOfFreedom <= 0 || observations < 2) return null;
  const tail = (1 - confidence) / 2;
  const widening = tQuantile(tail, observations - 1) / tQuantile(tail, degreesOfFreedom);
  const effective = ((value * (1 - value)) / standardError! ** 2) * widening ** 2;
  const positive = effective * value;
  return [
    betaQuantile(tail, { alpha: positive, beta: effective - positive + 1 }),
    betaQuantile(1 - tail, { alpha: positive + 1, beta: effective - positive }),
  ];
}

function hasSpread(share: DesignShare): boolean {
  return share.value > 0 && share.value < 1 && share.standardError !== null && share.standardError > 0;
}
