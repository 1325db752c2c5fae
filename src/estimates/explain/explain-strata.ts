/** The stations of a figure, stratum by stratum, with what each puts into mean and spread. */

import { mean, sampleVariance, sum } from '../../maths/variance.ts';
import { classifyTransect, type StationObservation } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import { weightOf } from '../density/point-estimate.ts';
import type { ScopeInHand, ScopePart } from '../density/scopes.ts';
import { stationVariatesPerHa } from '../station-variates.ts';
import type { ExplainedBelt, ExplainedStation, ExplainedStratum } from './explanation.ts';

export interface AmountAt {
  readonly amount: (observation: StationObservation) => number;
  /** Null but for the size. */
  readonly weightedAnimals: ((observation: StationObservation) => number) | null;
}

/** For amounts per hectare values, means and spreads; for the size the two sums that are divided. */
export function explainStrata(
  scope: ScopeInHand,
  species: Species,
  { amount, weightedAnimals }: AmountAt,
): readonly ExplainedStratum[] {
  const parts = scope.parts.filter(({ sample }) => sample.observed.length > 0);
  const totalWeight = sum(parts.map(weightOf));
  const perHa = weightedAnimals === null;
  return parts.map((part) => {
    const { sample, isMember } = part;
    const values = perHa ? valuesOf(part, amount) : null;
    const members = values?.filter((_, i) => isMember[i]) ?? [];
    return {
      stratum: sample.stratum.name,
      areaHa: sample.stratum.areaHa,
      weight: weightOf(part) / totalWeight,
      estimator: sample.estimator,
      stationCount: sample.observed.length,
      memberCount: isMember.filter(Boolean).length,
      meanPerHa: members.length === 0 ? null : mean(members),
      standardDeviationPerHa: values === null ? null : rootOf(sampleVariance(values)),
      variance: null,
      stations: sample.observed.map((observation, i) => ({
        ...stationOf(observation, species),
        isMember: isMember[i]!,
        amount: isMember[i] ? amount(observation) : 0,
        weightedAnimals: weightedAnimals === null ? null : isMember[i] ? weightedAnimals(observation) : 0,
        valuePerHa: values?.[i] ?? null,
      })),
    };
  });
}

/** As the estimate takes them: members by the stratum's own estimator, the others nothing. */
function valuesOf({ sample, isMember }: ScopePart, amount: AmountAt['amount']): readonly number[] {
  const inside = sample.observed.filter((_, i) => isMember[i]);
  const amounts = inside.map((one) => ({ animals: amount(one), searchedAreaCm2: one.searchedAreaCm2 }));
  const { valuesPerHa } = stationVariatesPerHa(amounts, null, sample.estimator);
  let next = 0;
  return isMember.map((is) => (is ? valuesPerHa[next++]! : 0));
}

function rootOf(variance: number | null): number | null {
  return variance === null ? null : Math.sqrt(variance);
}

type Bare = Omit<ExplainedStation, 'isMember' | 'amount' | 'weightedAnimals' | 'valuePerHa'>;

function stationOf(observation: StationObservation, species: Species): Bare {
  const { station, animals, searchedAreaCm2 } = observation;
  return {
    station: station.record.code,
    date: station.record.date,
    animals,
    searchedAreaM2: searchedAreaCm2 / 10_000,
    belts: station.transects.map((transect): ExplainedBelt => {
      const tally = transect.tallies.get(species.id);
      return {
        transect: transect.record.code,
        state: classifyTransect(transect, species),
        lengthM: transect.record.lengthM,
        widthM: transect.record.widthM,
        areaM2: transect.areaCm2 / 10_000,
        animals: tally?.count ?? 0,
        measured: sum((tally?.lengths ?? []).map(({ n }) => n)),
      };
    }),
  };
}

/** What each stratum adds to the variance: W^2 s^2 / n for whole strata, n s^2 of the linearised values for a part. */
export function withVariances(
  strata: readonly ExplainedStratum[],
  figure: { readonly isWhole: boolean; readonly value: number },
): readonly ExplainedStratum[] {
  if (strata.some(({ stationCount }) => stationCount < 2)) return strata;
  const linearised = linearisedValues(strata, figure);
  return strata.map((stratum, h) => ({
    ...stratum,
    variance: stratum.stationCount * sampleVariance(linearised[h]!)!,
  }));
}

/** One contribution a station: W v / n, or for a part w (v - mean) / sum of w over its members; for the size by lengths. */
function linearisedValues(
  strata: readonly ExplainedStratum[],
  { isWhole, value }: { readonly isWhole: boolean; readonly value: number },
): readonly (readonly number[])[] {
  const weightPerStation = (one: ExplainedStratum) => one.weight / one.stationCount;
  const inside = sum(strata.map((one) => weightPerStation(one) * one.memberCount));
  const animals = sum(strata.flatMap(({ stations }) => stations.map((one) => one.weightedAnimals ?? 0)));
  return strata.map((stratum) =>
    stratum.stations.map((one) => {
      if (one.weightedAnimals !== null) return (one.amount - value * one.weightedAnimals) / animals;
      const weight = weightPerStation(stratum);
      if (isWhole) return weight * one.valuePerHa!;
      return one.isMember ? (weight * (one.valuePerHa! - value)) / inside : 0;
    }),
  );
}
