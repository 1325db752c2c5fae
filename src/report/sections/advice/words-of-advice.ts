/** Small helps that the sections of advice share. */

import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import type { Language } from '../../catalogue/language.ts';
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

/** "1 animal", "2 583 animals"; "1 station", "28 stations". */
export function counted(
  { animals, stations }: { readonly animals: number; readonly stations: number },
  language: Language,
): { readonly animals: string; readonly stations: string } {
  const words = changePhrases(language);
  return {
    animals: words.animals(formatCount(animals), animals === 1),
    stations: words.stations(formatCount(stations), stations === 1),
  };
}

/** Animals and stations of both surveys; those of the later one as bare numbers. */
export function twoCounted(
  { animals, stations }: Pick<ChangeAnswer, 'animals' | 'stations'>,
  language: Language,
) {
  return {
    ...counted({ animals: animals.from, stations: stations.from }, language),
    animalsLater: formatCount(animals.to),
    stationsLater: formatCount(stations.to),
  };
}
