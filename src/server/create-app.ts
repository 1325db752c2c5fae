/**
 * Room `server`: HTTP in, HTTP out. A function from Request to Response, tested without a port.
 *
 * Here live the routes, what guards them, the queue of saves and the list of long work. It translates and calculates
 * nothing; it opens no file, no socket and no database: those come as arguments from `cli`.
 */

import { OpenAPIHono } from '@hono/zod-openapi';
import { HTTPException } from 'hono/http-exception';
import type { ServerDependencies } from './dependencies.ts';
import { checkHost, checkOrigin } from './guards.ts';
import { jobs } from './jobs.ts';
import { languageOf } from './language.ts';
import { invalidRequest, mount } from './mount.ts';
import { readAnswers } from './reading.ts';
import { Refusal, refusalAnswer } from './refusal.ts';
import type { House } from './route.ts';
import { routes } from './routes.ts';
import { saveQueue } from './save-queue.ts';
import { screenResponse } from './screens.ts';
import { setSecurityHeaders } from './security-headers.ts';

export interface App {
  request(request: Request): Promise<Response>;
  /** Resolves when every save that was sent is on disk or refused. */
  idle(): Promise<void>;
}

export function createApp(dependencies: ServerDependencies): App {
  const house: House = {
    ...dependencies,
    queue: saveQueue(dependencies),
    jobs: jobs(dependencies),
    read: readAnswers(dependencies),
  };
  const app = new OpenAPIHono({
    defaultHook: (result) => {
      if (!result.success) throw invalidRequest(result.error.issues, 'data' in result ? result.data : {});
    },
  });
  app.use(async (context, next) => {
    checkHost(context.req.raw, dependencies.port());
    checkOrigin(context.req.raw, dependencies.port());
    await next();
  });
  for (const one of routes) mount(app, one, house);
  app.doc31('/api/openapi.json', {
    openapi: '3.1.0',
    info: { title: 'Slateline', version: dependencies.version },
  });
  app.notFound((context) => elsewhere(context.req.raw, house));
  app.onError((error, context) => refused(asRefusal(error), context.req.raw, house));
  return {
    request: async (request) => {
      const response = await app.fetch(request);
      const answer = new Response(response.body, response);
      setSecurityHeaders(answer.headers);
      return answer;
    },
    idle: () => house.queue.idle(),
  };
}

/** No route of that method: another method's address, an unknown one, or a screen. */
async function elsewhere(request: Request, house: House): Promise<Response> {
  const { pathname } = new URL(request.url);
  const methods = routes
    .filter(({ path }) => addressPattern(path).test(pathname))
    .map(({ method }) => method);
  if (methods.length > 0) {
    const response = refused(new Refusal('wrong-method'), request, house);
    response.headers.set('allow', methods.join(', ').toUpperCase());
    return response;
  }
  const isScreen = (request.method === 'GET' || request.method === 'HEAD') && !/^\/api(\/|$)/.test(pathname);
  try {
    if (!isScreen) throw new Refusal('no-such-address');
    return await screenResponse(pathname, house);
  } catch (error) {
    return refused(error, request, house);
  }
}

function addressPattern(path: string): RegExp {
  return new RegExp(`^${path.replace(/\{\w+\}/g, '[^/]+')}$`);
}

/** People who look at an address get a sentence on a page, programs get JSON. */
function refused(error: unknown, request: Request, { log }: House): Response {
  const { status, body } = refusalAnswer(error, languageOf(request), log);
  const wantsPage = (request.headers.get('accept') ?? '').includes('text/html');
  const isPage = wantsPage && !new URL(request.url).pathname.startsWith('/api/');
  if (isPage) return new Response(`Slateline: ${body.message}\n`, { status, headers: plainText });
  return Response.json(body, { status });
}

const plainText = { 'content-type': 'text/plain; charset=utf-8' };

function asRefusal(error: unknown): unknown {
  if (!(error instanceof HTTPException) || error.status >= 500) return error;
  return new Refusal(error.status === 415 ? 'not-json' : 'request-invalid');
}

/** For the list of routes in the docs and their test. */
export const addresses = (): readonly string[] =>
  routes.map(({ method, path }) => `${method.toUpperCase()} ${path}`);
