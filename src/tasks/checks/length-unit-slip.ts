import { unitSlip } from './length-range.ts';
import { tallyCheck } from './tally-check.ts';

/** A length outside what the species can be that fits when moved by one unit: 18 for 18 cm. */
export const check = tallyCheck('length-unit-slip', ({ lengths }, species) => {
  const { minLengthMm: least, maxLengthMm: most } = species;
  if (least === null && most === null) return null;
  let lengthsSlipped = 0;
  let first: { readonly lengthMm: number; readonly meantMm: number; readonly unit: string } | null = null;
  for (const { lengthMm, n } of lengths) {
    const slip = unitSlip(lengthMm, species);
    if (slip === null) continue;
    lengthsSlipped += n;
    first ??= { lengthMm, ...slip };
  }
  if (first === null) return null;
  return {
    value: first.lengthMm,
    parameters: {
      lengths: lengthsSlipped,
      more: lengthsSlipped > 1 ? lengthsSlipped - 1 : '',
      unit: first.unit,
      least: least ?? '',
      most: most ?? '',
    },
    suggestion: `${Number(first.meantMm.toPrecision(6))} mm`,
  };
});
