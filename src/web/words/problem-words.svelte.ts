/** The sentences of problems in the language that was chosen: they come after the first sheet is on the screen. */

import { type ProblemCatalogue, problemSentence } from '../../report/catalogue/problem-sentence.ts';
import type { Problem } from '../../survey/message.ts';
import type { ScreenLanguage } from '../state/settings.svelte.ts';

const catalogues: Readonly<Record<ScreenLanguage, () => Promise<ProblemCatalogue>>> = {
  en: async () => (await import('../../report/catalogue/english-problems.ts')).englishProblems,
  fr: async () => (await import('../../report/catalogue/french/problems.ts')).frenchProblems,
};

let inUse: ProblemCatalogue | null = $state.raw(null);
let wanted: ScreenLanguage | null = null;

/** To be asked for by whoever shows problems, and again when another language is chosen. */
export async function loadProblemWords(language: ScreenLanguage): Promise<void> {
  wanted = language;
  const found = await catalogues[language]().catch(() => null);
  // Where they cannot be had now the sheet is typed all the same, and the evening's round asks.
  if (found !== null && wanted === language) inUse = found;
}

/** Null until the sentences are there. */
export function problemWords(): ((problem: Problem) => string) | null {
  const catalogue = inUse;
  return catalogue === null ? null : (problem) => problemSentence(catalogue, problem);
}
