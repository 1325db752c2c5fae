/** What every short line of the first page is made of. */

import { changePhrases } from '../../catalogue/change-phrases.ts';
import type { Language } from '../../catalogue/sentence.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { capital, ended } from './words-of-advice.ts';

export interface BriefInput {
  readonly input: ReportInput;
  readonly advice: ReportAdvice;
  readonly language: Language;
}

/** Parts of a line as one sentence. */
export function line(parts: readonly string[], language: Language): string {
  return ended(capital(parts.join(changePhrases(language).semicolon)));
}
