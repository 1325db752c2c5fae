/**
 * The letter first, what it means after it: the browser draws what was typed at once, and reading, checking and
 * keeping follow when that frame is out. Whatever leaves the cell asks for it before.
 */

import { flushSync } from 'svelte';

let pending: (() => void) | null = null;

/** The latest reading of a cell replaces one that has not begun. */
export function afterLetter(read: () => void): void {
  const isAsked = pending !== null;
  pending = read;
  if (!isAsked) requestAnimationFrame(() => setTimeout(readNow, 0));
}

/** To be called before anything looks at the cells. */
export function readNow(): void {
  const read = pending;
  pending = null;
  if (read === null) return;
  read();
  // What follows in this very key must see the cells as they are now.
  flushSync();
}

/** Letters go on; every other key moves, saves or takes back. */
export function readBeforeMove(event: KeyboardEvent): void {
  if (event.key.length > 1 || event.ctrlKey || event.metaKey) readNow();
}
