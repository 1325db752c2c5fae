import { describe, expect, test } from 'vitest';
import c5 from '../../test/vectors/c5_zero_counts.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import {
  clumpedUpperBoundPerHa,
  garwoodInterval,
  poissonUpperBoundPerHa,
  prevalenceUpperBound,
} from './zero-count-bound.ts';

const { data, expected, tolerance_relative: tolerance } = c5;
const areasHa = new Array<number>(data.n_stations).fill(data.area_per_station_m2 / 10_000);

describe('nothing seen at twenty-one stations', () => {
  // Authority: vector c5 (R 4.2.2; 2.9957 read in a package help); rule of three, Hanley and Lippman-Hand 1983.
  test('scattered animals are at most about three over the area', () => {
    near(poissonUpperBoundPerHa(1), expected.one_sided95_count, tolerance);
    near(poissonUpperBoundPerHa(1), expected.rule_of_three_count, 0.002);
    near(poissonUpperBoundPerHa(data.total_area_ha), expected.one_sided95_ind_ha, tolerance);
  });

  // Authority: vector c5 (closed form for equal areas).
  test.each(data.k.map((k, i) => ({ k, i })))('animals clumped with k $k may be more', ({ k, i }) => {
    near(clumpedUpperBoundPerHa(areasHa, k), expected.nb_upper95_ind_ha[i]!, tolerance);
  });

  // Second algorithm: at the bound, the chance of seeing none at every station is 5 %.
  test('with unequal areas the bound leaves five in a hundred', () => {
    const unequal = [0.024, 0.004, 0.016, 0.024, 0.012];
    const bound = clumpedUpperBoundPerHa(unequal, 0.35)!;
    near(
      unequal.reduce((chance, area) => chance * (1 + (bound * area) / 0.35) ** -0.35, 1),
      0.05,
      1e-9,
    );
  });

  // Invariance: without limit k it is the Poisson bound.
  test('animals hardly clumped give the bound of scattered ones', () => {
    near(clumpedUpperBoundPerHa(areasHa, 1e9), expected.one_sided95_ind_ha, 1e-7);
  });

  // Authority: vector c5.
  test('the species can be at thirteen places in a hundred', () => {
    near(prevalenceUpperBound(data.n_stations), expected.prevalence_upper95_one_sided, tolerance);
    near(3 / data.n_stations, expected.prevalence_rule_of_three, tolerance);
  });
});

// Authority: vector c5 (R qchisq); Garwood 1936, 3.689, 5.572, 7.225 (from memory).
test.each(data.x.map((animals, i) => ({ animals, i })))(
  'exact interval for $animals animals',
  ({ animals, i }) => {
    const interval = garwoodInterval(animals);
    allNear(interval, [expected.garwood_lo[i]!, expected.garwood_hi[i]!], tolerance);
    near(interval[1] / data.total_area_ha, expected.garwood_hi_ind_ha[i]!, tolerance);
  },
);

test('nothing searched bounds nothing', () => {
  expect(poissonUpperBoundPerHa(0)).toBeNull();
  expect(clumpedUpperBoundPerHa([], 0.35)).toBeNull();
  expect(prevalenceUpperBound(0)).toBeNull();
  expect(() => clumpedUpperBoundPerHa([1], 0)).toThrow('positive k');
  // By hand: one station, k 0.001: 20^1000 cannot be written as a number.
  expect(clumpedUpperBoundPerHa([1], 0.001)).toBeNull();
});
