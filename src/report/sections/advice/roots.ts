/** Where does this number come from? Opens with the reader's own hand, without a script. */

import { adviceWords } from '../../catalogue/advice-words.ts';
import type { Language } from '../../catalogue/sentence.ts';
import { explainSteps } from '../../explain-steps.ts';
import { paragraph, section } from '../../html.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { speciesNames } from '../../species-names.ts';
import { details } from './words-of-advice.ts';

export function rootsSection(input: ReportInput, { explanations }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const open = explanations.filter(({ value }) => value !== null);
  return section('roots', words.roots, [
    paragraph(open.length === 0 ? words.noRoots : words.rootsAnswer),
    ...open.map((one) => details(words.of(nameOf(one.species).label), explainSteps(one, language))),
  ]);
}
