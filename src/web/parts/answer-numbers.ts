/** Numbers as the reader's language writes them. */

import { formatCount, formatShort, formatSignificant } from '../../report/numbers.ts';
import type { ScreenLanguage } from '../state/settings.svelte.ts';

export interface Numbers {
  /** Three significant digits; two for the ends of intervals. */
  readonly about: (value: number, digits?: 2 | 3) => string;
  readonly count: (value: number) => string;
  readonly short: (value: number) => string;
}

export function numbersIn(language: ScreenLanguage): Numbers {
  const local = (text: string) => (language === 'fr' ? text.replace('.', ',') : text);
  return {
    about: (value, digits = 3) => local(formatSignificant(value, digits)),
    count: formatCount,
    short: (value) => local(formatShort(value)),
  };
}
