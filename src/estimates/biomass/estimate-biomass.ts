/** Biomass of one species in one survey, scope by scope: counts by lengths by weights, over the sampled area only. */

import type { Reason } from '../../survey/message.ts';
import { observeSpecies, type StationObservation, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer, ScopeKind } from '../answers.ts';
import type { Acceptance } from '../density/density-settings.ts';
import { membersOf } from '../density/holds.ts';
import { type ScopeInHand, scopesBy } from '../density/scopes.ts';
import { type StratumSample, stratumSamples } from '../density/stratum-sample.ts';
import { lengthsByStation, type StationLengths } from './animals-with-weights.ts';
import type { BiomassAnswer, WeightState } from './biomass-answer.ts';
import { acceptedCaution, type WeightsChosen } from './choose-weights.ts';
import { countCautions, plausibilityOf } from './length-cautions.ts';
import { type ScopeWeights, weighScope } from './weigh-scope.ts';

export interface BiomassSettings {
  readonly by: ScopeKind;
  readonly confidence: number;
  readonly acceptance: Acceptance | null;
}

export interface BiomassInput {
  readonly survey: SurveyInHand;
  readonly species: Species;
  /** Of the same species, survey and scopes; what holds a density holds its biomass. */
  readonly densities: readonly DensityAnswer[];
  /** Asked with and without lengths, since only the survey tells whether there are any. */
  readonly choose: (hasLengths: boolean) => WeightsChosen | Reason;
  /** What was asked for, for answers that have nothing else to say. */
  readonly state: WeightState;
}

/** One answer for each density, in its order. */
export function estimateBiomass(input: BiomassInput, settings: BiomassSettings): readonly BiomassAnswer[] {
  const { survey, species, densities } = input;
  const samples = stratumSamples(observeSpecies(survey, species), survey.plannedAreaCm2, {
    estimator: 'auto',
    selection: 'all',
  });
  const lengths = lengthsByStation(samples, species);
  const chosen = input.choose(lengths !== null);
  const scopes = new Map(
    scopesBy(settings.by, survey.survey.name, samples).map((one) => [one.scope.name, one]),
  );
  return densities.map((density) => {
    const scope = scopes.get(density.scope.name);
    const empty = emptyBiomass(density, 'basis' in chosen ? chosen.state : input.state);
    if (scope === undefined || density.densityPerHa === null) return { ...empty, reason: density.reason };
    const counted = { ...empty, ...lengthsCounted(scope, lengths) };
    if (density.animals === 0) return { ...counted, reason: noneSeen(species) };
    if (!('basis' in chosen)) return { ...counted, reason: chosen };
    return answerScope({ scope, density, counted, chosen, lengths, samples, species }, settings);
  });
}

interface Scoped {
  readonly scope: ScopeInHand;
  readonly density: DensityAnswer;
  readonly counted: BiomassAnswer;
  readonly chosen: WeightsChosen;
  readonly lengths: ReadonlyMap<StationObservation, StationLengths> | null;
  readonly samples: readonly StratumSample[];
  readonly species: Species;
}

function answerScope(scoped: Scoped, settings: BiomassSettings): BiomassAnswer {
  const { scope, density, counted, chosen, lengths, species } = scoped;
  const plausible = plausibilityOf(chosen.basis, species);
  const basis = { basis: chosen.basis, conversion: chosen.conversion };
  if (plausible?.code === 'pair-implausible' && settings.acceptance === null) {
    return { ...counted, ...basis, reason: plausible };
  }
  const weights: ScopeWeights = { scope, density, chosen, lengths };
  return {
    ...counted,
    ...basis,
    ...weighScope(weights, settings.confidence),
    reason: density.reason,
    cautions: [
      ...density.cautions,
      ...chosen.cautions,
      ...plausibleCautions(plausible, settings.acceptance),
      ...countCautions(weights, species),
    ],
  };
}

/** Where an impossible weight was let through by name, the name stands with it, and the weight all the same. */
function plausibleCautions(plausible: Reason | null, acceptance: Acceptance | null): readonly Reason[] {
  if (plausible === null) return [];
  if (plausible.code !== 'pair-implausible' || acceptance === null) return [plausible];
  const { lengthMm, weightG } = plausible.parameters;
  const ofOne: Reason = { code: 'weight-of-one', parameters: { lengthMm: lengthMm!, weightG: weightG! } };
  return [acceptedCaution(plausible, acceptance), ofOne];
}

function noneSeen(species: Species): Reason {
  return { code: 'none-seen', parameters: { species: species.name } };
}

function lengthsCounted(
  scope: ScopeInHand,
  lengths: ReadonlyMap<StationObservation, StationLengths> | null,
): Pick<BiomassAnswer, 'measured' | 'borrowedAnimals'> {
  let measured = 0;
  let borrowedAnimals = 0;
  for (const { observation } of membersOf(scope.parts)) {
    measured += lengths?.get(observation)?.measured ?? 0;
    borrowedAnimals += lengths?.get(observation)?.borrowedAnimals ?? 0;
  }
  return { measured, borrowedAnimals };
}

function emptyBiomass(density: DensityAnswer, state: WeightState): BiomassAnswer {
  const { survey, species, scope, stations, animals, densityPerHa, areaHa, totalAnimals } = density;
  return {
    survey,
    species,
    scope,
    state,
    stations,
    animals,
    measured: 0,
    borrowedAnimals: 0,
    densityPerHa,
    areaHa,
    totalAnimals,
    totalAnimalsInterval: density.totalInterval,
    meanWeightG: null,
    kgPerHa: null,
    standardErrorKgPerHa: null,
    samplingErrorKgPerHa: null,
    weightErrorKgPerHa: null,
    degreesOfFreedom: null,
    intervalKgPerHa: null,
    designIntervalKgPerHa: null,
    totalKg: null,
    totalStandardErrorKg: null,
    totalIntervalKg: null,
    basis: null,
    conversion: null,
    reason: null,
    cautions: [],
  };
}
