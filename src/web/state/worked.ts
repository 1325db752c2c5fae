/**
 * A number or question from the book while it answers and nothing waits; else worked out on this device from the
 * records kept and what waits; else as the book said it last. It says which.
 */

import type * as z from 'zod';
import { waitingAnswers } from '../offline/answer-sender.svelte.ts';
import { workOutHere } from '../offline/here.ts';
import type { HereBasis, HereOrder } from '../offline/here-orders.ts';
import { keep, kept } from '../offline/kept.ts';
import { waiting } from '../offline/sender.svelte.ts';
import { isPassing } from './api.ts';
import { asked, held } from './book.svelte.ts';
import { settings } from './settings.svelte.ts';

export type Basis =
  | { readonly kind: 'book' }
  | { readonly kind: 'kept' }
  | ({ readonly kind: 'here' } & HereBasis);

export interface Worked<Value> {
  readonly value: Value;
  readonly basis: Basis;
}

export interface Question<Value> {
  readonly surveyId: string;
  /** What the server is asked. */
  readonly address: string;
  readonly schema: z.ZodType<Value>;
  /** The same for this device; null where it cannot. */
  readonly order: HereOrder | null;
}

/** Called in an effect, it is asked again when the book comes or goes and when something begins or ceases to wait. */
export async function worked<Value>(question: Question<Value>): Promise<Worked<Value> | null> {
  const { address, schema, surveyId } = question;
  const waits = [...waiting.sheets, ...waitingAnswers.all].some(
    (one) => one.surveyId === surveyId && one.state === 'waiting',
  );
  if (held.reachable !== false && !waits) {
    const answer = await asked(address, schema);
    if (answer.state === 'refused' && !isPassing(answer)) return null;
    if (answer.state === 'ok') {
      await keep(address, answer.value);
      return { value: answer.value, basis: { kind: 'book' } };
    }
  }
  return (await here(question)) ?? (waits ? await bookOrKept(question) : await keptAnswer(question));
}

async function here<Value>({ surveyId, order, schema }: Question<Value>): Promise<Worked<Value> | null> {
  if (order === null) return null;
  const { language } = settings;
  const answer = await workOutHere({ surveyId, order, language, today: today() });
  const read = schema.safeParse(answer?.value);
  if (answer === null || !read.success) return null;
  return { value: read.data, basis: { kind: 'here', ...answer.basis } };
}

async function bookOrKept<Value>(question: Question<Value>): Promise<Worked<Value> | null> {
  const answer = await asked(question.address, question.schema);
  if (answer.state === 'ok') return { value: answer.value, basis: { kind: 'book' } };
  return keptAnswer(question);
}

async function keptAnswer<Value>({ address, schema }: Question<Value>): Promise<Worked<Value> | null> {
  const read = schema.safeParse(await kept(address));
  return read.success ? { value: read.data, basis: { kind: 'kept' } } : null;
}

/** The day on the wall, not of Greenwich. */
export function today(): string {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}
