/** What browsers are told to refuse on our behalf. */

/** The screens: our own files only, nothing inline. Pictures also from memory, for photos not yet sent. */
const screenPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** The report is one file: its style and fonts are inside, and it has no script. */
export const reportPolicy = [
  "default-src 'none'",
  "style-src 'unsafe-inline'",
  'img-src data:',
  'font-src data:',
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** A photo opened by itself is a picture and nothing else. */
export const photoPolicy = "default-src 'none'; sandbox; frame-ancestors 'none'";

export function setSecurityHeaders(headers: Headers): void {
  if (!headers.has('content-security-policy')) headers.set('content-security-policy', screenPolicy);
  headers.set('x-content-type-options', 'nosniff');
  headers.set('referrer-policy', 'no-referrer');
  headers.set('cross-origin-opener-policy', 'same-origin');
  headers.set('cross-origin-resource-policy', 'same-origin');
  headers.set('x-frame-options', 'DENY');
  if (!headers.has('cache-control')) headers.set('cache-control', 'no-store');
}
