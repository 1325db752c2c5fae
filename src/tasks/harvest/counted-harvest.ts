/** Harvest options from counts: the whole survey, and what lies outside a zone, by the same steps. */

import type { DensityAnswer } from '../../estimates/answers.ts';
import { chooseWeights } from '../../estimates/biomass/choose-weights.ts';
import type { ChanceBelow } from '../../estimates/harvest/closure.ts';
import { countedStock } from '../../estimates/harvest/counted-stock.ts';
import { estimateHarvest } from '../../estimates/harvest/estimate-harvest.ts';
import type { HarvestAnswer, LegalWeight } from '../../estimates/harvest/harvest-answer.ts';
import type { Taken } from '../../estimates/harvest/harvest-options.ts';
import { legalWeight } from '../../estimates/harvest/legal-weight.ts';
import { outsideOf, splitAtZone } from '../../estimates/harvest/outside-zone.ts';
import { shareBelow } from '../../estimates/status/belief-shares.ts';
import { byDesign } from '../../estimates/status/compare-density.ts';
import { Failure } from '../../survey/failure.ts';
import type { Reason } from '../../survey/message.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { OwnValue, SizeLimit, Species, Weight } from '../../survey/words.ts';
import { type HarvestRequest, typedWeight } from '../harvest.ts';
import type { HarvestLearner } from './harvest-learner.ts';
import { hasLengths } from './has-lengths.ts';
import { type Ground, type Limit, legalShare } from './legal-share.ts';

export interface CountedInput {
  readonly survey: SurveyInHand;
  readonly species: Species;
  readonly learner: HarvestLearner;
  readonly bookLimit: SizeLimit | null;
  readonly ownValues: readonly OwnValue[];
  readonly weighings: readonly Weight[];
}

export function countedHarvest(input: CountedInput, request: HarvestRequest): HarvestAnswer {
  const { survey, species, bookLimit } = input;
  const whole: Ground = { survey, by: 'survey', name: survey.survey.name };
  const density = densityOn(input, whole, 'clumped');
  const limit = limitOf(request, bookLimit);
  const zones = zonesOf(survey);
  return estimateHarvest(
    {
      survey: survey.survey.name,
      species: species.name,
      taken: takenFrom(input, request, whole, limit),
      chanceBelow: (densityPerHa) => ({
        ...chanceBelow(density, densityPerHa),
        noneSeenBoundPerHa: noneSeenBound(input, density),
      }),
      withLimit: (limitMm) =>
        takenFrom(input, { ...request, legalShare: null }, whole, { mm: limitMm, source: 'chosen' }),
      outsideZone: (zone) => {
        requireZone(zone, zones);
        const ground: Ground = { survey: splitAtZone(survey, zone), by: 'zone', name: outsideOf(zone) };
        return takenFrom(input, request, ground, limit);
      },
      zones,
      cautions: density.cautions.filter(({ code }) => code !== 'zero-bound'),
    },
    request.choices,
  );
}

function limitOf(request: HarvestRequest, bookLimit: SizeLimit | null): Limit | null {
  if (request.limitMm !== null) return { mm: request.limitMm, source: 'chosen' };
  return bookLimit === null ? null : { mm: bookLimit.minimumMm, source: bookLimit.source };
}

function takenFrom(
  input: CountedInput,
  request: HarvestRequest,
  ground: Ground,
  limit: Limit | null,
): Taken | Reason {
  const stock = countedStock({
    clumped: densityOn(input, ground, 'clumped'),
    lognormal: densityOn(input, ground, 'lognormal'),
    use: request.lower,
  });
  if ('code' in stock) return stock;
  const legal = legalShare(input.species, request, ground, limit);
  if ('code' in legal) return legal;
  const weight = weightOf(input, request, ground, limit);
  const known = 'code' in weight ? null : weight;
  return { stock, legal, weight: known, weightReason: 'code' in weight ? weight : null };
}

function densityOn(
  { learner, species }: CountedInput,
  ground: Ground,
  interval: 'clumped' | 'lognormal',
): DensityAnswer {
  const answers = learner.estimator(ground.by, interval).answers(ground.survey, species);
  return answers.find((one) => one.scope.name === ground.name) ?? answers[0]!;
}

function weightOf(
  input: CountedInput,
  request: HarvestRequest,
  ground: Ground,
  limit: Limit | null,
): LegalWeight | Reason {
  const { survey, by, name } = ground;
  const { species } = input;
  if (request.meanWeightKg !== null) {
    return typedWeight(request.meanWeightKg.value, request.meanWeightKg.source, request.state ?? 'live');
  }
  const chosen = chooseWeights({
    species,
    ownValues: input.ownValues,
    weighings: input.weighings,
    choice: 'auto',
    state: request.state,
    correction: 'normal',
    hasLengths: hasLengths(survey, species),
    acceptance: request.acceptance,
  });
  const accepted = request.acceptance !== null;
  return legalWeight({ survey, species, scope: { by, name }, limitMm: limit?.mm ?? 0, chosen, accepted });
}

function chanceBelow(density: DensityAnswer, densityPerHa: number): Omit<ChanceBelow, 'noneSeenBoundPerHa'> {
  const level = { densityPerHa, cv: null };
  // A bound has no chance: with nothing seen the belief is one of zeros only.
  const ofBelief =
    density.belief === null || density.animals === 0 ? null : shareBelow(density.belief, level);
  return { ofBelief, byDesign: byDesign(density, level) };
}

function noneSeenBound({ learner, survey, species }: CountedInput, density: DensityAnswer): number | null {
  if (density.animals > 0 || density.densityPerHa === null) return null;
  return learner.bounds.answers(survey, species)[0]?.intervalPerHa?.[1] ?? null;
}

function zonesOf({ stations }: SurveyInHand): readonly string[] {
  return [...new Set(stations.map(({ record }) => record.zone).filter((zone) => zone !== null))].toSorted();
}

/** A zone that is not there is a slip of the pen, as everywhere. */
function requireZone(name: string, zones: readonly string[]): void {
  if (zones.includes(name)) return;
  throw new Failure('unknown-scope-name', {
    scope: 'zone',
    name,
    nearest: nearestName(name, zones) ?? '',
    known: zones.slice(0, 12).join(', '),
  });
}
