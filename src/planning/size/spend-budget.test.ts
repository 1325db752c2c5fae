import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../maths/random.ts';
import { type StratumSpread, varianceOfAllocation } from './allocation-shares.ts';
import { spendBudget } from './spend-budget.ts';

const claimsOf = (spreads: readonly StratumSpread[]) =>
  spreads.map(({ weight, standardDeviation, costPerStation }) => ({
    weight: (weight * standardDeviation) / Math.sqrt(costPerStation),
    minimum: 3,
    maximum: null,
  }));

/** Authority: every split that the budget pays, tried one after the other. */
function bestVariance(spreads: readonly StratumSpread[], budget: number): number {
  const [a, b, c] = spreads.map(({ costPerStation }) => costPerStation);
  let best = Infinity;
  for (let i = 3; i * a! <= budget; i++)
    for (let j = 3; i * a! + j * b! <= budget; j++) {
      const k = Math.floor((budget - i * a! - j * b!) / c! + 1e-9);
      if (k >= 3) best = Math.min(best, varianceOfAllocation(spreads, [i, j, k]));
    }
  return best;
}

describe('a budget spent on whole stations', () => {
  // By hand: 6 and 6 stations cost 1.8 and leave 25/6 + 100/6 = 20.83; 4 and 7 cost as much and leave 25/4 + 100/7 = 20.54.
  test('gives up cheap stations where a dear one for the same money says more', () => {
    const spreads = [
      { weight: 0.5, standardDeviation: 10, costPerStation: 0.1 },
      { weight: 0.5, standardDeviation: 20, costPerStation: 0.2 },
    ];
    expect(spendBudget(claimsOf(spreads), spreads, { budget: 1.8, seeksBest: true })).toEqual([4, 7]);
    expect(spendBudget(claimsOf(spreads), spreads, { budget: 1.8, seeksBest: false })).toEqual([6, 6]);
  });

  test('is the best of all splits', () => {
    const random = seededRandom(5);
    const tried = 200;
    for (let i = 0; i < tried; i++) {
      const spreads = Array.from({ length: 3 }, () => ({
        weight: 0.1 + random.uniform(),
        standardDeviation: 5 + 50 * random.uniform(),
        costPerStation: 1 + random.below(20),
      }));
      const budget = 3 * spreads.reduce((sum, one) => sum + one.costPerStation, 0) + random.below(300);
      const given = spendBudget(claimsOf(spreads), spreads, { budget, seeksBest: true });
      const cost = given.reduce((sum, n, h) => sum + n * spreads[h]!.costPerStation, 0);
      expect(cost).toBeLessThanOrEqual(budget);
      const over = varianceOfAllocation(spreads, given) / bestVariance(spreads, budget) - 1;
      expect(Math.abs(over)).toBeLessThan(1e-9);
    }
  });
});
