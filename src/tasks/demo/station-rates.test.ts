import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../maths/random.ts';
import { animals } from './animals.ts';
import { choosePlaces } from './chosen-places.ts';
import { drawStationRates } from './station-rates.ts';

/** Rates of 400 seeds on one set of places: 4 800 fixed stations for each species. */
const places = choosePlaces(seededRandom(1));
const draws = Array.from({ length: 400 }, (_, i) => drawStationRates(places, seededRandom(i)));

describe('station rates', () => {
  it('have mean 1 and variance 1 / k in every survey', () => {
    // Authority: the moments of a gamma of shape k and mean 1. Tolerances: about four standard errors of 10 800 stations.
    animals.forEach(({ clumpingK }, i) => {
      const rates = draws.flatMap((draw) => [...draw.get(2026)!.values()].map((rate) => rate[i]!));
      const mean = average(rates);
      const variance = average(rates.map((rate) => (rate - mean) ** 2));
      expect(Math.abs(mean - 1)).toBeLessThan(4 / Math.sqrt(clumpingK * rates.length));
      expect(Math.abs(variance * clumpingK - 1)).toBeLessThan(
        4 * Math.sqrt((2 + 6 / clumpingK) / rates.length),
      );
    });
  });

  it('of a fixed station correlate 0.8 between surveys, on the scale of the rates', () => {
    // Authority: by hand. Rate = (A + B) / k with A gamma(0.8 k) kept and B gamma(0.2 k) fresh:
    // covariance 0.8 k / k^2, variance k / k^2, correlation 0.8 for every k and every pair of surveys.
    const fixed = [...places.get(2022)!]
      .filter((place) => place.selection === 'fixed')
      .map((place) => place.code);
    for (const [before, after] of [
      [2022, 2024],
      [2024, 2026],
      [2022, 2026],
    ] as const) {
      const correlations = animals.map((_, i) => {
        const ofYear = (year: 2022 | 2024 | 2026) =>
          draws.flatMap((draw) => fixed.map((code) => draw.get(year)!.get(code)![i]!));
        return correlation(ofYear(before), ofYear(after));
      });
      expect(Math.abs(average(correlations) - 0.8)).toBeLessThan(0.02);
    }
  });

  it('of random stations have nothing to do with each other', () => {
    const first = draws.map((draw) => draw.get(2022)!.get('R22-1')![0]!);
    const second = draws.map((draw) => draw.get(2024)!.get('R24-1')![0]!);
    // Four standard errors of a correlation of 400 pairs: 4 / 20.
    expect(Math.abs(correlation(first, second))).toBeLessThan(0.2);
  });
});

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function correlation(a: readonly number[], b: readonly number[]): number {
  const [meanA, meanB] = [average(a), average(b)];
  const products = average(a.map((value, i) => (value - meanA) * (b[i]! - meanB)));
  const squareA = average(a.map((value) => (value - meanA) ** 2));
  const squareB = average(b.map((value) => (value - meanB) ** 2));
  return products / Math.sqrt(squareA * squareB);
}
