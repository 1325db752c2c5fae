import { expect, test } from 'vitest';
import { groundIndex } from '../ground/inside.ts';
import { boxArea } from '../ground/test-areas.ts';
import { spatialBalance } from './spatial-balance.ts';

const ground = groundIndex(boxArea(177, -17.01, 177.01, -17))!;
const at = (x: number, y: number) => ({ latitudeDeg: -17.01 + 0.01 * y, longitudeDeg: 177 + 0.01 * x });

// By hand: stations in the middles of nine equal boxes stand for a ninth of the ground each, but for grid places on the seams.
test('stations in the middle of equal pieces are as well spread as can be', () => {
  const middles = [1 / 6, 1 / 2, 5 / 6];
  const balance = spatialBalance(
    ground,
    middles.flatMap((x) => middles.map((y) => at(x, y))),
    1,
  )!;
  expect(balance.drawn).toBeLessThan(0.01);
  expect(balance.simpleRandom).toBeGreaterThan(0.15);
  expect(balance.shareAsGood).toBe(0);
});

test('stations in a heap are worse spread than any simple random draw, and the same seed says the same', () => {
  const heap = Array.from({ length: 9 }, (_, i) => at(0.01 * (i % 3), 0.01 * Math.floor(i / 3)));
  const balance = spatialBalance(ground, heap, 1)!;
  expect(balance.shareAsGood).toBe(1);
  expect(spatialBalance(ground, heap, 1)).toEqual(balance);
});

test('one station has no spread to speak of', () => {
  expect(spatialBalance(ground, [at(0.5, 0.5)], 1)).toBeNull();
});
