/** Answers that wait, sent in the order in which they were given, once no sheet of their station waits any more. */

import {
  type Answered,
  answeredSchema,
  type GiveAnswerRequest,
  type ProblemRow,
  staleAnswerSchema,
} from '../../tasks/sheets/answer-schemas.ts';
import { type Answer, isPassing } from '../state/api.ts';
import { asked } from '../state/book.svelte.ts';
import { answersNow, dropAnswer, putAnswer, type WaitingAnswer } from './answers.ts';
import { queueNow } from './queue.ts';

let answers: readonly WaitingAnswer[] = $state.raw([]);

/** What the book made of answers that this tab sent. */
const outcomes = new Map<string, Answered>();

export const waitingAnswers = {
  get all() {
    return answers;
  },
};

/** Null while the answer waits, or when another tab sent it. */
export function outcomeOf(requestId: string): Answered | null {
  return outcomes.get(requestId) ?? null;
}

export async function readAnswers(): Promise<void> {
  try {
    answers = await answersNow();
  } catch {
    answers = [];
  }
}

/** An answer as it waits, made of what a person typed about a question. */
export function waitingAnswer(
  { surveyId, problem }: { readonly surveyId: string; readonly problem: ProblemRow },
  request: GiveAnswerRequest,
): WaitingAnswer {
  const { requestId } = request;
  const { message: question, stationId } = problem;
  const givenAt = new Date().toISOString();
  const fresh = { state: 'waiting', message: null, theirs: null } as const;
  return { requestId, surveyId, request, question, stationId, givenAt, ...fresh };
}

/** Returns how many went; false when the book did not answer. Called by the one tab that sends. */
export async function sendAnswers(told: () => Promise<void>): Promise<number | false> {
  let sent = 0;
  const unsent = new Set((await queueNow()).map((one) => one.stationId));
  for (const one of await answersNow()) {
    if (one.state !== 'waiting' || (one.stationId !== null && unsent.has(one.stationId))) continue;
    const address = `/api/surveys/${one.surveyId}/answers`;
    const answer = await asked(address, answeredSchema, { method: 'POST', body: one.request });
    if (answer.state === 'unreachable' || isPassing(answer)) return false;
    if (answer.state === 'ok') {
      sent += 1;
      outcomes.set(one.requestId, answer.value);
      await dropAnswer(one.requestId);
    } else await putAnswer({ ...one, ...failed(answer) });
    await told();
  }
  return sent;
}

function failed(
  answer: Extract<Answer<unknown>, { state: 'refused' }>,
): Pick<WaitingAnswer, 'state' | 'message' | 'theirs'> {
  const stale = answer.status === 409 ? staleAnswerSchema.safeParse(answer.body) : null;
  const theirs = stale?.success ? stale.data.theirs : null;
  return { state: theirs === null ? 'refused' : 'conflict', message: answer.message, theirs };
}
