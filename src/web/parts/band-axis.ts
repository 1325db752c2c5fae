/**
 * The axis of densities on the screen: even from zero to about what one animal is worth, multiplying beyond, as in the
 * report (`src/report/density-axis.ts`, whose library of figures would be too heavy for a tablet).
 */

import type { DensityRow } from '../../tasks/sheets/answer-schemas.ts';

export interface BandAxis {
  /** Below this the axis runs evenly; above it each equal step multiplies. */
  readonly evenBelowPerHa: number;
  readonly highestPerHa: number;
  /** From 0 at no animals to 1 at the highest density; never outside. */
  readonly at: (densityPerHa: number) => number;
  readonly ticksPerHa: readonly number[];
}

type Drawn = Pick<DensityRow, 'densityPerHa' | 'intervalPerHa' | 'scatteredBoundPerHa' | 'searchedAreaM2'>;

/** One axis for all rows that are read together; rows without an answer do not widen it. */
export function bandAxis(rows: readonly Drawn[]): BandAxis {
  let highest = 0;
  let largestAreaM2 = 0;
  for (const { densityPerHa, intervalPerHa, scatteredBoundPerHa, searchedAreaM2 } of rows) {
    if (densityPerHa === null) continue;
    highest = Math.max(highest, densityPerHa, intervalPerHa?.[1] ?? 0, scatteredBoundPerHa ?? 0);
    largestAreaM2 = Math.max(largestAreaM2, searchedAreaM2);
  }
  const animalPerHa = largestAreaM2 > 0 ? 10_000 / largestAreaM2 : 1;
  const highestPerHa = roundUp(Math.max(highest * 1.15, animalPerHa * 10));
  const evenBelowPerHa = Math.min(powerOfTen(animalPerHa), highestPerHa);
  const whole = Math.log1p(highestPerHa / evenBelowPerHa);
  const at = (perHa: number) =>
    Math.min(1, Math.max(0, Math.log1p(Math.max(0, perHa) / evenBelowPerHa) / whole));
  return { evenBelowPerHa, highestPerHa, at, ticksPerHa: [0, ...steps(evenBelowPerHa, highestPerHa)] };
}

/** 1, 3, 10, 30, …; only 1, 10, 100, … where their numbers would run into each other. */
function steps(from: number, to: number): number[] {
  const digits = to / from > 5_000 ? [1] : [1, 3];
  const values: number[] = [];
  for (let power = Math.round(Math.log10(from)); power < 18; power++) {
    for (const digit of digits) {
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
  return power * ([1, 1.5, 2, 3, 5, 7].find((digit) => digit * power >= value) ?? 10);
}
