/** Sizes of every target species of the surveys asked for. */

import type { SizesAnswer } from '../estimates/answers.ts';
import { estimateSizes as sizesOfSpecies } from '../estimates/sizes/estimate-sizes.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface SizesRequest {
  readonly survey: string | null;
  readonly species: string | null;
  readonly by: SizesAnswer['scope']['by'];
  /** Null takes the limit of the book. */
  readonly limitMm: number | null;
  readonly classMm: number;
  readonly confidence: number;
}

export interface SizesResult {
  readonly answers: readonly SizesAnswer[];
  /** Every species of the book, for the names people use. */
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function estimateSizes(store: Store, request: SizesRequest): Promise<SizesResult> {
  const words = await readBookWords(store);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  const limits = new Map(words.limits.map((limit) => [limit.speciesId, limit.minimumMm]));
  const answers: SizesAnswer[] = [];
  for (const survey of surveysAsked(words, request.survey)) {
    const { inHand } = await takeInHand(store, words, survey, { lengths: true });
    for (const one of species === null ? inHand.targets : [species]) {
      const limitMm = request.limitMm ?? limits.get(one.id) ?? null;
      answers.push(...sizesOfSpecies(inHand, one, { ...request, limitMm }));
    }
  }
  return { answers, species: words.species, dataVersion: await store.dataVersion() };
}
