import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import g2 from '../../../test/vectors/g2_allocation.json' with { type: 'json' };
import g2b from '../../../test/vectors/g2b_published_env_eng.json' with { type: 'json' };
import { allNear, near } from '../../maths/nearness.ts';
import { allocate } from './allocate.ts';
import type { PlannedStratum } from './allocation-check.ts';
import {
  allocationShares,
  stationsForBudget,
  stationsForVariance,
  varianceOfAllocation,
} from './allocation-shares.ts';
import { priorityAllocation } from './priority-allocation.ts';

const { data, expected, tolerance_relative: tolerance } = g2;
const strata: readonly PlannedStratum[] = data.strata.h.map((name, h) => ({
  name,
  areaHa: data.strata.A[h]!,
  standardDeviation: data.strata.S[h]!,
  costPerStation: data.strata.c[h]!,
  mostStations: null,
}));
const spreads = strata.map((stratum) => ({
  weight: stratum.areaHa!,
  standardDeviation: stratum.standardDeviation!,
  costPerStation: stratum.costPerStation!,
}));
const times = (shares: readonly number[], n: number) => shares.map((share) => share * n);

describe('the textbook splits', () => {
  // Authority: vector g2 (Cochran 1977 eq 5.22 to 5.26, from memory; R).
  test('go by area, by area times spread, and over the root of the cost', () => {
    const { n, budget, V_target } = data;
    const split = (rule: 'proportional' | 'neyman' | 'cost-optimal') =>
      times(allocationShares(spreads, rule), n);
    allNear(split('proportional'), expected.proportional, tolerance);
    allNear(split('neyman'), expected.neyman, tolerance);
    allNear(split('cost-optimal'), expected.optimal_equal_n, tolerance);
    near(varianceOfAllocation(spreads, split('proportional')), expected.V_prop, tolerance);
    near(varianceOfAllocation(spreads, split('neyman')), expected.V_neyman, tolerance);
    near(varianceOfAllocation(spreads, split('cost-optimal')), expected.V_optimal, tolerance);
    const paid = stationsForBudget(spreads, 'cost-optimal', budget);
    near(paid, expected.n_for_budget, tolerance);
    allNear(times(allocationShares(spreads, 'cost-optimal'), paid), expected.alloc_for_budget, tolerance);
    near(stationsForVariance(spreads, 'cost-optimal', V_target), expected.n_for_V, tolerance);
  });

  // Authority: published example (N 1550/620/930, S 5/15/10, cost 9/9/16, n 58), read; vector g2.
  test('reproduce a published example', () => {
    const published = data.published.N.map((weight, h) => ({
      weight,
      standardDeviation: data.published.S[h]!,
      costPerStation: data.published.c[h]!,
    }));
    const split = times(allocationShares(published, 'cost-optimal'), data.published_n);
    allNear(split, expected.published_allocation, tolerance);
    expect(split.map(Math.round)).toEqual(expected.published_rounded);
  });

  // Authority: vector g2b (Berthouex and Brown 2002, example 23.10, read: 263 in all). The book splits by W S^2; Neyman's
  // split of the same number, as the vector gives it for comparison, needs fewer for the same variance.
  test('are not the split of a textbook that multiplies by the variance', () => {
    const lakes = g2b.data.w.map((weight, h) => ({
      weight,
      standardDeviation: Math.sqrt(g2b.data.s2[h]!),
      costPerStation: 1,
    }));
    const n = g2b.expected.n_unrounded;
    near(4 * g2b.data.w.reduce((total, w, h) => total + w * g2b.data.s2[h]!, 0), n, g2b.tolerance_relative);
    const neyman = times(allocationShares(lakes, 'neyman'), g2b.expected.n_published);
    allNear(neyman, g2b.expected.neyman_alloc_for_comparison, g2b.tolerance_relative);
    expect(varianceOfAllocation(lakes, neyman)).toBeLessThan(varianceOfAllocation(lakes, g2b.expected.alloc));
  });
});

