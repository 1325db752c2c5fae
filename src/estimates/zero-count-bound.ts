/** What can still be there when nothing, or little, was seen. All assume that every animal present is seen. */

import { chiSquareQuantile } from '../maths/distributions.ts';
import { findRoot } from '../maths/search.ts';
import { sum } from '../maths/variance.ts';
import type { Interval } from './shapes.ts';

/**
 * Greatest density in animals per hectare still compatible with none seen on the searched area, for animals
 * scattered at random: -ln(1 - confidence) / area, about three over the area at 95 % (the rule of three).
 *
 * Far too low for clumped animals; see `clumpedUpperBoundPerHa`. Null without searched area.
 * Source: Hanley and Lippman-Hand 1983 (from memory).
 */
export function poissonUpperBoundPerHa(searchedAreaHa: number, confidence = 0.95): number | null {
  return searchedAreaHa > 0 ? -Math.log1p(-confidence) / searchedAreaHa : null;
}

/**
 * Exact two-sided interval of the expected number of animals, given the number seen, if scattered at random.
 * Divide by the searched area for a density. Source: Garwood 1936 (from memory); R qchisq.
 */
export function garwoodInterval(animals: number, confidence = 0.95): Interval {
  const tail = (1 - confidence) / 2;
  const low = animals === 0 ? 0 : chiSquareQuantile(tail, 2 * animals) / 2;
  return [low, chiSquareQuantile(1 - tail, 2 * animals + 2) / 2];
}

/**
 * Greatest density in animals per hectare still compatible with none seen at any station, for animals clumped
 * with k (negative binomial): the density at which the chance of that, product of (1 + D area / k)^-k,
 * is 1 - confidence. Areas may differ; k must come from elsewhere, since zeros cannot show it.
 *
 * Null without searched area. Throws when k is not positive.
 * Source: METHODS c; for equal areas (k / a) (alpha^(-1 / (n k)) - 1).
 */
export function clumpedUpperBoundPerHa(
  areasHa: readonly number[],
  clumpingK: number,
  confidence = 0.95,
): number | null {
  if (!(clumpingK > 0)) throw new Error('clumpedUpperBoundPerHa requires a positive k');
  const areas = areasHa.filter((area) => area > 0);
  if (areas.length === 0) return null;
  const wanted = -Math.log1p(-confidence);
  // Surprise at seeing none, in logs; it rises with the density from zero without end.
  const surprise = (logDensity: number) =>
    sum(areas.map((area) => clumpingK * Math.log1p((Math.exp(logDensity) * area) / clumpingK))) - wanted;
  const start = Math.log(poissonUpperBoundPerHa(sum(areas), confidence)!);
  // With one station and a tiny k the bound passes what a number can hold: then nothing bounds it.
  const end = start + 600;
  if (surprise(end) < 0) return null;
  return Math.exp(findRoot(surprise, { low: start - 1e-6, high: end }));
}

/**
 * Greatest share of places that can hold the species when none of the stations did: 1 - alpha^(1/n).
 * Null without stations. Source: exact binomial bound.
 */
export function prevalenceUpperBound(stations: number, confidence = 0.95): number | null {
  return stations > 0 ? -Math.expm1(Math.log1p(-confidence) / stations) : null;
}
