/**
 * The axis of densities: one that shows 5 and 5000 animals per hectare in one picture, and zero too.
 *
 * A logarithmic axis has no zero, and a survey that found nothing must be drawn; a linear axis presses
 * everything rare into one line. This one (Plot's "symlog") runs evenly from zero to about what one animal
 * is worth and multiplies beyond it. The words under the figure say so.
 */

import * as Plot from '@observablehq/plot';

export interface DensityAxis {
  /** Below this the axis runs evenly; above it each equal step multiplies. */
  readonly evenBelowPerHa: number;
  readonly highestPerHa: number;
  /** From 0 at no animals to 1 at the highest density. */
  readonly at: (densityPerHa: number) => number;
  readonly ticksPerHa: readonly number[];
}

/** An axis from zero to the highest density shown. `animalPerHa` is what one animal seen is worth. */
export function densityAxis(range: {
  readonly highestPerHa: number;
  readonly animalPerHa: number;
}): DensityAxis {
  const highestPerHa = roundUp(Math.max(range.highestPerHa, 1e-6));
  const evenBelowPerHa = Math.min(powerOfTen(range.animalPerHa), highestPerHa);
  const { apply } = Plot.scale({ x: { ...densityScale({ evenBelowPerHa, highestPerHa }), range: [0, 1] } });
  return { evenBelowPerHa, highestPerHa, at: apply, ticksPerHa: [0, ...steps(evenBelowPerHa, highestPerHa)] };
}

/** The same axis as a scale of Plot. */
export function densityScale(axis: Pick<DensityAxis, 'evenBelowPerHa' | 'highestPerHa'>): Plot.ScaleOptions {
  return { type: 'symlog', constant: axis.evenBelowPerHa, domain: [0, axis.highestPerHa], clamp: true };
}

/** 1, 3, 10, 30, ... ; only 1, 10, 100, ... where their numbers would run into each other on a phone. */
function steps(from: number, to: number): number[] {
  const values: number[] = [];
  const wide = to / from > 5_000;
  for (let power = Math.round(Math.log10(from)); power < 18; power++) {
    for (const digit of wide ? [1] : [1, 3]) {
      const value = Number(`${digit}e${power}`);
      if (value > to * 1.0001) return values;
      values.push(value);
    }
  }
  return values;
}

function powerOfTen(value: number): number {
  return Number(`1e${Math.round(Math.log10(Math.max(value, 1e-6)))}`);
}

function roundUp(value: number): number {
  const power = Number(`1e${Math.floor(Math.log10(value))}`);
  for (const digit of [1, 1.5, 2, 3, 5, 7, 10]) if (digit * power >= value) return digit * power;
  return 10 * power;
}
