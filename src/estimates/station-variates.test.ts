import { describe, expect, test } from 'vitest';
import a2 from '../../test/vectors/a2_ratio_of_sums.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { ratioOfSumsPerHa } from './ratio-of-sums.ts';
import { simpleMean } from './simple-mean.ts';
import { stationVariatesPerHa } from './station-variates.ts';

const plannedAreaCm2 = 2_400_000;
const counts = a2.data.count.map((animals, i) => ({
  animals,
  searchedAreaCm2: a2.data.area_m2[i]! * 10_000,
}));

describe('what a station contributes', () => {
  // By hand: two thirds of 2 400 000 cm2 are 1 600 000 cm2.
  test('a station of exactly two thirds of the plan still counts like a whole one', () => {
    const exact = [
      { animals: 2, searchedAreaCm2: 1_600_000 },
      { animals: 3, searchedAreaCm2: plannedAreaCm2 },
    ];
    const short = [
      { animals: 2, searchedAreaCm2: 1_599_999 },
      { animals: 3, searchedAreaCm2: plannedAreaCm2 },
    ];
    expect(stationVariatesPerHa(exact, plannedAreaCm2).estimator).toBe('station mean');
    expect(stationVariatesPerHa(exact, plannedAreaCm2).valuesPerHa).toEqual([125, 125]);
    expect(stationVariatesPerHa(short, plannedAreaCm2).estimator).toBe('ratio of sums');
  });

  test('without a known plan every station counts alike, and a choice overrules the rule', () => {
    expect(stationVariatesPerHa(counts, null).estimator).toBe('station mean');
    expect(stationVariatesPerHa(counts, null, 'ratio of sums').estimator).toBe('ratio of sums');
    expect(stationVariatesPerHa(counts, plannedAreaCm2, 'station mean').estimator).toBe('station mean');
  });

  // Authority: vector a2 (R survey svyratio) and, as a second algorithm, the ratio itself.
  test('with a fragment among them, their plain mean and error are those of the ratio of sums', () => {
    const { estimator, valuesPerHa } = stationVariatesPerHa(counts, plannedAreaCm2);
    const plain = simpleMean({ name: 'reef', values: valuesPerHa, populationUnits: null });
    const ratio = ratioOfSumsPerHa({ name: 'reef', counts, populationUnits: null });
    expect(estimator).toBe('ratio of sums');
    near(plain.value, a2.expected.R_ind_ha, a2.tolerance_relative);
    near(plain.standardError, a2.expected.se_R_ind_ha, a2.tolerance_relative);
    near(ratio.value, plain.value!, 1e-12);
    near(ratio.standardError, plain.standardError!, 1e-12);
  });

  test('no stations contribute nothing, and a station without area is a mistake', () => {
    expect(stationVariatesPerHa([], plannedAreaCm2, 'ratio of sums').valuesPerHa).toEqual([]);
    expect(() => stationVariatesPerHa([{ animals: 0, searchedAreaCm2: 0 }], null)).toThrow('searched area');
  });

  test('all stations empty: a ratio of zero at every station', () => {
    const empty = counts.map((count) => ({ ...count, animals: 0 }));
    expect(stationVariatesPerHa(empty, plannedAreaCm2).valuesPerHa.every((value) => value === 0)).toBe(true);
  });
});
