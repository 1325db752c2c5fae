/** The same species from survey to survey, where the report gives no advice; nothing where there is only one survey. */

import { reportWords } from '../catalogue/report-words.ts';
import { paragraph, section } from '../html.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput } from '../report-input.ts';
import { overTime } from './over-time.ts';

export function surveysSection(input: ReportInput, drawing: Drawing): string {
  const words = reportWords(drawing.language);
  const figures = input.surveys.length < 2 ? [] : overTime(input, drawing);
  if (figures.length === 0) return '';
  return section('surveys', words.surveys, [paragraph(words.surveysCaution), ...figures]);
}
