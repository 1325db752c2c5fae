/** What the checks ask about one sheet, as sentences by belt ("1 1": code and swim), or by "station". */

import type { Problem } from '../../survey/message.ts';
import { sheetQuestions } from '../../tasks/sheets/sheet-questions.ts';
import type { Sheet } from '../../tasks/sheets/sheet-schemas.ts';
import type { SurveyWords } from '../../tasks/sheets/survey-schemas.ts';

interface Asking {
  readonly words: SurveyWords;
  /** Null for an invented book: its sheets may be of any year. */
  readonly today: string | null;
  readonly say: (problem: Problem) => string;
  /** Between a name and what is asked about it: French has a space before it. */
  readonly colon: string;
}

export function questionSentences(
  sheet: Sheet,
  { words, today, say, colon }: Asking,
): ReadonlyMap<string, readonly string[]> {
  const asked = new Map<string, readonly string[]>();
  for (const problem of sheetQuestions(sheet, words, today)) {
    const { transect, swim, species } = problem.place;
    const place = transect === undefined ? 'station' : `${transect} ${swim ?? 1}`;
    const text = species === undefined ? say(problem) : `${species}${colon}${say(problem)}`;
    const before = asked.get(place) ?? [];
    if (!before.includes(text)) asked.set(place, [...before, text]);
  }
  return asked;
}
