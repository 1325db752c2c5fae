import type { SheetStore } from '../../survey/acts.ts';

/** What the work on sheets needs from outside. */
export interface SheetTools {
  readonly store: SheetStore;
  /** A digest of a text, the same on every machine. */
  readonly digest: (text: string) => string;
  /** ISO instant in UTC. */
  readonly at: string;
  /** Of the server. */
  readonly device: string;
}

/** The same object always gives the same text, whatever the order of its keys. */
export function plainText(value: unknown): string {
  return JSON.stringify(value, (_, part) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
