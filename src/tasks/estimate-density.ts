/** Densities of every target species of the surveys asked for. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { DensityEstimator } from '../estimates/density/density-estimator.ts';
import type { DensitySettings } from '../estimates/density/density-settings.ts';
import { Failure } from '../survey/failure.ts';
import type { Problem } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { askedOf } from './check-survey.ts';
import { type BookWords, readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface DensityRequest {
  /** Null for every survey of the book. */
  readonly survey: string | null;
  /** Null for every target species. */
  readonly species: string | null;
  readonly settings: DensitySettings;
}

export interface DensityResult {
  readonly answers: readonly DensityAnswer[];
  readonly problems: readonly Problem[];
  /** Every species of the book, for the names people use. */
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function estimateDensity(store: Store, request: DensityRequest): Promise<DensityResult> {
  const words = await readBookWords(store);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  requireStrata(words, request.settings.merges.flat());
  const asked = new Set(surveysAsked(words, request.survey).map((one) => one.id));
  const estimator = new DensityEstimator(request.settings);
  const answers: DensityAnswer[] = [];
  const problems: Problem[] = [];
  // Oldest first: the surveys before one show how clumped its animals are. What comes after the last asked is not read.
  const last = words.surveys.findLastIndex((one) => asked.has(one.id));
  for (const survey of words.surveys.slice(0, last + 1)) {
    const opened = await takeInHand(store, words, survey, { lengths: false });
    if (asked.has(survey.id)) {
      answers.push(...answersOf(estimator, opened.inHand, species));
      problems.push(...askedOf(opened));
    }
    estimator.remember(opened.inHand);
  }
  return { answers, problems, species: words.species, dataVersion: await store.dataVersion() };
}

/** A merge that names no stratum of the book is a slip of the pen. */
function requireStrata(words: BookWords, names: readonly string[]): void {
  const known = words.strata.map((stratum) => stratum.name);
  for (const name of names) {
    if (known.includes(name)) continue;
    const nearest = nearestName(name, known) ?? '';
    throw new Failure('unknown-stratum-name', { name, nearest, known: known.slice(0, 12).join(', ') });
  }
}

function answersOf(
  estimator: DensityEstimator,
  inHand: SurveyInHand,
  species: Species | null,
): DensityAnswer[] {
  const list = species === null ? inHand.targets : [species];
  return list.flatMap((one) => estimator.answers(inHand, one));
}
