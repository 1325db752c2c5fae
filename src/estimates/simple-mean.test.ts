import { expect, test } from 'vitest';
import b1 from '../../test/vectors/b1_simple_mean.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { sampleVariance } from '../maths/variance.ts';
import { simpleMean } from './simple-mean.ts';
import { tInterval } from './t-interval.ts';
import { stockTotal } from './totals.ts';

const values = b1.data.density_ind_ha;

// Authority: vector b1 (R 4.2.2: mean, sd, qt; Cochran 1977, chapter 2).
test('the mean of seven lagoon stations, its error, interval and stock', () => {
  const estimate = simpleMean({ name: 'LG', values, populationUnits: null });
  const tolerance = b1.tolerance_relative;
  near(estimate.value, b1.expected.mean, tolerance);
  near(Math.sqrt(sampleVariance(values)!), b1.expected.sd, tolerance);
  near(estimate.standardError, b1.expected.se_nofpc, tolerance);
  near(estimate.standardError! / estimate.value!, b1.expected.cv, tolerance);
  near(estimate.degreesOfFreedom, b1.expected.df, tolerance);
  const whole = simpleMean({ name: 'LG', values, populationUnits: b1.data.N_units });
  near(whole.standardError, b1.expected.se_fpc, tolerance);
  allNear(tInterval(estimate), b1.expected.ci95, tolerance);
  allNear(tInterval(estimate, 0.9), b1.expected.ci90, tolerance);
  const total = stockTotal(estimate, { areaHa: b1.data.area_ha, areaStandardErrorHa: 0 });
  near(total.value, b1.expected.total, tolerance);
  near(total.standardError, b1.expected.se_total, tolerance);
});

test('one station gives a mean and no standard error, none gives neither', () => {
  expect(simpleMean({ name: 'LG', values: [4], populationUnits: null })).toMatchObject({
    value: 4,
    standardError: null,
    reason: { code: 'lone-station', parameters: { strata: 'LG' } },
  });
  expect(simpleMean({ name: 'LG', values: [], populationUnits: null })).toMatchObject({
    value: null,
    reason: { code: 'no-station', parameters: { where: 'LG' } },
  });
});
