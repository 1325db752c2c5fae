/**
 * The words of the screens in the language that was chosen. Read inside a template or $derived it follows the choice.
 * Only the language in use is loaded; the service worker keeps the other for when the server is gone.
 */

import type { ScreenLanguage } from '../state/settings.svelte.ts';
import type { Words } from './en.ts';

const catalogues: Readonly<Record<ScreenLanguage, () => Promise<Words>>> = {
  en: async () => (await import('./en.ts')).en,
  fr: async () => (await import('./fr.ts')).fr,
};

let inUse: Words | null = $state.raw(null);
let wanted: ScreenLanguage | null = null;

/** To be awaited before anything is shown; then again whenever another language is chosen. */
export async function loadWords(language: ScreenLanguage): Promise<void> {
  wanted = language;
  try {
    const found = await catalogues[language]();
    // Somebody may have chosen again meanwhile.
    if (wanted === language) inUse = found;
  } catch (cause) {
    // The words cannot be had now: those that are there stay. Without any there is nothing to show.
    if (inUse === null) throw cause;
  }
}

export function words(): Words {
  if (inUse === null) throw new Error('words requires loadWords to have ended');
  return inUse;
}
