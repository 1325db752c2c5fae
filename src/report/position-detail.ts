/**
 * How exactly positions are told. Exact positions of valuable animals invite poaching, so what leaves
 * the office is rounded unless somebody chose otherwise.
 */

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
export function positionDetailInWords(detail: PositionDetail): string {
  if (detail === 'exact') return 'Positions are exact: keep this sheet in the office.';
  if (detail === 'rounded')
    return 'Positions are rounded to a hundredth of a degree (about 1 km), so that this page leads nobody to the animals.';
  return 'Positions are kept back in this document.';
}
