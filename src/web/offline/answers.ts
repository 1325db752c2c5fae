/** Answers to questions that wait for the book, each with the identity of its request: sent again, it is written once. */

import type { GiveAnswerRequest, GivenAnswer } from '../../tasks/sheets/answer-schemas.ts';
import { database, writeTo } from './database.ts';

export interface WaitingAnswer {
  readonly requestId: string;
  readonly surveyId: string;
  readonly request: GiveAnswerRequest;
  /** The question as it was asked, in the words of that moment. */
  readonly question: string;
  /** A sheet of this station goes first; null where the question is about none. */
  readonly stationId: string | null;
  /** ISO instant. */
  readonly givenAt: string;
  /** `refused` and `conflict` wait for a person. */
  readonly state: 'waiting' | 'conflict' | 'refused';
  /** Why it was refused, as the server said it. */
  readonly message: string | null;
  /** With a conflict: what somebody else answered meanwhile. */
  readonly theirs: GivenAnswer | null;
}

/** In the order in which they were given: identities of requests grow. */
export async function answersNow(): Promise<readonly WaitingAnswer[]> {
  return (await database()).getAll('answers');
}

/** Resolves when it is on this disk; what it replaces goes in the same step. */
export function putAnswer(answer: WaitingAnswer, instead: string | null = null): Promise<void> {
  return writeTo('answers', (store) =>
    Promise.all([store.put(answer), instead === null ? null : store.delete(instead)]),
  );
}

export function dropAnswer(requestId: string): Promise<void> {
  return writeTo('answers', (store) => store.delete(requestId));
}
