import { logGamma } from '../../maths/distributions.ts';
import { SQUARE_METRES_PER_HA, type StationCount } from './station-count.ts';

/** Stations of one searched area, which speak only through their number and their sum. */
export interface AreaGroup {
  readonly areaHa: number;
  stations: number;
  animals: number;
}

/** Log likelihood of all stations at one log density per hectare, one number per k of the grid. */
export type LogLikelihoodAt = (logDensityPerHa: number, into: Float64Array) => void;

/**
 * Log likelihood of station counts under the negative binomial with variance m + m^2 / k, m the
 * expected count, constants kept.
 *
 * Given k, stations of equal area speak only through their number and their sum, so the cost does
 * not grow with the number of stations but with the number of distinct areas.
 * Source: METHODS c (Bliss & Fisher 1953, from memory).
 */
export function negativeBinomialLikelihood(
  counts: readonly StationCount[],
  ks: Float64Array,
): LogLikelihoodAt {
  const groups = areaGroups(counts);
  const constants = ks.map((k) => countTerms(counts, k));
  const logKs = ks.map(Math.log);
  return (logDensityPerHa, into) => {
    into.set(constants);
    for (const { areaHa, stations, animals } of groups) {
      const mean = Math.exp(logDensityPerHa) * areaHa;
      const logMean = logDensityPerHa + Math.log(areaHa);
      for (let j = 0; j < ks.length; j++) {
        const k = ks[j]!;
        const logTotal = Math.log(k + mean);
        into[j] = into[j]! + stations * k * (logKs[j]! - logTotal) + animals * (logMean - logTotal);
      }
    }
  };
}

/** Stations put together by searched area. */
export function areaGroups(counts: readonly StationCount[]): readonly AreaGroup[] {
  const groups = new Map<number, AreaGroup>();
  for (const { animals, areaM2 } of counts) {
    const group = groups.get(areaM2) ?? { areaHa: areaM2 / SQUARE_METRES_PER_HA, stations: 0, animals: 0 };
    group.stations += 1;
    group.animals += animals;
    groups.set(areaM2, group);
  }
  return [...groups.values()];
}

/** Sum over stations of log[ gamma(k + x) / (gamma(k) x!) ]: does not depend on the density. */
function countTerms(counts: readonly StationCount[], k: number): number {
  const logGammaK = logGamma(k);
  let total = 0;
  for (const { animals } of counts) {
    if (animals > 0) total += logGamma(k + animals) - logGammaK - logGamma(animals + 1);
  }
  return total;
}
