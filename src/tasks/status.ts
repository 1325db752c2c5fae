/** Status of the species asked for: densities against published or typed ones of the same method. */

import { DensityEstimator } from '../estimates/density/density-estimator.ts';
import { type Acceptance, defaultDensitySettings } from '../estimates/density/density-settings.ts';
import {
  type StatusSettings,
  estimateStatus as statusOfSpecies,
} from '../estimates/status/estimate-status.ts';
import type { ReferenceUsed, StatusAnswer } from '../estimates/status/status-answer.ts';
import type { Problem } from '../survey/message.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import { valuesFor } from '../survey/values-lookup.ts';
import type { OwnValue, SizeLimit, Species } from '../survey/words.ts';
import { askedOf } from './check-survey.ts';
import { latestAsked, openUpTo } from './open-up-to.ts';
import { readBookWords, speciesAsked } from './take-in-hand.ts';

export interface StatusRequest {
  /** Null for the latest survey of the book. */
  readonly survey: string | null;
  readonly species: string | null;
  readonly by: StatusSettings['by'];
  /** Typed; then it stands alone, and the published ones are left aside. */
  readonly reference: ReferenceUsed | null;
  readonly confidence: number;
  readonly acceptance: Acceptance | null;
}

export interface StatusResult {
  readonly answers: readonly StatusAnswer[];
  readonly problems: readonly Problem[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function estimateStatus(store: Store, request: StatusRequest): Promise<StatusResult> {
  const words = await readBookWords(store);
  const survey = latestAsked(words, request.survey);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  const own = await store.all('ownValue');
  const { by, confidence, acceptance } = request;
  const estimator = new DensityEstimator({ ...defaultDensitySettings, by, confidence, acceptance });
  const opened = await openUpTo(store, words, survey, estimator);
  const answers = (species === null ? opened.inHand.targets : [species]).flatMap((one) =>
    statusFor(opened.inHand, one, {
      estimator,
      references: request.reference === null ? publishedDensities(one, own) : [request.reference],
      own,
      limits: words.limits,
      settings: { by, confidence, accepted: acceptance !== null },
    }),
  );
  return {
    answers,
    problems: askedOf(opened),
    species: words.species,
    dataVersion: await store.dataVersion(),
  };
}

interface StatusContext {
  readonly estimator: DensityEstimator;
  readonly references: readonly ReferenceUsed[];
  readonly own: readonly OwnValue[];
  readonly limits: readonly SizeLimit[];
  readonly settings: StatusSettings;
}

function statusFor(survey: SurveyInHand, species: Species, context: StatusContext): readonly StatusAnswer[] {
  const limit = context.limits.find((one) => one.speciesId === species.id);
  const input = {
    survey,
    species,
    densities: context.estimator.answers(survey, species),
    references: context.references,
    maturity: valuesFor(species, 'size-at-maturity', context.own).map(({ content, source, status }) => ({
      lengthMm: content.lengthMm,
      source: content.place === null ? source : `${source}; ${content.place}`,
      status,
    })),
    limit:
      limit === undefined
        ? null
        : { lengthMm: limit.minimumMm, source: limit.source, status: 'own' as const },
  };
  return statusOfSpecies(input, context.settings);
}

/** Published densities of a species and the officer's own, each with source and status. */
export function publishedDensities(species: Species, own: readonly OwnValue[]): readonly ReferenceUsed[] {
  return valuesFor(species, 'reference-density', own).map(({ content, source, status, note }) => ({
    content,
    source,
    status,
    note,
  }));
}
