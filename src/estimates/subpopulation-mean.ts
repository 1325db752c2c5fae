import type { MeanEstimate } from './shapes.ts';
import { spreadOf } from './spread.ts';
import { type RatioEstimate, type RatioStratum, weightedRatio, weightedTotal } from './weighted-ratio.ts';

/** All stations of one stratum, those inside the zone or site marked. */
export interface SubpopulationStratum {
  readonly name: string;
  /** Weight of the whole stratum, usually its area in hectares. */
  readonly weight: number;
  readonly populationUnits: number | null;
  readonly stations: readonly { readonly value: number; readonly within: boolean }[];
}

export interface Subpopulation {
  readonly name: string;
  readonly strata: readonly SubpopulationStratum[];
}

export interface SubpopulationEstimate extends MeanEstimate {
  readonly stations: number;
  /** Estimated weight (area in hectares) of the subpopulation: never measured, only sampled. */
  readonly estimatedWeight: number;
}

/**
 * Mean of the stations of a zone or site that cuts across strata, in the unit of the values.
 *
 * How many stations fell inside is itself chance, so every station of the strata stays in the variance
 * with a zero; dropping the others first gives a wrong one. Only strata that hold a station of the
 * subpopulation take part. Degrees of freedom: their stations minus their number.
 *
 * No station inside: null, 'no-station'. One: value without a standard error, 'too-few-in-subpopulation'.
 * A lone station of a stratum: no standard error, 'lone-station'.
 * Source: Cochran 1977, section 5A.14 (from memory); R survey subset and svyby.
 */
export function subpopulationMean(subpopulation: Subpopulation): SubpopulationEstimate {
  const { estimate, stations } = estimateOf(subpopulation);
  const { value, degreesOfFreedom, standardError, reason, denominator } = estimate;
  const counted = { stations, estimatedWeight: denominator };
  if (stations >= 2) return { value, standardError, degreesOfFreedom, reason, ...counted };
  const tooFew: MeanEstimate['reason'] =
    stations === 0
      ? { code: 'no-station', parameters: { where: subpopulation.name } }
      : { code: 'too-few-in-subpopulation', parameters: { name: subpopulation.name, stations } };
  return { value, standardError: null, degreesOfFreedom: null, reason: tooFew, ...counted };
}

/**
 * Total of a subpopulation whose area is not mapped, in animals when the weights are hectares: the sum of
 * weight times value over its stations. Wider than mean times mapped area, because the area is estimated too.
 */
export function subpopulationTotal(subpopulation: Subpopulation): MeanEstimate {
  const strata = holdingStrata(subpopulation);
  if (strata.length > 0) return weightedTotal(strata.map(asRatioStratum));
  const reason = { code: 'no-station', parameters: { where: subpopulation.name } } as const;
  return { value: null, standardError: null, degreesOfFreedom: null, reason };
}

/**
 * Difference of two subpopulations of the same stations (first minus second), with their covariance:
 * stations of one stratum are shared, so the two means are not independent.
 *
 * Both must list the same strata and stations in the same order; throws otherwise. Null with the reason
 * of the one that is unknown.
 */
export function subpopulationDifference(first: Subpopulation, second: Subpopulation): MeanEstimate {
  requireSameStations(first, second);
  const means = [subpopulationMean(first), subpopulationMean(second)] as const;
  if (means[0].value === null || means[1].value === null) {
    const reason = means[0].value === null ? means[0].reason : means[1].reason;
    return { value: null, standardError: null, degreesOfFreedom: null, reason };
  }
  const value = means[0].value - means[1].value;
  const reason = means[0].reason ?? means[1].reason;
  if (reason !== null) return { value, standardError: null, degreesOfFreedom: null, reason };
  const strata = first.strata.filter((stratum, h) => holds(stratum) || holds(second.strata[h]!));
  const contributionsOf = [contributionsByStratum(first), contributionsByStratum(second)] as const;
  const units = strata.map((stratum) => ({
    name: stratum.name,
    populationUnits: stratum.populationUnits,
    contributions: stratum.stations.map(
      (_, i) =>
        (contributionsOf[0].get(stratum.name)?.[i] ?? 0) - (contributionsOf[1].get(stratum.name)?.[i] ?? 0),
    ),
  }));
  const degreesOfFreedom = strata.reduce((df, stratum) => df + stratum.stations.length - 1, 0);
  return { value, standardError: spreadOf(units).standardError, degreesOfFreedom, reason: null };
}

function estimateOf(subpopulation: Subpopulation): { estimate: RatioEstimate; stations: number } {
  const strata = holdingStrata(subpopulation);
  const stations = strata.reduce(
    (n, stratum) => n + stratum.stations.filter((station) => station.within).length,
    0,
  );
  return { estimate: strata.length === 0 ? nothing : weightedRatio(strata.map(asRatioStratum)), stations };
}

const nothing: RatioEstimate = {
  value: null,
  standardError: null,
  degreesOfFreedom: null,
  reason: null,
  denominator: 0,
  contributions: [],
};

function holdingStrata(subpopulation: Subpopulation): SubpopulationStratum[] {
  return subpopulation.strata.filter(holds);
}

function holds(stratum: SubpopulationStratum): boolean {
  return stratum.stations.some((station) => station.within);
}

function asRatioStratum(stratum: SubpopulationStratum): RatioStratum {
  return {
    name: stratum.name,
    unitWeight: stratum.weight / stratum.stations.length,
    numerators: stratum.stations.map((station) => (station.within ? station.value : 0)),
    denominators: stratum.stations.map((station) => (station.within ? 1 : 0)),
    populationUnits: stratum.populationUnits,
  };
}

function contributionsByStratum(subpopulation: Subpopulation): Map<string, readonly number[]> {
  const { contributions } = estimateOf(subpopulation).estimate;
  return new Map(holdingStrata(subpopulation).map((stratum, h) => [stratum.name, contributions[h]!]));
}

function requireSameStations(first: Subpopulation, second: Subpopulation): void {
  const same =
    first.strata.length === second.strata.length &&
    first.strata.every((stratum, h) => {
      const other = second.strata[h]!;
      return stratum.name === other.name && stratum.stations.length === other.stations.length;
    });
  if (!same) throw new Error('subpopulationDifference requires the same strata and stations in both');
}
