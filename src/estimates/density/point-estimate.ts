/** Density, spread and stock of one scope, by the design. */

import type { MeanEstimate, StratumValues } from '../shapes.ts';
import { stationVariatesPerHa } from '../station-variates.ts';
import { stratifiedMean } from '../stratified-mean.ts';
import { type Subpopulation, subpopulationMean, subpopulationTotal } from '../subpopulation-mean.ts';
import { stockTotal } from '../totals.ts';
import type { ScopeInHand, ScopePart } from './scopes.ts';

export interface PointEstimate {
  readonly density: MeanEstimate;
  /** Null where an area is missing. */
  readonly stock: MeanEstimate | null;
  /** Area of the scope: mapped, or for a site or zone estimated from the stations that fell inside. */
  readonly areaHa: number | null;
  /**
   * One value per station of every stratum with a part, whose weighted mean is the density and whose
   * spread is its spread: what a bootstrap draws from. For a site or zone these are linearised values.
   */
  readonly resampleFrom: readonly StratumValues[];
}

/** Relative weights: areas, or 1 for a single stratum of unknown area, whose weight does not matter. */
export function weightOf(part: ScopePart): number {
  return part.sample.stratum.areaHa ?? 1;
}

export function pointEstimate(scope: ScopeInHand, finitePopulation: boolean): PointEstimate {
  const parts = scope.parts.filter(({ sample }) => sample.observed.length > 0);
  const areaKnown = parts.every(({ sample }) => sample.stratum.areaHa !== null);
  const whole = parts.every(({ isMember }) => isMember.every(Boolean));
  const strata = parts.map((part) => stratumValues(part, finitePopulation, part.sample.valuesPerHa));
  // Membership by chance adds variance; strata taken whole, as a survey or a stratum is, do not have it.
  if (whole && (scope.scope.by === 'survey' || scope.scope.by === 'stratum')) {
    const density = stratifiedMean(strata);
    const areaHa = areaKnown ? strata.reduce((total, stratum) => total + stratum.weight, 0) : null;
    const stock = areaHa === null ? null : stockTotal(density, { areaHa, areaStandardErrorHa: 0 });
    return { density, stock, areaHa, resampleFrom: strata };
  }
  const ownStrata = parts.map((part) =>
    stratumValues(part, finitePopulation, valuesWithin(part, part.isMember)),
  );
  const subpopulation = subpopulationOf(scope, parts, ownStrata);
  const density = subpopulationMean(subpopulation);
  return {
    density,
    stock: areaKnown ? stockOf(subpopulation, density) : null,
    areaHa: areaKnown ? density.estimatedWeight : null,
    resampleFrom: density.value === null ? [] : linearised(ownStrata, parts, density.value),
  };
}

/** No spread of the density, no spread of the stock: a zone of one station has neither. */
function stockOf(subpopulation: Subpopulation, density: MeanEstimate): MeanEstimate {
  const total = subpopulationTotal(subpopulation);
  return density.standardError === null ? { ...total, standardError: null, degreesOfFreedom: null } : total;
}

function stratumValues(part: ScopePart, finitePopulation: boolean, values: readonly number[]): StratumValues {
  const { sample } = part;
  const units = finitePopulation ? populationUnits(sample) : null;
  return { name: sample.stratum.name, weight: weightOf(part), values, populationUnits: units };
}

/**
 * One value per station of the stratum for a part of it. Where the stratum's density is a ratio of sums, the
 * part has a ratio of its own: the residuals of the whole stratum's would give stations without an animal
 * something other than zero. Stations outside the part have no say and get 0.
 */
export function valuesWithin({ sample }: ScopePart, isInside: readonly boolean[]): readonly number[] {
  if (sample.estimator === 'station mean') return sample.valuesPerHa;
  const inside = sample.observed.filter((_, i) => isInside[i]);
  const { valuesPerHa } = stationVariatesPerHa(inside, null, 'ratio of sums');
  let next = 0;
  return isInside.map((is) => (is ? valuesPerHa[next++]! : 0));
}

/** How many stations of this size the stratum has room for. */
export function populationUnits(sample: ScopePart['sample']): number | null {
  const { areaHa } = sample.stratum;
  const searchedCm2 = sample.observed.reduce((total, one) => total + one.searchedAreaCm2, 0);
  if (areaHa === null || searchedCm2 === 0) return null;
  return (areaHa * cm2PerHa * sample.observed.length) / searchedCm2;
}

const cm2PerHa = 1e8;

function subpopulationOf(
  scope: ScopeInHand,
  parts: readonly ScopePart[],
  strata: readonly StratumValues[],
): Subpopulation {
  return {
    name: scope.scope.name,
    strata: strata.map((stratum, h) => ({
      name: stratum.name,
      weight: stratum.weight,
      populationUnits: stratum.populationUnits,
      stations: stratum.values.map((value, i) => ({ value, within: parts[h]!.isMember[i]! })),
    })),
  };
}

/**
 * Values whose weighted mean over whole strata is the subpopulation mean and whose spread is its
 * linearised spread (Davison and Hinkley 1997, section 2.7, from memory): the mean plus the influence
 * of each station, zero influence for stations outside.
 */
function linearised(
  strata: readonly StratumValues[],
  parts: readonly ScopePart[],
  meanPerHa: number,
): readonly StratumValues[] {
  const totalWeight = strata.reduce((total, stratum) => total + stratum.weight, 0);
  const inside = strata.reduce((total, stratum, h) => {
    const members = parts[h]!.isMember.filter(Boolean).length;
    return total + (stratum.weight * members) / stratum.values.length;
  }, 0);
  return strata.map((stratum, h) => ({
    ...stratum,
    values: stratum.values.map((value, i) =>
      parts[h]!.isMember[i] ? meanPerHa + ((value - meanPerHa) * totalWeight) / inside : meanPerHa,
    ),
  }));
}
