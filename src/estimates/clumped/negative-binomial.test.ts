import { expect, test } from 'vitest';
import { negativeBinomialLikelihood } from './negative-binomial.ts';
import { poissonLikelihood } from './poisson.ts';
import { SQUARE_METRES_PER_HA, type StationCount } from './station-count.ts';

const HECTARE = SQUARE_METRES_PER_HA;

function at(counts: readonly StationCount[], k: number, densityPerHa: number): number {
  const into = new Float64Array(1);
  negativeBinomialLikelihood(counts, Float64Array.of(k))(Math.log(densityPerHa), into);
  return into[0]!;
}

test('k of one is the geometric distribution', () => {
  // By hand: P(x) = (1/(1+m)) (m/(1+m))^x. Counts 0 and 3 on one hectare each, m = 2: 1/3 and (1/3)(2/3)^3.
  const counts = [0, 3].map((animals) => ({ animals, areaM2: HECTARE }));
  expect(at(counts, 1, 2)).toBeCloseTo(Math.log(1 / 3) + Math.log((1 / 3) * (8 / 27)), 12);
});

test('animals that are not clumped at all are counted as a Poisson', () => {
  // Limit: k to infinity. Unequal areas; difference of the order m^2 / k.
  const counts = [
    { animals: 4, areaM2: 1200 },
    { animals: 0, areaM2: 300 },
    { animals: 9, areaM2: 2000 },
  ];
  expect(at(counts, 1e7, 40)).toBeCloseTo(poissonLikelihood(counts)(Math.log(40)), 4);
});

test('the likelihood of the mites on apple leaves is greatest at the published k', () => {
  // Bliss & Fisher 1953 (counts from memory); R's MASS::glm.nb, METHODS c: k = 1.024592 at mean 172 / 150.
  const leaves = [70, 38, 17, 10, 9, 3, 2, 1];
  const counts = leaves.flatMap((n, animals) =>
    Array.from({ length: n }, () => ({ animals, areaM2: HECTARE })),
  );
  const ks = Float64Array.from({ length: 401 }, (_, i) => 1.0046 + i * 0.0001);
  const into = new Float64Array(ks.length);
  negativeBinomialLikelihood(counts, ks)(Math.log(172 / 150), into);
  const best = ks[into.indexOf(Math.max(...into))]!;
  expect(Math.abs(best - 1.024592)).toBeLessThan(0.0001);
});
