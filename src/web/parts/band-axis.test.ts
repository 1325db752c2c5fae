import { expect, test } from 'vitest';
import { densityAxis } from '../../report/density-axis.ts';
import { bandAxis } from './band-axis.ts';

const row = (densityPerHa: number | null, upper: number, searchedAreaM2: number) => ({
  densityPerHa,
  intervalPerHa: [0, upper] as [number, number],
  scatteredBoundPerHa: null,
  searchedAreaM2,
});

test('the axis of the screen is the axis of the report', () => {
  // Authority: a second algorithm, the symlog scale of the report's figure library.
  for (const [upper, areaM2] of [
    [5, 9000],
    [480, 3360],
    [31_000, 3000],
    [9, 120],
  ] as const) {
    const screen = bandAxis([row(upper / 3, upper, areaM2)]);
    const animalPerHa = 10_000 / areaM2;
    const report = densityAxis({ highestPerHa: Math.max(upper * 1.15, animalPerHa * 10), animalPerHa });
    expect(screen.highestPerHa).toBe(report.highestPerHa);
    expect(screen.evenBelowPerHa).toBe(report.evenBelowPerHa);
    expect(screen.ticksPerHa).toEqual(report.ticksPerHa);
    for (const share of [0, 0.001, 0.1, 0.5, 1]) {
      const perHa = share * screen.highestPerHa;
      expect(screen.at(perHa)).toBeCloseTo(report.at(perHa), 9);
    }
  }
});

test('a row without an answer does not widen the axis', () => {
  const known = row(20, 60, 3000);
  expect(bandAxis([known, row(null, 90_000, 9000)]).highestPerHa).toBe(bandAxis([known]).highestPerHa);
});

test('no rows at all still have an axis from zero', () => {
  expect(bandAxis([]).ticksPerHa[0]).toBe(0);
  expect(bandAxis([]).at(-5)).toBe(0);
});
