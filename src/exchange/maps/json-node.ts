/** Looks into JSON of unknown shape without believing anything about it. */

export function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

export function member(node: unknown, key: string): unknown {
  const isThere = typeof node === 'object' && node !== null && Object.hasOwn(node, key);
  return isThere ? (node as Record<string, unknown>)[key] : undefined;
}

export function listOf(node: unknown): readonly unknown[] {
  return Array.isArray(node) ? node : [];
}
