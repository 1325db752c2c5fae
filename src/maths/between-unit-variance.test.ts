import { expect, test } from 'vitest';
import { betweenUnitVariance } from './between-unit-variance.ts';
import { near } from './nearness.ts';

const stratum = (name: string, contributions: number[], populationUnits: number | null = null) => ({
  name,
  contributions,
  populationUnits,
});

// By hand: 2/1 * ((1-2)^2 + (3-2)^2) = 4; 3/2 * ((0-1)^2 + 0 + (2-1)^2) = 3.
test('the variance of a total adds over strata', () => {
  const found = betweenUnitVariance([stratum('reef', [1, 3]), stratum('flat', [0, 1, 2])]);
  expect(found.variance).toBe(7);
  expect(found.byStratum).toEqual([
    { variance: 4, units: 2 },
    { variance: 3, units: 3 },
  ]);
});

// By hand: two of eight units seen leave three quarters of 4.
test('units that were seen no longer add to the variance', () => {
  near(betweenUnitVariance([stratum('reef', [1, 3], 8)]).variance, 3, 1e-15);
});

test('a lone unit has no spread and is named, unless it is the whole stratum', () => {
  const found = betweenUnitVariance([stratum('reef', [1, 3]), stratum('pass', [9])]);
  expect(found.variance).toBeNull();
  expect(found.loneStrata).toEqual(['pass']);
  expect(betweenUnitVariance([stratum('pass', [9], 1)]).variance).toBe(0);
});
