/** What became of a plan, in sentences that stand in the report as well. */

import type { PlanAgainstStratum, PlanAgainstSurvey } from '../planning/draw/plan-against-survey.ts';
import type { Language } from './catalogue/language.ts';
import { reportPhrases } from './catalogue/report-phrases.ts';
import { formatCount } from './numbers.ts';

/** "24 stations were planned, 22 visited and 2 replaced by the next of the list." */
export function planAgainstSentence(
  { planned, visited, replaced, strata }: PlanAgainstSurvey,
  language: Language = 'en',
): string {
  const { effort } = reportPhrases(language);
  const picked = strata.reduce((sum, row) => sum + row.handPickedPlanned, 0);
  const pickedVisited = strata.reduce((sum, row) => sum + row.handPickedVisited, 0);
  const hand = picked === 0 ? '' : effort.handPicked(formatCount(picked), formatCount(pickedVisited));
  return `${effort.planned(formatCount(planned), formatCount(visited), formatCount(replaced))}${hand}`;
}

export function planAgainstLines(
  survey: string | null,
  against: PlanAgainstSurvey | null,
): readonly string[] {
  if (against === null) return [];
  return [
    '',
    `${survey ?? 'The survey'}: ${planAgainstSentence(against)}`,
    ...against.strata.map(
      (row) =>
        `  ${row.stratum}: ${formatCount(row.planned)} planned, ${formatCount(row.visited)} visited, ${formatCount(row.replaced)} replaced${missing(row)}`,
    ),
    ...(against.notInPlan.length === 0
      ? []
      : [`  Worked and not in the plan: ${against.notInPlan.join(', ')}.`]),
  ];
}

function missing({ notVisited }: PlanAgainstStratum): string {
  return notVisited.length === 0 ? '' : `; not visited: ${notVisited.join(', ')}`;
}
