/** Harvest options of one species, from the survey in the book or from typed numbers. */

import type { WeightState } from '../estimates/biomass/biomass-answer.ts';
import type { Acceptance } from '../estimates/density/density-settings.ts';
import type { ChanceBelow } from '../estimates/harvest/closure.ts';
import type { LowerUse } from '../estimates/harvest/counted-stock.ts';
import { estimateHarvest, type HarvestChoices } from '../estimates/harvest/estimate-harvest.ts';
import type { HarvestAnswer, LegalShare, LegalWeight } from '../estimates/harvest/harvest-answer.ts';
import { type TypedStock, typedStock } from '../estimates/harvest/typed-stock.ts';
import { probabilityBelow } from '../estimates/status/probability-below.ts';
import type { Problem } from '../survey/message.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { askedOf } from './check-survey.ts';
import { countedHarvest } from './harvest/counted-harvest.ts';
import { harvestLearner } from './harvest/harvest-learner.ts';
import { latestAsked, openUpTo } from './open-up-to.ts';
import { readBookWords, speciesAsked } from './take-in-hand.ts';

export interface SourcedValue {
  readonly value: number;
  readonly source: string;
}

export interface HarvestRequest {
  /** Null for the latest survey of the book. */
  readonly survey: string | null;
  readonly species: string;
  readonly choices: HarvestChoices;
  readonly lower: LowerUse;
  /** Null takes the book's limit; 0 where every size may be taken. */
  readonly limitMm: number | null;
  /** Typed, in place of the measured share. */
  readonly legalShare: SourcedValue | null;
  /** Typed, in kilograms, in place of weights from the book. */
  readonly meanWeightKg: SourcedValue | null;
  readonly state: WeightState | null;
  readonly acceptance: Acceptance | null;
}

export interface HarvestResult {
  readonly answer: HarvestAnswer;
  readonly problems: readonly Problem[];
  readonly species: readonly Species[];
  /** Null where no book was asked. */
  readonly dataVersion: string | null;
}

export async function workOutHarvest(store: Store, request: HarvestRequest): Promise<HarvestResult> {
  const words = await readBookWords(store);
  const survey = latestAsked(words, request.survey);
  const species = speciesAsked(words, request.species);
  const learner = harvestLearner(request);
  const opened = await openUpTo(store, words, survey, learner);
  const answer = countedHarvest(
    {
      survey: opened.inHand,
      species,
      learner,
      bookLimit: words.limits.find((one) => one.speciesId === species.id) ?? null,
      ownValues: await store.all('ownValue'),
      weighings: (await store.all('weight')).filter((one) => one.speciesId === species.id),
    },
    request,
  );
  return {
    answer,
    problems: askedOf(opened),
    species: words.species,
    dataVersion: await store.dataVersion(),
  };
}

export interface TypedHarvest extends TypedStock {
  readonly legalShare: number;
  readonly legalShareCv: number | null;
  readonly meanWeightKg: number | null;
}

/** Without a survey: every number was typed, and is printed as typed. */
export function workOutTypedHarvest(
  typed: TypedHarvest,
  choices: HarvestChoices,
  species: string | null,
): HarvestResult {
  const legal: LegalShare = {
    limitMm: null,
    source: 'typed',
    typed: true,
    share: typed.legalShare,
    interval: null,
    cv: typed.legalShareCv,
    measured: null,
  };
  const weight: LegalWeight | null =
    typed.meanWeightKg === null ? null : typedWeight(typed.meanWeightKg, 'typed');
  const chanceBelow = (densityPerHa: number): ChanceBelow => ({
    ofBelief: null,
    byDesign: probabilityBelow(typed, { densityPerHa, cv: null }),
    noneSeenBoundPerHa: null,
  });
  const answer = estimateHarvest(
    {
      survey: null,
      species,
      taken: { stock: typedStock(typed, choices.confidence), legal, weight, weightReason: null },
      chanceBelow,
      withLimit: null,
      outsideZone: null,
      zones: [],
      cautions: [],
    },
    choices,
  );
  return { answer, problems: [], species: [], dataVersion: null };
}

export function typedWeight(kg: number, source: string, state: WeightState = 'live'): LegalWeight {
  return { grams: kg * 1000, state, source, typed: true, cautions: [] };
}
