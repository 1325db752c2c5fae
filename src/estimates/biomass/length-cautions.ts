/** What has to be said beside a weight: is it plausible, where does the pair stop, whose lengths are these. */

import { sum } from '../../maths/variance.ts';
import type { Reason } from '../../survey/message.ts';
import { classifyTransect, type StationObservation } from '../../survey/observation.ts';
import type { LengthWeight } from '../../survey/value-words.ts';
import type { Species } from '../../survey/words.ts';
import { membersOf } from '../density/holds.ts';
import type { WeightBasis } from './biomass-answer.ts';
import type { WeightsChosen } from './choose-weights.ts';
import { lengthWeightLine, weightOfLengthG } from './length-weight-line.ts';
import { isPossibleWeight, possibleWeightsG } from './plausible-weight.ts';
import { amountOverScope } from './scope-amounts.ts';
import type { ScopeWeights } from './weigh-scope.ts';

/** "One animal of 200 mm weighs 130 g: plausible?", or that it cannot be; null for a mean weight, which says itself. */
export function plausibilityOf(basis: WeightBasis, species: Species): Reason | null {
  if (basis.by !== 'pair') return null;
  const lengthMm = lengthToShow(basis.pair, species);
  const line = { ...lengthWeightLine(basis.pair), correction: basis.correction };
  const weightG = weightOfLengthG(line, lengthMm);
  // Processed bodies have lost their water: the bounds are those of a whole animal.
  if (basis.pair.weightState === 'live' && !isPossibleWeight(lengthMm, weightG)) {
    return { code: 'pair-implausible', parameters: { lengthMm, weightG, ...possibleWeightsG(lengthMm) } };
  }
  return { code: 'weight-of-one', parameters: { lengthMm, weightG } };
}

/** 200 mm, unless the pair or the species does not go there: then the middle of where it goes, in whole centimetres. */
function lengthToShow({ lengthMinMm, lengthMaxMm }: LengthWeight, species: Species): number {
  const low = lengthMinMm ?? species.minLengthMm;
  const high = lengthMaxMm ?? species.maxLengthMm;
  if (low === null || high === null || (low <= usualMm && usualMm <= high)) return usualMm;
  return Math.max(10, Math.round((low + high) / 20) * 10);
}

const usualMm = 200;

/** Animals outside the fitted lengths, with lengths of others, or measured in another way. */
export function countCautions(weights: ScopeWeights, species: Species): readonly Reason[] {
  const { chosen } = weights;
  const conversion = conversionCaution(chosen);
  if (chosen.basis.by !== 'pair') return conversion;
  const { pair } = chosen.basis;
  return [
    ...conversion,
    ...outsideRange(weights, pair),
    ...borrowed(weights),
    ...otherMeasure(weights, pair, species),
  ];
}

/** The ratio from one state to another, or its bounds, with the source. */
export function conversionCaution(chosen: Pick<WeightsChosen, 'conversion'>): readonly Reason[] {
  if (chosen.conversion === null) return [];
  const { content, source } = chosen.conversion;
  const { from, to, ratio, ratioLow, ratioHigh } = content;
  if (ratio !== null) {
    return [{ code: 'conversion-used', parameters: { from, to, percent: 100 * ratio, source } }];
  }
  const bounds = { lowPercent: 100 * (ratioLow ?? 0), highPercent: 100 * (ratioHigh ?? 1) };
  return [{ code: 'conversion-bounds', parameters: { from, to, ...bounds, source } }];
}

function outsideRange({ scope, lengths, density }: ScopeWeights, pair: LengthWeight): readonly Reason[] {
  const { lengthMinMm: fromMm, lengthMaxMm: toMm } = pair;
  if (fromMm === null || toMm === null || lengths === null || !density.densityPerHa) return [];
  const outsideAt = (observation: StationObservation) =>
    sum(
      (lengths.get(observation)?.lengths ?? [])
        .filter(({ lengthMm }) => lengthMm < fromMm || lengthMm > toMm)
        .map(({ animals }) => animals),
    );
  const outside = amountOverScope(scope, outsideAt).density.value ?? 0;
  if (!(outside > 0)) return [];
  const percent = roughly((100 * outside) / density.densityPerHa);
  return [{ code: 'outside-fitted-range', parameters: { percent, fromMm, toMm } }];
}

function borrowed({ scope, lengths, density }: ScopeWeights): readonly Reason[] {
  const animals = sum(
    membersOf(scope.parts).map(({ observation }) => lengths?.get(observation)?.borrowedAnimals ?? 0),
  );
  if (animals === 0) return [];
  return [
    {
      code: 'lengths-borrowed',
      parameters: { animals, percent: roughly((100 * animals) / density.animals) },
    },
  ];
}

function otherMeasure({ scope }: ScopeWeights, pair: LengthWeight, species: Species): readonly Reason[] {
  if (pair.lengthMeasure === null) return [];
  let animals = 0;
  for (const { observation } of membersOf(scope.parts)) {
    for (const transect of observation.station.transects) {
      if (classifyTransect(transect, species) !== 'counted') continue;
      for (const { measure, n } of transect.tallies.get(species.id)!.lengths) {
        if (measure !== null && measure !== pair.lengthMeasure) animals += n;
      }
    }
  }
  return animals === 0
    ? []
    : [{ code: 'other-measure', parameters: { animals, measure: pair.lengthMeasure } }];
}

/** Two digits: nobody needs a third of a share that is told as a caution. */
function roughly(percent: number): number {
  return Number(percent.toPrecision(2));
}