describe('stations in whole numbers', () => {
  // Authority: JOB scenario 12 and vector g2 (Wright 2012).
  test('are 24, 33 and 3 for 60 stations with a minimum of 2', () => {
    const plan = allocate({ strata, rule: 'neyman', goal: { stations: 60 }, minimum: 2 }).value!;
    expect(plan.strata.map((stratum) => stratum.stations)).toEqual(expected.wright_min2);
    allNear(
      plan.strata.map((stratum) => stratum.exact),
      expected.neyman,
      tolerance,
    );
    near(plan.varianceOfMean, expected.V_wright, tolerance);
    near(plan.varianceOfExact, expected.V_neyman, tolerance);
    // By hand: 24 + 33 * 1.4 + 3 * 2.2 = 76.8.
    near(plan.cost, 76.8, 1e-12);
  });

  // Authority: second algorithm, every split of up to 14 stations over three strata.
  test('are the best of every possible split', () => {
    const weight = fc.double({ min: 0.01, max: 10, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(weight, weight, weight),
        fc.integer({ min: 1, max: 3 }),
        fc.integer({ min: 9, max: 14 }),
        (weights, minimum, stations) => {
          const claims = weights.map((w) => ({ weight: w, minimum, maximum: null }));
          const varianceOf = (given: readonly number[]) =>
            given.reduce((total, n, h) => total + weights[h]! ** 2 / n, 0);
          const given = priorityAllocation(claims, stations);
          expect(given.reduce((a, b) => a + b, 0)).toBe(stations);
          let best = Infinity;
          for (let a = minimum; a <= stations - 2 * minimum; a++) {
            for (let b = minimum; b <= stations - a - minimum; b++) {
              best = Math.min(best, varianceOf([a, b, stations - a - b]));
            }
          }
          near(varianceOf(given), best, 1e-12);
        },
      ),
      { numRuns: 200, endOnFailure: true },
    );
  });

  test('do not depend on the unit of the areas or the spreads', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (factor) => {
        const scaled = strata.map((stratum) => ({ ...stratum, areaHa: stratum.areaHa! * factor }));
        const other = strata.map((stratum) => ({
          ...stratum,
          standardDeviation: stratum.standardDeviation! * factor,
        }));
        const split = (some: readonly PlannedStratum[]) =>
          allocate({ strata: some, rule: 'cost-optimal', goal: { stations: 60 } }).value!.strata.map(
            (one) => one.stations,
          );
        expect(split(scaled)).toEqual(split(strata));
        expect(split(other)).toEqual(split(strata));
      }),
    );
  });

  test('stay inside a budget, and no stratum could take one more station', () => {
    const plan = allocate({ strata, rule: 'cost-optimal', goal: { budget: data.budget } }).value!;
    expect(plan.cost!).toBeLessThanOrEqual(data.budget);
    expect(data.budget - plan.cost!).toBeLessThan(1);
    expect(plan.strata.every((stratum) => stratum.stations >= 3)).toBe(true);
  });

  test('reach a wanted variance, and one station fewer does not', () => {
    const plan = allocate({ strata, rule: 'neyman', goal: { varianceOfMean: data.V_target } }).value!;
    expect(plan.varianceOfMean!).toBeLessThanOrEqual(data.V_target);
    const fewer = allocate({ strata, rule: 'neyman', goal: { stations: plan.stations - 1 } }).value!;
    expect(fewer.varianceOfMean!).toBeGreaterThan(data.V_target);
  });

  test('a small reef cannot take more than it holds, and that is said', () => {
    const small = strata.map((stratum) =>
      stratum.name === 'LG' ? { ...stratum, mostStations: 10 } : stratum,
    );
    // By hand: the other 50 by 25200 : 3625 are 43.7 and 6.3.
    const plan = allocate({ strata: small, rule: 'neyman', goal: { stations: 60 } });
    expect(plan.value!.strata.map((one) => one.stations)).toEqual([44, 10, 6]);
    expect(plan.problems.map((problem) => problem.code)).toEqual(['plan-stratum-full']);
  });
});

describe('a plan that cannot be made', () => {
  const ask = (changed: Partial<PlannedStratum>, rest: object = {}) =>
    allocate({
      strata: [{ ...strata[0]!, ...changed }, ...strata.slice(1)],
      rule: 'cost-optimal',
      goal: { stations: 60 },
      ...rest,
    });
  const codes = (answer: ReturnType<typeof ask>) => answer.problems.map((problem) => problem.code);

  test('says what is missing and where', () => {
    expect(codes(ask({ areaHa: null }))).toEqual(['plan-area-missing']);
    expect(codes(ask({ standardDeviation: null }))).toEqual(['plan-spread-missing']);
    expect(ask({ costPerStation: null }).problems[0]).toMatchObject({
      code: 'plan-cost-missing',
      parameters: { strata: 'RF' },
    });
    expect(codes(ask({ areaHa: 0 }))).toEqual(['plan-number-impossible']);
    expect(codes(ask({}, { strata: [] }))).toEqual(['plan-no-strata']);
    expect(codes(ask({ name: 'LG' }))).toEqual(['plan-name-repeated']);
  });

  test('refuses zero stations, half a station, and fewer than the minimum asks', () => {
    expect(codes(ask({}, { goal: { stations: 0 } }))).toEqual(['plan-number-impossible']);
    expect(codes(ask({}, { goal: { stations: 10.5 } }))).toEqual(['plan-not-whole']);
    expect(ask({}, { goal: { stations: 8 } }).problems[0]).toMatchObject({
      code: 'plan-minimum-needs-more',
      parameters: { stations: 8, minimum: 3, strata: 3, needed: 9 },
    });
    // By hand: 3 (1 + 1.4 + 2.2) = 13.8.
    expect(ask({}, { goal: { budget: 13 } }).problems[0]!.code).toBe('plan-budget-too-small');
  });

  test('a stratum whose pilot stations were all alike gets the minimum, and that is said', () => {
    const answer = ask({ standardDeviation: 0 });
    expect(answer.value!.strata[0]).toMatchObject({ exact: 0, stations: 3, isRaisedToMinimum: true });
    expect(codes(answer)).toEqual(['plan-stratum-without-spread']);
  });

  test('without spread anywhere only the split by area is left', () => {
    const flat = strata.map((stratum) => ({ ...stratum, standardDeviation: 0 }));
    expect(codes(ask({}, { strata: flat }))).toEqual(['plan-no-spread-anywhere']);
    const unknown = strata.map((stratum) => ({ ...stratum, standardDeviation: null, costPerStation: null }));
    const plan = ask({}, { strata: unknown, rule: 'proportional' }).value!;
    // By hand: 60 * 420/875 = 28.8, 21.26, 9.94.
    expect(plan.strata.map((one) => one.stations)).toEqual([29, 21, 10]);
    expect(plan).toMatchObject({ cost: null, varianceOfMean: null });
  });
});
