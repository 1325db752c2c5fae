/** Does the answer stand? For the species asked for, with what the checks still ask about left out in turn. */

import { Archive } from '../estimates/density/archive.ts';
import { DensityEstimator } from '../estimates/density/density-estimator.ts';
import { defaultDensitySettings } from '../estimates/density/density-settings.ts';
import { estimateSensitivity } from '../estimates/sensitivity/estimate-sensitivity.ts';
import type { SensitivityAnswer } from '../estimates/sensitivity/sensitivity-answer.ts';
import type { SensitivitySettings } from '../estimates/sensitivity/sensitivity-variants.ts';
import type { DataInQuestion } from '../estimates/sensitivity/without-data.ts';
import type { ReferenceUsed } from '../estimates/status/status-answer.ts';
import type { Problem } from '../survey/message.ts';
import type { Store } from '../survey/store.ts';
import type { Species, Survey } from '../survey/words.ts';
import { askedOf, checkSurveys } from './check-survey.ts';
import { latestAsked, openUpTo } from './open-up-to.ts';
import { readBookWords, speciesAsked } from './take-in-hand.ts';

export interface SensitivityRequest {
  /** Null for the latest survey of the book. */
  readonly survey: string | null;
  readonly species: string | null;
  readonly reference: ReferenceUsed | null;
  /** ISO day, for the checks that know a date in the future. */
  readonly today: string;
  readonly settings: SensitivitySettings;
}

export interface SensitivityResult {
  readonly answers: readonly SensitivityAnswer[];
  /** Open questions about stations of the survey, whatever the species. */
  readonly questions: number;
  readonly problems: readonly Problem[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function tellSensitivity(store: Store, request: SensitivityRequest): Promise<SensitivityResult> {
  const words = await readBookWords(store);
  const survey = latestAsked(words, request.survey);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  const { confidence, seed, draws } = request.settings;
  const estimator = new DensityEstimator({
    ...defaultDensitySettings,
    interval: 'lognormal',
    confidence,
    seed,
    draws,
  });
  const archive = new Archive();
  const opened = await openUpTo(store, words, survey, archive);
  const open = await openQuestions(store, survey, request.today);
  const answers = (species === null ? opened.inHand.targets : [species]).map((one) =>
    estimateSensitivity(
      {
        survey: opened.inHand,
        species: one,
        estimator,
        archive,
        reference: request.reference,
        questioned: open.filter(({ place }) => isAbout(place.species, one)).map(dataOf),
      },
      request.settings,
    ),
  );
  return {
    answers,
    questions: open.length,
    problems: askedOf(opened),
    species: words.species,
    dataVersion: await store.dataVersion(),
  };
}

/** What a check asks of a station, and nobody has answered. Notes ask nothing. */
async function openQuestions(store: Store, survey: Survey, today: string): Promise<readonly Problem[]> {
  const { checked } = await checkSurveys(store, { survey: survey.name, today });
  return checked
    .filter(({ problem, answer }) => answer === null && problem.severity !== 'note')
    .map(({ problem }) => problem)
    .filter(({ place }) => place.station !== undefined);
}

function isAbout(name: string | undefined, species: Species): boolean {
  return name === undefined || name === species.name;
}

function dataOf({ place }: Problem): DataInQuestion {
  return { station: place.station!, transect: place.transect ?? null };
}
