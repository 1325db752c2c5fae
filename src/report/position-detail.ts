/**
 * How exactly positions are told. Exact positions of valuable animals invite poaching, so what leaves
 * the office is rounded unless somebody chose otherwise.
 */

import type { Language } from './catalogue/language.ts';
import { reportPhrases } from './catalogue/report-phrases.ts';

export const positionDetails = ['exact', 'rounded', 'none'] as const;
export type PositionDetail = (typeof positionDetails)[number];

/** Rounded positions are to a hundredth of a degree: about 1.1 km north to south. */
const roundedDegrees = 0.01;

/** A latitude or longitude at the detail asked for; null where it is to be kept back. */
export function positionAtDetail(degrees: number, detail: PositionDetail): number | null {
  if (detail === 'none') return null;
  return detail === 'exact' ? degrees : Math.round(degrees / roundedDegrees) * roundedDegrees;
}

/** The sentence under a map. */
export function positionDetailInWords(detail: PositionDetail, language: Language = 'en'): string {
  return reportPhrases(language).where.positions[detail];
}
