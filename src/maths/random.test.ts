import { expect, test } from 'vitest';
import { seededRandom } from './random.ts';

const picks = (seed: number, n: number) => {
  const random = seededRandom(seed);
  return Array.from({ length: n }, () => random.below(1000));
};

test('the same seed gives the same picks', () => {
  expect(picks(7, 50)).toEqual(picks(7, 50));
});

test('neighbouring seeds have nothing in common', () => {
  const a = picks(1, 2000);
  const b = picks(2, 2000);
  // By hand: 2 of 2000 pairs agree by chance; 15 would be beyond any doubt.
  expect(a.filter((pick, i) => pick === b[i]).length).toBeLessThan(15);
});

test('every station is picked about equally often, and none outside the list', () => {
  const random = seededRandom(3);
  const times = new Array<number>(21).fill(0);
  for (let i = 0; i < 210_000; i++) times[random.below(21)]!++;
  // By hand: 10 000 each, standard deviation 98; five of them are 490. Chi-square on 20 df stays below 60.
  for (const n of times) expect(Math.abs(n - 10_000)).toBeLessThan(490);
  expect(times.reduce((chi, n) => chi + (n - 10_000) ** 2 / 10_000, 0)).toBeLessThan(60);
});

test('uniform numbers lie from 0 to below 1 and have the mean and variance of a uniform', () => {
  const random = seededRandom(11);
  const values = Array.from({ length: 100_000 }, () => random.uniform());
  const mean = values.reduce((a, b) => a + b) / values.length;
  const variance = values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length;
  expect(Math.min(...values.slice(0, 1000))).toBeGreaterThanOrEqual(0);
  expect(Math.max(...values.slice(0, 1000))).toBeLessThan(1);
  // By hand: 1/2 and 1/12; five Monte Carlo errors.
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.0046);
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.0012);
});
