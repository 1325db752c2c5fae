/** How many species, compared at equal effort: between surveys, or between the parts of each survey. */

import { compareRichness, type RichnessComparison } from '../estimates/richness/compare-richness.ts';
import { type RichnessSettings, richnessScopes } from '../estimates/richness/richness-scopes.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import { readBookWords, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface RichnessRequest {
  /** Null for every survey of the book. */
  readonly survey: string | null;
  readonly settings: RichnessSettings;
}

export interface RichnessAnswer extends RichnessComparison {
  /** The survey whose parts are compared, or all surveys that are. */
  readonly surveys: readonly string[];
  readonly by: RichnessSettings['by'];
  /** Names of the species that count: looked for on every belt of every scope. */
  readonly species: readonly string[];
}

export interface RichnessResult {
  readonly answers: readonly RichnessAnswer[];
  readonly dataVersion: string;
}

export async function compareSpeciesNumbers(store: Store, request: RichnessRequest): Promise<RichnessResult> {
  const words = await readBookWords(store);
  const surveys: SurveyInHand[] = [];
  for (const survey of surveysAsked(words, request.survey)) {
    surveys.push((await takeInHand(store, words, survey, { lengths: false })).inHand);
  }
  const together = request.settings.by === 'survey' ? [surveys] : surveys.map((one) => [one]);
  const answers = together.map((those) => answerOf(those, request.settings));
  return { answers, dataVersion: await store.dataVersion() };
}

function answerOf(surveys: readonly SurveyInHand[], settings: RichnessSettings): RichnessAnswer {
  const found = richnessScopes(surveys, settings);
  const about = {
    surveys: surveys.map(({ survey }) => survey.name),
    by: settings.by,
    species: found.species.map(({ name }) => name),
  };
  if (found.reason !== null) {
    const nothing = { commonStations: 0, commonAnimals: 0, rows: [], asWideByChance: null };
    return { ...about, ...nothing, reason: found.reason, cautions: found.cautions };
  }
  const compared = compareRichness(found.scopes, settings.acceptance !== null);
  return { ...about, ...compared, cautions: [...found.cautions, ...compared.cautions] };
}
