/** What a table of own values can hold that no value can be. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsValues = {
  'pair-impossible':
    'by this pair one animal of {lengthMm} mm weighs {weightG} g, and a live body of that length weighs between {lightestG} and {heaviestG} g; are length_unit and weight_unit those of the source?',
} as const satisfies Partial<Record<ProblemCode, string>>;
