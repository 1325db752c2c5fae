/** The questions that nobody has answered yet, the gravest first. */

import { reportWords } from '../catalogue/report-words.ts';
import { type Language, sentence } from '../catalogue/sentence.ts';
import { heading, list, paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { ReportSurvey } from '../report-input.ts';

export function questionsSection(survey: ReportSurvey, language: Language): string {
  const words = reportWords(language);
  if (survey.problems.length === 0)
    return section('questions', words.questions, [paragraph(words.noQuestions)]);
  const blocks = (['stop', 'explain', 'note'] as const).flatMap((severity) => {
    const here = survey.problems.filter((problem) => problem.severity === severity);
    if (here.length === 0) return [];
    const title = `${words.severities[severity]} (${formatCount(here.length)})`;
    return [heading(3, title), list(here.map((problem) => upperFirst(sentence(language, problem))))];
  });
  return section('questions', words.questions, blocks);
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
