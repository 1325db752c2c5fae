/** Several names in one cell, with `;` between. A `;` inside a name is written `\;`, a backslash `\\`. */

import type { CoverPart } from './table-columns.ts';

/** The names in a list cell, trimmed, empty ones left out. */
export function readList(text: string): string[] {
  if (!text.includes('\\')) return tidy(text.split(';'));
  const items: string[] = [''];
  for (let i = 0; i < text.length; i++) {
    const letter = text[i]!;
    const next = text[i + 1];
    if (letter === '\\' && (next === ';' || next === '\\')) {
      items[items.length - 1] += next;
      i++;
    } else if (letter === ';') items.push('');
    else items[items.length - 1] += letter;
  }
  return tidy(items);
}

/** One cell for a list of names. */
export function writeList(items: readonly string[]): string {
  return items.map((item) => item.replace(/[\\;]/g, '\\$&')).join('; ');
}

/** One part of a bottom cover cell, `sand:40`; null when there is no name or no colon. */
export function splitCover(item: string): { readonly name: string; readonly percent: string } | null {
  const colon = item.lastIndexOf(':');
  const name = item.slice(0, Math.max(colon, 0)).trim();
  return name === '' ? null : { name, percent: item.slice(colon + 1).trim() };
}

export function writeCover(cover: readonly CoverPart[]): string {
  return writeList(cover.map((part) => `${part.name}:${part.percent}`));
}

function tidy(items: readonly string[]): string[] {
  return items.map((item) => item.trim()).filter((item) => item !== '');
}
