/** The built screens: a file for an address, else the start page, else a sentence that says how to build them. */

import type { ServerDependencies } from './dependencies.ts';
import { Refusal } from './refusal.ts';

export async function screenResponse(
  address: string,
  { screenFile }: Pick<ServerDependencies, 'screenFile'>,
): Promise<Response> {
  const path = address === '/' ? '/index.html' : address;
  const file = await screenFile(path);
  if (file !== null) return new Response(file.bytes, { headers: headersOf(path, file.type) });
  // A file that is not there must not be answered with a page; the address of a room is plain words between slashes.
  if (!/^(\/[\w-]+)*\/?$/.test(address)) throw new Refusal('no-such-address');
  const start = await screenFile('/index.html');
  if (start === null) throw new Refusal('screens-not-built');
  return new Response(start.bytes, { headers: headersOf('/index.html', start.type) });
}

function headersOf(path: string, type: string): Record<string, string> {
  const headers: Record<string, string> = { 'content-type': type, 'cache-control': 'no-cache' };
  // The name holds a digest of the content: another content has another name.
  if (/^\/assets\/.*-[\w-]{8,}\.\w+$/.test(path))
    headers['cache-control'] = 'public, max-age=31536000, immutable';
  if (isServiceWorker(path)) headers['service-worker-allowed'] = '/';
  return headers;
}

function isServiceWorker(path: string): boolean {
  return /^\/(sw|service-worker)\.js$/.test(path);
}
