import { isOutsideRange, unitSlip } from './length-range.ts';
import { tallyCheck } from './tally-check.ts';

/** A length the species cannot have, and no slip of the unit explains it. */
export const check = tallyCheck('length-outside-range', ({ lengths }, species) => {
  if (species.minLengthMm === null && species.maxLengthMm === null) return null;
  let outside = 0;
  let first: number | null = null;
  for (const { lengthMm, n } of lengths) {
    if (!isOutsideRange(lengthMm, species) || unitSlip(lengthMm, species) !== null) continue;
    outside += n;
    first ??= lengthMm;
  }
  if (first === null) return null;
  const parameters = {
    lengths: outside,
    more: outside > 1 ? outside - 1 : '',
    least: species.minLengthMm ?? '',
    most: species.maxLengthMm ?? '',
  };
  return { value: first, parameters };
});
