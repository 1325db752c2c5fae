/** Biomass of every target species of the surveys asked for. */

import type { BiomassAnswer, WeightState } from '../estimates/biomass/biomass-answer.ts';
import { chooseWeights, type WeightsChosen } from '../estimates/biomass/choose-weights.ts';
import { estimateBiomass as biomassOfSpecies } from '../estimates/biomass/estimate-biomass.ts';
import type { FittedPair } from '../estimates/biomass/fit-length-weight.ts';
import type { WeightRequest } from '../estimates/biomass/weight-candidates.ts';
import { DensityEstimator } from '../estimates/density/density-estimator.ts';
import { type Acceptance, defaultDensitySettings } from '../estimates/density/density-settings.ts';
import type { Problem } from '../survey/message.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { askedOf } from './check-survey.ts';
import { readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface BiomassRequest {
  readonly survey: string | null;
  readonly species: string | null;
  readonly by: 'survey' | 'stratum' | 'site' | 'zone';
  /** Null: the state of the weights at hand. */
  readonly state: WeightState | null;
  readonly pair: WeightRequest['choice'];
  readonly correction: WeightRequest['correction'];
  readonly confidence: number;
  readonly acceptance: Acceptance | null;
}

export interface BiomassResult {
  readonly answers: readonly BiomassAnswer[];
  /** The fits that were used, by species. */
  readonly fits: readonly { readonly species: string; readonly fit: FittedPair }[];
  readonly problems: readonly Problem[];
  /** Every species of the book, for the names people use. */
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function estimateBiomass(store: Store, request: BiomassRequest): Promise<BiomassResult> {
  const words = await readBookWords(store);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  const asked = new Set(surveysAsked(words, request.survey).map((one) => one.id));
  const { by, confidence, acceptance } = request;
  const estimator = new DensityEstimator({ ...defaultDensitySettings, by, confidence, acceptance });
  const values = { ownValues: await store.all('ownValue'), weighings: await store.all('weight') };
  const answers: BiomassAnswer[] = [];
  const problems: Problem[] = [];
  const fits = new Map<string, FittedPair>();
  const answerFor = (inHand: SurveyInHand, one: Species) => {
    const choose = (hasLengths: boolean) => {
      const weighings = values.weighings.filter((weight) => weight.speciesId === one.id);
      const chosen = chooseWeights({
        ...values,
        ...request,
        species: one,
        weighings,
        choice: request.pair,
        hasLengths,
      });
      if (isChosen(chosen) && chosen.fit !== null) fits.set(one.name, chosen.fit);
      return chosen;
    };
    const densities = estimator.answers(inHand, one);
    const input = { survey: inHand, species: one, densities, choose, state: request.state ?? 'live' };
    answers.push(...biomassOfSpecies(input, { by, confidence, acceptance }));
  };
  // Oldest first, as for the density, whose intervals learn from the surveys before.
  const last = words.surveys.findLastIndex((one) => asked.has(one.id));
  for (const survey of words.surveys.slice(0, last + 1)) {
    const opened = await takeInHand(store, words, survey, { lengths: asked.has(survey.id) });
    if (asked.has(survey.id)) {
      for (const one of species === null ? opened.inHand.targets : [species]) answerFor(opened.inHand, one);
      problems.push(...askedOf(opened));
    }
    estimator.remember(opened.inHand);
  }
  return {
    answers,
    fits: [...fits].map(([name, fit]) => ({ species: name, fit })),
    problems,
    species: words.species,
    dataVersion: await store.dataVersion(),
  };
}

function isChosen(chosen: ReturnType<typeof chooseWeights>): chosen is WeightsChosen {
  return 'basis' in chosen;
}
