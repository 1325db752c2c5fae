/** The book as last seen: from the server while it answers, else as this browser keeps it. */

import type * as z from 'zod';
import {
  type Book,
  bookSchema,
  type StationRow,
  type SurveyRow,
  type SurveyWords,
  stationListSchema,
  surveyListSchema,
  surveyWordsSchema,
} from '../../tasks/sheets/survey-schemas.ts';
import { keep, kept } from '../offline/kept.ts';
import { type Answer, ask } from './api.ts';

let book: Book | null = $state.raw(null);
let surveys: readonly SurveyRow[] = $state.raw([]);
let reachable: boolean | null = $state(null);

export const held = {
  get book() {
    return book;
  },
  get surveys() {
    return surveys;
  },
  /** Whether the book answered when it was last asked; null before that. */
  get reachable() {
    return reachable;
  },
};

/** Asks again; to be called at the start, when the connection is back, and after a save. */
export async function readBook(): Promise<void> {
  book = (await askOrKept('/api/book', bookSchema)) ?? book;
  const list = await askOrKept('/api/surveys', surveyListSchema);
  if (list !== null) surveys = list.surveys;
}

export function readWords(surveyId: string): Promise<SurveyWords | null> {
  return askOrKept(`/api/surveys/${surveyId}/words`, surveyWordsSchema);
}

export async function readStations(surveyId: string): Promise<readonly StationRow[] | null> {
  return (await askOrKept(`/api/surveys/${surveyId}/stations`, stationListSchema))?.stations ?? null;
}

/** What the server says now, kept for when it is gone; else what was kept; null when neither is there. */
export async function askOrKept<Value>(path: string, schema: z.ZodType<Value>): Promise<Value | null> {
  const answer = await asked(path, schema);
  if (answer.state === 'ok') {
    await keep(path, answer.value);
    return answer.value;
  }
  if (answer.state === 'refused') return null;
  const read = schema.safeParse(await kept(path));
  return read.success ? read.data : null;
}

/** As `ask`, and remembers whether somebody answered. */
export async function asked<Value>(
  path: string,
  schema: z.ZodType<Value>,
  ...rest: [] | [Parameters<typeof ask>[2]]
): Promise<Answer<Value>> {
  const answer = await ask(path, schema, ...rest);
  reachable = answer.state !== 'unreachable';
  return answer;
}
