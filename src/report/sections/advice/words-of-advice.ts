/** Small helps that the sections of advice share. */

import { escapeText } from '../../escape.ts';
import { formatCount } from '../../numbers.ts';

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** One full stop at the end. */
export function ended(text: string): string {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}

export function names(all: readonly string[], none: string): string {
  return all.length === 0 ? none : all.join(', ');
}

/** Opens without a script; printed open or closed as the reader left it. */
export function details(summary: string, lines: readonly string[]): string {
  const items = lines.map((text) => `<li>${escapeText(text.trim())}</li>`).join('');
  return `<details><summary>${escapeText(summary)}</summary><ul>${items}</ul></details>`;
}

/** "1 animal", "2 583 animals". */
export function counted(count: number, one: string): string {
  return `${formatCount(count)} ${one}${count === 1 ? '' : 's'}`;
}
