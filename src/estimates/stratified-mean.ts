import { mean, sum } from '../maths/variance.ts';
import type { MeanEstimate, StratumValues } from './shapes.ts';
import { satterthwaiteDegreesOfFreedom, spreadOf } from './spread.ts';

/**
 * Weighted mean of station values over strata, in the unit of the values (for densities: animals per hectare).
 *
 * Each stratum counts by its weight, usually its mapped area, never by how many stations the boat
 * happened to visit. The weights need not sum to one. The station is the sampling unit: transects of
 * one station are summed before they come here.
 *
 * Assumes random stations within strata and known areas. A stratum with one station gives a mean but
 * no spread: the standard error is null, with the strata named; it is never replaced by zero. A stratum
 * without stations leaves the mean unknown. Throws when there is no stratum at all.
 * Source: Cochran 1977, equations 5.1, 5.6 and 5.16 (from memory); computed with R survey 4.1.
 *
 *     stratifiedMean([{ name: 'reef', weight: 2, values: [10, 30], populationUnits: null }]).value // 20
 */
export function stratifiedMean(strata: readonly StratumValues[]): MeanEstimate {
  const totalWeight = requiredWeight(strata);
  const empty = strata.filter((stratum) => stratum.values.length === 0);
  if (empty.length > 0) {
    const where = empty.map((stratum) => stratum.name).join(', ');
    return { ...unknown, reason: { code: 'no-station', parameters: { where } } };
  }
  const value = sum(strata.map((stratum) => stratum.weight * mean(stratum.values))) / totalWeight;
  const spread = spreadOf(strata.map((stratum) => contributionsOf(stratum, totalWeight)));
  if (spread.standardError === null) return { ...unknown, value, reason: spread.reason };
  return {
    value,
    standardError: spread.standardError,
    degreesOfFreedom: satterthwaiteDegreesOfFreedom(spread.between),
    reason: null,
  };
}

const unknown: MeanEstimate = { value: null, standardError: null, degreesOfFreedom: null, reason: null };

function requiredWeight(strata: readonly StratumValues[]): number {
  if (strata.length === 0) throw new Error('stratifiedMean requires at least one stratum');
  if (strata.some((stratum) => !(stratum.weight > 0))) {
    throw new Error('stratifiedMean requires a positive weight for every stratum');
  }
  return sum(strata.map((stratum) => stratum.weight));
}

function contributionsOf(stratum: StratumValues, totalWeight: number) {
  const perStation = stratum.weight / totalWeight / stratum.values.length;
  return {
    name: stratum.name,
    contributions: stratum.values.map((value) => perStation * value),
    populationUnits: stratum.populationUnits,
  };
}
