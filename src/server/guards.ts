/** What every request has to pass before a route sees it. */

import { Refusal } from './refusal.ts';

/**
 * Only our own names with our own port. A page elsewhere can point its name at 127.0.0.1 (DNS rebinding), but
 * cannot make the browser send another Host than that name.
 */
export function checkHost(request: Request, port: number): void {
  const host = request.headers.get('host') ?? new URL(request.url).host;
  if (ownHosts(port).includes(host.toLowerCase())) return;
  throw new Refusal('wrong-host');
}

/** A request that another page makes is refused: browsers say where a request comes from, and pages cannot forge it. */
export function checkOrigin(request: Request, port: number): void {
  const site = request.headers.get('sec-fetch-site');
  if (isReading(request)) {
    // Another page could not read the answer, but could keep us busy with asking; following a link is a person's right.
    const isElsewhere = site === 'cross-site' || site === 'same-site';
    if (isElsewhere && request.headers.get('sec-fetch-mode') !== 'navigate')
      throw new Refusal('foreign-origin');
    return;
  }
  if (site !== null && site !== 'same-origin') throw new Refusal('foreign-origin');
  const origin = request.headers.get('origin');
  if (origin === null || ownHosts(port).some((host) => origin.toLowerCase() === `http://${host}`)) return;
  throw new Refusal('foreign-origin');
}

/** Kinds of body that a form on another page cannot send without asking first. */
export function checkContentType(request: Request, accepted: readonly string[]): void {
  const type = (request.headers.get('content-type') ?? '').split(';')[0]!.trim().toLowerCase();
  const fits = accepted.some((one) =>
    one.endsWith('/*') ? type.startsWith(one.slice(0, -1)) : type === one,
  );
  if (fits) return;
  if (accepted.includes('application/json')) throw new Refusal('not-json');
  throw new Refusal(accepted.includes('image/*') ? 'not-a-picture' : 'not-a-file');
}

/** The whole body, never more than the limit in memory. */
export async function readBody(request: Request, limitBytes: number): Promise<Uint8Array<ArrayBuffer>> {
  const tooLarge = new Refusal('too-large', { limit: limitBytes / bytesInMb });
  if (Number(request.headers.get('content-length') ?? 0) > limitBytes) throw tooLarge;
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of request.body ?? []) {
    length += part.length;
    if (length > limitBytes) throw tooLarge;
    parts.push(part);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

export const bytesInMb = 1024 * 1024;

function isReading({ method }: Request): boolean {
  return method === 'GET' || method === 'HEAD';
}

function ownHosts(port: number): readonly string[] {
  return ['localhost', '127.0.0.1', '[::1]'].map((name) => (port === 80 ? name : `${name}:${port}`));
}
