/** The server as the screens see it: every answer is checked against the schema that the server itself uses. */

import type * as z from 'zod';
import { words } from '../words/words.svelte.ts';
import { settings } from './settings.svelte.ts';

export interface Refused {
  readonly state: 'refused';
  readonly status: number;
  readonly code: string;
  /** For people, in their language. */
  readonly message: string;
  /** The whole answer, as with a conflict. */
  readonly body: unknown;
}

export type Answer<Value> =
  | { readonly state: 'ok'; readonly value: Value }
  | Refused
  /** No server: nothing is known about what it did. */
  | { readonly state: 'unreachable' };

/** A disk that is full or a book that is locked passes; what is waiting goes on waiting. */
export function isPassing(answer: Answer<unknown>): boolean {
  return answer.state === 'refused' && answer.status >= 500;
}

export interface Asking {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'DELETE';
  /** Sent as JSON, or as it is when it is bytes. */
  readonly body?: unknown;
  readonly signal?: AbortSignal;
  /** For bytes; `application/octet-stream` unless said. */
  readonly type?: string;
}

/** Never throws for what a network or a server does; the caller looks at `state`. */
export async function ask<Value>(
  path: string,
  schema: z.ZodType<Value>,
  asking: Asking = {},
): Promise<Answer<Value>> {
  const response = await send(path, asking);
  if (response === null) return { state: 'unreachable' };
  const body: unknown = await response.json().catch(() => null);
  if (!response.ok) return refusedAs(response, body);
  const read = schema.safeParse(body);
  if (read.success) return { state: 'ok', value: read.data };
  const message = words().frame.unreadable;
  return { state: 'refused', status: response.status, code: 'unreadable', message, body };
}

async function send(path: string, { method = 'GET', body, signal, type }: Asking): Promise<Response | null> {
  const isBytes = body instanceof Blob || body instanceof Uint8Array;
  const headers: Record<string, string> = { 'accept-language': settings.language };
  if (body !== undefined)
    headers['content-type'] = isBytes ? (type ?? 'application/octet-stream') : 'application/json';
  const request: RequestInit = { method, headers, signal: signal ?? null };
  if (body !== undefined) request.body = isBytes ? (body as Blob) : JSON.stringify(body);
  try {
    return await fetch(path, request);
  } catch {
    return null;
  }
}

function refusedAs(response: Response, body: unknown): Refused | { readonly state: 'unreachable' } {
  const { code, message } = (body ?? {}) as { code?: string; message?: string };
  // Without a body of ours it was something between us and the server that answered.
  if (code === undefined || message === undefined) return { state: 'unreachable' };
  return { state: 'refused', status: response.status, code, message, body };
}
