/** What was asked: the purpose of the survey, the decision that waits, and what was looked for. */

import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import { paragraph, section } from '../html.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { sortBySpecies, speciesNames } from '../species-names.ts';

export function askedSection(input: ReportInput, survey: ReportSurvey, language: Language): string {
  const words = reportWords(language);
  const { page } = reportPhrases(language);
  const { purpose } = survey.inHand.survey;
  const nameOf = speciesNames(input.species);
  const targets = sortBySpecies(
    survey.inHand.targets.map((target) => ({ species: target.name })),
    input,
  ).map((target) => nameOf(target.species).label);
  const made = survey.targetsMade === 'listed' ? words.targetsListed : words.targetsAssumed;
  return section('asked', words.asked, [
    paragraph(purpose ?? words.noPurpose),
    ...(input.decision === null ? [] : [paragraph(page.decision(input.decision))]),
    paragraph(page.targets(made, targets.join(', ')), 'quiet'),
  ]);
}
