import { describe, expect, test } from 'vitest';
import g3 from '../../../test/vectors/g3_two_stage_optimum.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { transectsPerStation } from './transects-per-station.ts';

const { data, expected, tolerance_relative: tolerance } = g3;
const costs = {
  varianceBetween: data.var_between,
  varianceWithin: data.var_within,
  costPerStation: data.cost_station,
  costPerTransect: data.cost_transect,
  budget: data.budget,
};

describe('transects per station', () => {
  // Authority: vector g3 (Cochran 1977 eq 10.26, from memory; R).
  test('have an optimum between the cost of the way and the cost of the belt', () => {
    const answer = transectsPerStation({ ...costs, transects: expected.m }).value!;
    near(answer.optimum, expected.m_opt, tolerance);
    near(answer.likenessWithinStations, expected.icc, tolerance);
    expected.m.forEach((m, i) => {
      const row = answer.rows.find((one) => one.transects === m)!;
      near(row.stations, expected.n_stations[i]!, tolerance);
      near(row.varianceOfMean, expected.var_m1[i]!, tolerance);
    });
    expect(answer.transects).toBe(6);
  });

  // Authority: second algorithm, every whole number tried.
  test('are the best whole number of all', () => {
    for (const costPerTransect of [0.1, 0.4, 1, 3, 20]) {
      const all = Array.from({ length: 60 }, (_, i) => i + 1);
      const answer = transectsPerStation({ ...costs, costPerTransect, transects: all, mostTransects: 60 })
        .value!;
      const best = answer.rows.reduce((a, b) => (b.varianceOfMean < a.varianceOfMean ? b : a));
      expect(answer.transects).toBe(best.transects);
    }
  });

  test('are one where belts of a station are alike', () => {
    expect(transectsPerStation({ ...costs, varianceWithin: 0 }).value!.transects).toBe(1);
  });

  test('have no limit but the dive where stations are alike, and that is said', () => {
    const answer = transectsPerStation({ ...costs, varianceBetween: 0, mostTransects: 8 });
    expect(answer.value).toMatchObject({ optimum: null, transects: 8 });
    expect(answer.problems[0]!.code).toBe('plan-no-variance-between');
  });

  test('are refused without any variance and without costs', () => {
    expect(transectsPerStation({ ...costs, varianceBetween: 0, varianceWithin: 0 }).value).toBeNull();
    expect(transectsPerStation({ ...costs, costPerTransect: 0 }).value).toBeNull();
  });
});
