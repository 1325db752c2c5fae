import { describe, expect, test } from 'vitest';
import a2 from '../../test/vectors/a2_ratio_of_sums.json' with { type: 'json' };
import a3 from '../../test/vectors/a3_pseudoreplication.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { mean, sampleVariance, sum } from '../maths/variance.ts';
import { ratioOfSumsPerHa } from './ratio-of-sums.ts';
import { simpleMean } from './simple-mean.ts';
import { tInterval } from './t-interval.ts';

const ofM2 = (animals: number, areaM2: number) => ({ animals, searchedAreaCm2: areaM2 * 10_000 });

describe('unequal searched areas', () => {
  const counts = a2.data.count.map((animals, i) => ofM2(animals, a2.data.area_m2[i]!));
  const estimate = ratioOfSumsPerHa({ name: 'reef', counts, populationUnits: null });
  const densities = a2.data.count.map((animals, i) => (animals / a2.data.area_m2[i]!) * 10_000);

  // Authority: vector a2 (R 4.2.2, survey svyratio; Cochran 1977 from memory).
  test('the density is all animals over all area, with the error of the ratio', () => {
    near(estimate.value, a2.expected.R_ind_ha, a2.tolerance_relative);
    near(estimate.value! / 10_000, a2.expected.R_per_m2, a2.tolerance_relative);
    near(estimate.standardError, a2.expected.se_R_ind_ha, a2.tolerance_relative);
    expect(estimate.degreesOfFreedom).toBe(a2.expected.t_df);
    allNear(tInterval(estimate), a2.expected.ci95_R_ind_ha, a2.tolerance_relative);
  });

  // Authority: vector a2; the jackknife is a second algorithm, of the same size but not equal.
  test('leaving out one station at a time gives a similar error', () => {
    const n = counts.length;
    const animals = sum(a2.data.count);
    const area = sum(a2.data.area_m2);
    const without = counts.map(
      (_, i) => ((animals - a2.data.count[i]!) / (area - a2.data.area_m2[i]!)) * 10_000,
    );
    const jackknife = Math.sqrt(((n - 1) ** 2 / n) * sampleVariance(without)!);
    near(jackknife, a2.expected.se_jackknife_ind_ha, a2.tolerance_relative);
    near(estimate.standardError, jackknife, 0.05);
  });

  // Authority: vector a2. Hartley and Ross by hand: rbar + n (n - 1) / (n - 1) (ybar - rbar xbar) / N xbar, N large.
  test('the mean of station densities would be half as much again, because of one fragment', () => {
    const plain = simpleMean({ name: 'reef', values: densities, populationUnits: null });
    near(plain.value, a2.expected.mean_of_ratios_ind_ha, a2.tolerance_relative);
    near(plain.standardError, a2.expected.se_mean_of_ratios_ind_ha, a2.tolerance_relative);
    const n = counts.length;
    const r = mean(densities);
    const x = mean(a2.data.area_m2);
    const y = mean(a2.data.count) * 10_000;
    near(r + (n * (y - r * x)) / ((n - 1) * x), a2.expected.hartley_ross_ind_ha, a2.tolerance_relative);
  });
});

// Authority: vector a3 (R 4.2.2, survey svyratio with stations as clusters).
test('transects taken as replicates understate the error of the lagoon twofold', () => {
  const { station, count, length_m, width_m } = a3.data.transects;
  const codes = [...new Set(station)];
  const areaM2 = length_m.map((length, i) => length * width_m[i]!);
  const counts = codes.map((code) =>
    ofM2(sum(count.filter((_, i) => station[i] === code)), sum(areaM2.filter((_, i) => station[i] === code))),
  );
  const right = ratioOfSumsPerHa({ name: 'LG', counts, populationUnits: null });
  const perTransect = count.map((animals, i) => (animals / areaM2[i]!) * 10_000);
  const wrong = simpleMean({ name: 'LG', values: perTransect, populationUnits: null });
  expect(count.length).toBe(a3.expected.n_transects);
  expect(codes.length).toBe(a3.expected.n_stations);
  near(right.value, a3.expected.ratio_ind_ha, a3.tolerance_relative);
  near(right.standardError, a3.expected.se_station_cluster_ind_ha, a3.tolerance_relative);
  near(wrong.value, a3.expected.mean_transect_density_ind_ha, a3.tolerance_relative);
  near(wrong.standardError, a3.expected.se_wrong_transects_ind_ha, a3.tolerance_relative);
  near(right.standardError! / wrong.standardError!, a3.expected.understatement_factor, a3.tolerance_relative);
});

test('no station, no area and one station say so', () => {
  const of = (counts: { animals: number; searchedAreaCm2: number }[]) =>
    ratioOfSumsPerHa({ name: 'reef', counts, populationUnits: null });
  expect(of([])).toMatchObject({ value: null, reason: { code: 'no-station' } });
  expect(of([ofM2(0, 0)])).toMatchObject({ value: null, reason: { code: 'no-searched-area' } });
  expect(of([ofM2(6, 240)])).toMatchObject({
    value: 250,
    standardError: null,
    reason: { code: 'lone-station' },
  });
});
