/** Puts a route into the app: its schemas before it, its answer after it. */

import { createRoute, type OpenAPIHono } from '@hono/zod-openapi';
import * as z from 'zod';
import { errorSchema } from '../tasks/sheets/answer-schemas.ts';
import { fieldFaults, type SchemaIssue } from './field-faults.ts';
import { bytesInMb, checkContentType, readBody } from './guards.ts';
import { languageOf } from './language.ts';
import { InvalidRequest } from './refusal.ts';
import type { House, Route } from './route.ts';

const jsonLimitMb = 4;

export function mount(app: OpenAPIHono, route: Route, house: House): void {
  app.openAPIRegistry.registerPath(inDocument(route));
  app.openapi({ ...openApiOf(route), hide: true }, async (context) => {
    const request = context.req.raw;
    const { body, bytes } = await bodyOf(route, request);
    const input = {
      params: context.req.valid('param' as never) ?? {},
      query: context.req.valid('query' as never) ?? {},
      body,
      bytes,
      language: languageOf(request),
      signal: request.signal,
    };
    const answer = await route.handle(input as never, house);
    if (answer instanceof Response) return answer;
    return context.json(answer as object, route.status);
  });
}

const noBytes = new Uint8Array(0);

/** The body is read here and not by the library, so that its size is known before it is believed. */
async function bodyOf(
  route: Route,
  request: Request,
): Promise<{ body: unknown; bytes: Uint8Array<ArrayBuffer> }> {
  if (route.bytes !== null) {
    checkContentType(request, route.bytes.accepts);
    return { body: {}, bytes: await readBody(request, route.bytes.limitMb * bytesInMb) };
  }
  if (route.body === null) return { body: {}, bytes: noBytes };
  checkContentType(request, ['application/json']);
  const sent = parseJson(await readBody(request, jsonLimitMb * bytesInMb));
  const parsed = route.body.safeParse(sent);
  if (!parsed.success) throw invalidRequest(parsed.error.issues, sent);
  return { body: parsed.data, bytes: noBytes };
}

function parseJson(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    const fault = { path: ['body'], said: 'not-json', right: null, given: null, parameters: {} } as const;
    throw new InvalidRequest([fault]);
  }
}

export function invalidRequest(issues: readonly unknown[], sent: unknown): InvalidRequest {
  return new InvalidRequest(fieldFaults(issues as readonly SchemaIssue[], sent));
}

/** For the document the body stands in it; for the library it does not, because it is read above. */
function inDocument(route: Route) {
  const described = openApiOf(route);
  const schema = route.body ?? z.string().meta({ format: 'binary' });
  const kinds = route.body === null ? (route.bytes?.accepts ?? []) : ['application/json'];
  if (kinds.length === 0) return described;
  const content = Object.fromEntries(kinds.map((kind) => [kind, { schema }]));
  return {
    ...described,
    request: { ...described.request, body: { required: true, content } },
  } as typeof described;
}

function openApiOf(route: Route) {
  const json = (schema: Route['answer']) => ({ 'application/json': { schema } });
  const error = { description: 'refused', content: json(errorSchema) };
  const good =
    route.answer === null
      ? { description: 'the file or page' }
      : { description: 'done', content: json(route.answer) };
  return createRoute({
    method: route.method,
    path: route.path,
    summary: route.summary,
    request: {
      ...(route.params === null ? {} : { params: route.params }),
      ...(route.query === null ? {} : { query: route.query }),
    },
    responses: { [route.status]: good, default: error },
  } as unknown as Parameters<typeof createRoute>[0]);
}
