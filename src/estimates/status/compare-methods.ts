import type { Reason } from '../../survey/message.ts';
import type { ValueOf } from '../../survey/value-words.ts';
import type { MethodUsed } from './count-method.ts';

export interface MethodVerdict {
  /** Why the two cannot be compared; null when they can. */
  readonly held: Reason | null;
  /** What has to be said beside a comparison that stands. */
  readonly limitations: readonly Reason[];
}

/**
 * Whether a density may be set against a published one: only where both were counted in the same way.
 *
 * A towed observer, a timed search, a night search or a deep dive finds other animals over other ground, and the ratio
 * of the two is not known; such a value is held. Another belt width alone is a limitation: a wide belt hides small
 * animals at its edge, but both are animals on an area.
 */
export function compareMethods(used: MethodUsed, reference: ValueOf<'reference-density'>): MethodVerdict {
  if (used.methods.length > 1) {
    return {
      held: { code: 'survey-methods-mixed', parameters: { methods: used.methods.join(', ') } },
      limitations: [],
    };
  }
  const method = used.methods[0] ?? 'not stated';
  if (reference.method === 'not stated') {
    return { held: { code: 'reference-method-unknown', parameters: {} }, limitations: [] };
  }
  if (reference.method !== method) {
    const parameters = { reference: reference.method, survey: method };
    return { held: { code: 'reference-other-method', parameters }, limitations: [] };
  }
  return { held: null, limitations: widthLimitations(used, reference.beltWidthM) };
}

function widthLimitations({ beltWidthsM }: MethodUsed, referenceM: number | null): readonly Reason[] {
  if (referenceM === null || beltWidthsM.length === 0 || beltWidthsM.every((width) => width === referenceM))
    return [];
  return [{ code: 'reference-other-width', parameters: { referenceM, surveyM: beltWidthsM.join(' and ') } }];
}
