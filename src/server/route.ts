/** One route as a value: what comes in by schema, what goes out by schema, and the one thing it does. */

import type * as z from 'zod';
import type { ScreenLanguage } from '../report/catalogue/server-words.ts';
import type { ServerDependencies } from './dependencies.ts';
import type { Jobs } from './jobs.ts';
import type { ReadAnswers } from './reading.ts';
import type { SaveQueue } from './save-queue.ts';

/** What every route may use. */
export interface House extends ServerDependencies {
  readonly queue: SaveQueue;
  readonly jobs: Jobs;
  readonly read: ReadAnswers;
}

export interface Input<Params, Query, Body> {
  readonly params: Params;
  readonly query: Query;
  readonly body: Body;
  /** The body as it came, where it is no JSON. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly language: ScreenLanguage;
  /** Tells when whoever asked has gone. */
  readonly signal: AbortSignal;
}

type Schema = z.ZodObject;

export interface Route {
  readonly method: 'get' | 'post' | 'put' | 'delete';
  /** As OpenAPI writes it: `/api/surveys/{surveyId}`. */
  readonly path: string;
  readonly summary: string;
  readonly params: Schema | null;
  readonly query: Schema | null;
  readonly body: z.ZodType | null;
  /** Kinds of body that are taken as bytes; null where the body is JSON or nothing. */
  readonly bytes: { readonly accepts: readonly string[]; readonly limitMb: number } | null;
  /** Status of a good answer. */
  readonly status: 200 | 202;
  /** Null where the answer is no JSON. */
  readonly answer: z.ZodType | null;
  /** A Response goes out as it is; anything else as JSON. */
  readonly handle: (input: Input<never, never, never>, house: House) => Promise<unknown>;
}

type Parsed<S> = S extends z.ZodType ? z.output<S> : Record<string, never>;

/** Writes down a route; the handler sees what the schemas say. */
export function route<
  P extends Schema | undefined = undefined,
  Q extends Schema | undefined = undefined,
  B extends z.ZodType | undefined = undefined,
>(definition: {
  readonly method: Route['method'];
  readonly path: string;
  readonly summary: string;
  readonly params?: P;
  readonly query?: Q;
  readonly body?: B;
  readonly bytes?: Route['bytes'];
  readonly status?: Route['status'];
  readonly answer: z.ZodType | null;
  readonly handle: (input: Input<Parsed<P>, Parsed<Q>, Parsed<B>>, house: House) => Promise<unknown>;
}): Route {
  return {
    ...definition,
    params: definition.params ?? null,
    query: definition.query ?? null,
    body: definition.body ?? null,
    bytes: definition.bytes ?? null,
    status: definition.status ?? 200,
    handle: definition.handle as unknown as Route['handle'],
  };
}

/** A text that is JSON already, as it comes from another thread. */
export function jsonText(text: string): Response {
  return new Response(text, { headers: { 'content-type': 'application/json' } });
}
