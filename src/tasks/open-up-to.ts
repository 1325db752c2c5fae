/** One survey with its lengths, and an estimator that knows every survey before it. */

import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Survey } from '../survey/words.ts';
import { type BookWords, type SurveyOpened, surveysAsked, takeInHand } from './take-in-hand.ts';

/** The survey of that name, or the latest of the book: advice is about the stock as it was last seen. */
export function latestAsked(words: BookWords, name: string | null): Survey {
  return surveysAsked(words, name).at(-1)!;
}

/** Oldest first, as for the density, whose intervals learn from the surveys before. */
export async function openUpTo(
  store: Store,
  words: BookWords,
  survey: Survey,
  learner: { remember(survey: SurveyInHand): void },
): Promise<SurveyOpened> {
  const at = words.surveys.findIndex((one) => one.id === survey.id);
  for (const earlier of words.surveys.slice(0, at)) {
    learner.remember((await takeInHand(store, words, earlier, { lengths: false })).inHand);
  }
  return takeInHand(store, words, survey, { lengths: true });
}
