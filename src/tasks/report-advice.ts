/** Works out what the sections of advice say, each with the task of its own verb and its defaults. */

import type { Acceptance } from '../estimates/density/density-settings.ts';
import type { ChosenRate } from '../estimates/harvest/harvest-answer.ts';
import { headlineSpecies } from '../report/headline-species.ts';
import type { ReportAdvice } from '../report/report-advice.ts';
import type { Store } from '../survey/store.ts';
import { compareSurveys } from './compare-surveys.ts';
import { estimateBiomass } from './estimate-biomass.ts';
import { explain } from './explain.ts';
import { followTrend } from './follow-trend.ts';
import { workOutHarvest } from './harvest.ts';
import { tellSensitivity } from './sensitivity.ts';
import { estimateStatus } from './status.ts';

export interface AdviceChoices {
  readonly rates: readonly ChosenRate[];
  readonly limitReference: { readonly densityPerHa: number; readonly source: string } | null;
  /** Of being below the limit reference. */
  readonly risk: number;
}

export interface AdviceRequest {
  /** Names in order of time; the last one is what the report is about. */
  readonly surveys: readonly string[];
  readonly choices: AdviceChoices;
  readonly confidence: number;
  readonly seed: number;
  readonly acceptance: Acceptance | null;
  /** ISO day. */
  readonly today: string;
}

export async function reportAdvice(store: Store, request: AdviceRequest): Promise<ReportAdvice> {
  const { confidence, acceptance } = request;
  const survey = request.surveys.at(-1)!;
  const asked = { survey, species: null, confidence, acceptance } as const;
  const status = await estimateStatus(store, { ...asked, by: 'survey', reference: null });
  const byZone = await estimateStatus(store, { ...asked, by: 'zone', reference: null });
  const weights = { ...asked, state: null, pair: 'auto', correction: 'normal' } as const;
  const biomass = await estimateBiomass(store, { ...weights, by: 'survey' });
  const byStratum = await estimateBiomass(store, { ...weights, by: 'stratum' });
  const change = await changeBy(store, request, 'survey');
  const zoned = await changeBy(store, request, 'zone');
  const sensitivity = await tellSensitivity(store, {
    survey,
    species: null,
    reference: null,
    today: request.today,
    settings: { confidence, seed: request.seed, draws: 999 },
  });
  const found = {
    change,
    changeByZone: zoned?.answers ?? [],
    trend:
      request.surveys.length < 3
        ? []
        : (await followTrend(store, { species: null, surveys: request.surveys, confidence, acceptance }))
            .answers,
    status: status.answers,
    statusByZone: byZone.answers,
    biomass: biomass.answers,
    biomassByStratum: byStratum.answers,
    fits: biomass.fits,
    rates: request.choices.rates.length,
    sensitivity: sensitivity.answers,
  };
  // A rule speaks of every species; rates only of those that were recorded.
  const isRuled = request.choices.limitReference !== null;
  const judged = status.answers.filter(({ density }) => isRuled || density.animals > 0);
  const named = headlineSpecies(found);
  return {
    ...found,
    harvest: await harvests(
      store,
      request,
      judged.map(({ density }) => density.species),
    ),
    explanations: await explanations(store, request, named),
  };
}

/** Null where there is no survey before. */
async function changeBy(store: Store, request: AdviceRequest, by: 'survey' | 'zone') {
  const [from, to] = [request.surveys.at(-2), request.surveys.at(-1)!];
  if (from === undefined) return null;
  const { confidence, seed, acceptance } = request;
  return compareSurveys(store, {
    from,
    to,
    species: null,
    settings: {
      by,
      pairing: 'auto',
      interval: 'clumped',
      confidence,
      seed,
      draws: 20_000,
      permutations: 9999,
    },
    control: null,
    acceptance,
  });
}

/** Nothing is worked out where nobody chose a rate or a limit reference. */
async function harvests(store: Store, request: AdviceRequest, names: readonly string[]) {
  const { choices, acceptance } = request;
  if (choices.rates.length === 0 && choices.limitReference === null) return [];
  const answers = [];
  for (const species of names) {
    const { answer } = await workOutHarvest(store, {
      survey: request.surveys.at(-1)!,
      species,
      choices: {
        ...choices,
        confidence: 0.9,
        otherLimitMm: null,
        closedZone: null,
        rotationYears: null,
        quota: null,
      },
      lower: 'safer',
      limitMm: null,
      legalShare: null,
      meanWeightKg: null,
      state: null,
      acceptance,
    });
    answers.push(answer);
  }
  return answers;
}

async function explanations(store: Store, request: AdviceRequest, names: readonly string[]) {
  const found = [];
  for (const species of names) {
    const { explanation } = await explain(store, {
      survey: request.surveys.at(-1)!,
      species,
      of: 'density',
      scope: { by: 'survey', name: null },
      confidence: request.confidence,
      acceptance: request.acceptance,
    });
    found.push(explanation);
  }
  return found;
}
