/** The French words with French spacing: whatever a word or a sentence made of parts says, no line begins with a mark. */

import { spacedText } from '../../report/catalogue/french/typography.ts';

/** Texts, functions that make texts, and lists and records of them; anything else is left as it is. */
export function spacedWords<Of>(words: Of): Of {
  return spaced(words) as Of;
}

function spaced(word: unknown): unknown {
  if (typeof word === 'string') return spacedText(word);
  if (typeof word === 'function') return (...given: unknown[]) => spaced(word(...given));
  if (Array.isArray(word)) return word.map(spaced);
  if (typeof word !== 'object' || word === null) return word;
  return Object.fromEntries(Object.entries(word).map(([name, value]) => [name, spaced(value)]));
}
