/** The words of the screens in the language that was chosen. Read inside a template or $derived it follows the choice. */

import { settings } from '../state/settings.svelte.ts';
import { en, type Words } from './en.ts';
import { fr } from './fr.ts';

const catalogues: Readonly<Record<string, Words>> = { en, fr };

export function words(): Words {
  return catalogues[settings.language]!;
}
