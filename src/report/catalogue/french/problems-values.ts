/** Ce qu’un tableau de valeurs propres peut contenir et qu’aucune valeur ne peut être. */

import type { problemsValues } from '../problems-values.ts';

export const problemsValuesFr = {
  'pair-impossible':
    'par cette paire, un animal de {lengthMm} mm pèse {weightG} g, et un corps vivant de cette longueur pèse entre {lightestG} et {heaviestG} g ; length_unit et weight_unit sont-elles celles de la source ?',
} as const satisfies Record<keyof typeof problemsValues, string>;
