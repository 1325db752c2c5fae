/** Identities made by the screen, so that a sheet typed offline is whole: UUIDv7 (RFC 9562, 5.7), each greater than the last. */

let lastMs = 0;
let inMs = 0;

export function newId(): string {
  const now = Date.now();
  inMs = now > lastMs ? 0 : inMs + 1;
  lastMs = Math.max(now, lastMs);
  if (inMs > 0xfff) {
    lastMs += 1;
    inMs = 0;
  }
  const random = crypto.getRandomValues(new Uint8Array(8));
  random[0] = (random[0]! & 0x3f) | 0x80;
  const time = lastMs.toString(16).padStart(12, '0');
  const rest = [...random].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const order = inMs.toString(16).padStart(3, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${order}-${rest.slice(0, 4)}-${rest.slice(4)}`;
}
