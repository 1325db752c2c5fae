import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import h3 from '../../../test/vectors/h3_local_pivotal.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { seededRandom } from '../../maths/random.ts';
import { localPivotalDraw } from './local-pivotal.ts';
import { nearestPoints } from './nearest-points.ts';
import { simpleRandomDraw } from './simple-random.ts';
import { voronoiBalance } from './voronoi-balance.ts';

/** x 1..8 runs fastest, as the list of probabilities does. */
const points = Array.from({ length: 40 }, (_, i) => [(i % 8) + 1, Math.floor(i / 8) + 1]);
const inclusion = h3.data.p;
const runs = 4000;

describe('duels between neighbours', () => {
  const random = seededRandom(3);
  const chosen = Array.from({ length: runs }, () => localPivotalDraw({ points, inclusion }, random));

  test('always choose six of the forty places', () => {
    expect(chosen.every((one) => one.length === h3.data.n)).toBe(true);
  });

  // Authority: the probabilities asked for (vector h3): each within four standard errors of its own.
  test('give every place exactly the chance it was promised', () => {
    const counts = new Float64Array(40);
    for (const one of chosen) for (const i of one) counts[i]!++;
    inclusion.forEach((p, i) => {
      expect(Math.abs(counts[i]! / runs - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / runs));
    });
  });

  // Authority: vector h3 (R, 4000 runs), within its relative 0.03 for both kinds of draw.
  test('are far better balanced than simple random draws', () => {
    const places = { points, inclusion };
    const balanceOf = (indices: readonly number[]) =>
      voronoiBalance(
        places,
        indices.map((i) => points[i]!),
      );
    const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
    near(mean(chosen.map(balanceOf)), h3.expected.mean_balance_lpm, h3.tolerance_relative);
    const even = { points, inclusion: inclusion.map(() => 6 / 40) };
    const simple = Array.from({ length: runs }, () => simpleRandomDraw({ count: 40, size: 6 }, random));
    const simpleBalance = mean(simple.map(balanceOf));
    const evenBalance = mean(
      simple.map((one) =>
        voronoiBalance(
          even,
          one.map((i) => points[i]!),
        ),
      ),
    );
    near(simpleBalance, h3.expected.mean_balance_srs, h3.tolerance_relative);
    // The vector measures the simple draws against chances they do not have; against their own they are better, and
    // still twice as uneven.
    expect(evenBalance).toBeGreaterThan(2 * h3.expected.mean_balance_lpm);
  });

  test('settle one place, none and certain ones', () => {
    const one = { points: [[0, 0]], inclusion: [1] };
    expect(localPivotalDraw(one, random)).toEqual([0]);
    expect(localPivotalDraw({ points: [], inclusion: [] }, random)).toEqual([]);
    expect(localPivotalDraw({ points: points.slice(0, 3), inclusion: [1, 0, 1] }, random)).toEqual([0, 2]);
    expect(() => localPivotalDraw({ points: [[0, 0]], inclusion: [1.5] }, random)).toThrow(/0 to 1/);
  });
});

describe('nearest points', () => {
  // Authority: second algorithm, every distance measured.
  test('are those that a full search finds, ties and leavers included', () => {
    const coordinate = fc.integer({ min: 0, max: 6 });
    const point = fc.tuple(coordinate, coordinate, coordinate);
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 30 }), point, fc.nat(), (all, query, leaver) => {
        const tree = nearestPoints(all);
        const gone = leaver % all.length;
        tree.remove(gone);
        const distance = (p: readonly number[]) => p.reduce((total, x, d) => total + (x - query[d]!) ** 2, 0);
        const left = all.map((_, i) => i).filter((i) => i !== gone);
        const least = Math.min(...left.map((i) => distance(all[i]!)));
        const expected = left.filter((i) => distance(all[i]!) === least);
        expect([...tree.nearest(query)].sort((a, b) => a - b)).toEqual(expected);
      }),
      { endOnFailure: true },
    );
  });
});
