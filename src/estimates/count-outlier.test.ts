import { expect, test } from 'vitest';
import { negativeBinomialQuantile } from '../maths/negative-binomial-quantile.ts';
import { negativeBinomialSampler } from '../maths/negative-binomial-sampler.ts';
import { seededRandom } from '../maths/random.ts';
import { countOutlier } from './count-outlier.ts';
import { negativeBinomialFit, negativeBinomialScreen } from './negative-binomial-fit.ts';

const onEqualAreas = (animals: readonly number[]) => ({ animals, areasHa: animals.map(() => 0.048) });
const usual = [3, 5, 2, 4, 6, 1, 4, 3, 7];

test('seventeen typed as seventy-one among a few animals is found, and where it stands', () => {
  const found = countOutlier(onEqualAreas([...usual, 71]))!;
  expect(found.index).toBe(9);
  expect(found.animals).toBe(71);
  // Second algorithm: the full fit of the nine others and the quantile of its population.
  const fit = negativeBinomialFit(onEqualAreas(usual))!;
  const population = { mean: fit.densityPerHa * 0.048, clumpingK: fit.clumpingK };
  expect(found.upperCount).toBe(negativeBinomialQuantile(population, 0.999));
});

test('the quick fit has the point and the lowest k of the full fit', () => {
  const clumped = onEqualAreas([0, 0, 1, 40, 3, 0, 0, 12, 5]);
  const fit = negativeBinomialFit(clumped)!;
  const point = negativeBinomialScreen(clumped)!;
  expect(Math.abs(point.densityPerHa / fit.densityPerHa - 1)).toBeLessThan(1e-6);
  expect(Math.abs(point.clumpingK! / fit.clumpingK! - 1)).toBeLessThan(2e-3);
  expect(Math.abs(point.lowestK / fit.clumpingInterval![0] - 1)).toBeLessThan(5e-3);
});

test('a rich station among clumped animals is left in peace', () => {
  expect(countOutlier(onEqualAreas([0, 0, 1, 40, 3, 0, 0, 12, 5, 71]))).toBeNull();
});

test('few stations, or few that have the species, say nothing about the tail', () => {
  expect(countOutlier(onEqualAreas([3, 5, 2, 4, 6, 1, 4, 500]))).toBeNull();
  expect(countOutlier(onEqualAreas([0, 0, 0, 0, 0, 0, 0, 2, 1, 500]))).toBeNull();
  expect(countOutlier(onEqualAreas([]))).toBeNull();
});

test('a count ten times too high on a tenth of the area is no less an outlier', () => {
  const areasHa = [...usual.map(() => 0.048), 0.0048];
  expect(countOutlier({ animals: [...usual, 40], areasHa })).not.toBeNull();
});

test('of clean strata of 12 stations fewer than 1 in a hundred are asked about', () => {
  const random = seededRandom(11);
  let asked = 0;
  const strata = 1000;
  for (const clumpingK of [0.3, 1]) {
    const draw = negativeBinomialSampler({ mean: 12, clumpingK });
    for (let i = 0; i < strata / 2; i++) {
      if (countOutlier(onEqualAreas(Array.from({ length: 12 }, () => draw(random)))) !== null) asked++;
    }
  }
  // Simulation is the authority; docs/methods/checks.md has the table.
  expect(asked / strata).toBeLessThan(0.01);
});
