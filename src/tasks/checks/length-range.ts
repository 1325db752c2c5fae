import type { Species } from '../../survey/words.ts';

/** Whether a length lies outside what the species can be; unknown ends never refuse. */
export function isOutsideRange(lengthMm: number, { minLengthMm, maxLengthMm }: Species): boolean {
  return (minLengthMm !== null && lengthMm < minLengthMm) || (maxLengthMm !== null && lengthMm > maxLengthMm);
}

/** The length that was meant when one was written in the wrong unit; null when it fits, or fits neither way. */
export function unitSlip(
  lengthMm: number,
  species: Species,
): { readonly meantMm: number; readonly unit: 'cm' | 'tenths of mm' } | null {
  if (!isOutsideRange(lengthMm, species)) return null;
  const isTooShort = species.minLengthMm !== null && lengthMm < species.minLengthMm;
  const meantMm = isTooShort ? 10 * lengthMm : lengthMm / 10;
  // A range known at one end only would take any number for a slip.
  if (species.minLengthMm === null || species.maxLengthMm === null) return null;
  if (isOutsideRange(meantMm, species)) return null;
  return { meantMm, unit: isTooShort ? 'cm' : 'tenths of mm' };
}
