import { twoSidedQuantile } from '../../maths/distributions.ts';
import { sum } from '../../maths/variance.ts';
import type { Interval } from '../shapes.ts';
import { limitsOfAgreement } from './limits-of-agreement.ts';

export interface CountedTwice {
  /** Belts of one station were swum by the same two people within the hour: the station is the unit. */
  readonly station: string;
  readonly first: number;
  readonly second: number;
}

export interface RatioOfCounts {
  readonly belts: number;
  /** The second diver's count over the first's, on the middle belt. */
  readonly ratio: number;
  /** By stations, not by belts; null from fewer than three stations. */
  readonly ratioInterval: Interval | null;
  readonly stations: number;
  /** About 95 % of single belts have a ratio within. */
  readonly limits: Interval;
}

/**
 * How many times the first diver's count the second one counted, with limits for a single belt.
 *
 * Limits of agreement on log(count + 0.5), taken back to ratios: differences of counts grow with the counts, ratios
 * hardly do. The half animal lets a zero stand beside a count; with few animals on a belt it draws ratios to 1.
 * The caller leaves out belts where neither saw any: they agree about nothing and would narrow the limits.
 * The interval of the middle ratio takes the station as the unit (sums of residuals by station, t on stations minus one):
 * belts of one station share the two divers, the light and the bottom. Null under 3 belts. Source: Bland and Altman 1986 on logs; the 0.5 is common practice.
 */
export function ratioOfCounts(pairs: readonly CountedTwice[]): RatioOfCounts | null {
  const logs = pairs.map(({ first, second }) => Math.log(second + 0.5) - Math.log(first + 0.5));
  const found = limitsOfAgreement(logs);
  if (found === null) return null;
  const byStation = Map.groupBy(logs, (_, i) => pairs[i]!.station);
  const interval = meanInterval([...byStation.values()], found.bias);
  const back = ([low, high]: Interval): Interval => [Math.exp(low), Math.exp(high)];
  return {
    belts: found.pairs,
    ratio: Math.exp(found.bias),
    ratioInterval: interval === null ? null : back(interval),
    stations: byStation.size,
    limits: back(found.limits),
  };
}

const leastStations = 3;

/** 95 % interval of the mean of all values, spread between the groups. Source: Cochran 1977, chapter 9 (from memory). */
function meanInterval(groups: readonly (readonly number[])[], mean: number): Interval | null {
  const n = groups.length;
  if (n < leastStations) return null;
  const all = sum(groups.map((group) => group.length));
  const squares = sum(groups.map((group) => sum(group.map((value) => value - mean)) ** 2));
  const half = twoSidedQuantile(0.95, n - 1)! * (Math.sqrt((n / (n - 1)) * squares) / all);
  return [mean - half, mean + half];
}
