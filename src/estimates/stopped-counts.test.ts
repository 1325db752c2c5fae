import { expect, test } from 'vitest';
import { stoppedCounts } from './stopped-counts.ts';

test('one belt in ten at the cap is what honest counting gives', () => {
  expect(stoppedCounts({ atCap: 4, dense: 40, justBelow: 0 }).isStopped).toBe(false);
});

test('five of six dense belts at the cap is a stop', () => {
  // By hand: 6 * 0.1^5 * 0.9 + 0.1^6 = 0.000055.
  const found = stoppedCounts({ atCap: 5, dense: 6, justBelow: 0 });
  expect(found.chance).toBeCloseTo(0.000055, 10);
  expect(found.isStopped).toBe(true);
});

test('three of three is just enough, two of two never', () => {
  expect(stoppedCounts({ atCap: 3, dense: 3, justBelow: 0 }).isStopped).toBe(true);
  expect(stoppedCounts({ atCap: 2, dense: 2, justBelow: 0 }).isStopped).toBe(false);
});

test('where counts of 27 to 29 are as common, so may 30 be', () => {
  // By hand: 21 counts on three values make 7 a value, half of the 14 dense belts.
  expect(stoppedCounts({ atCap: 7, dense: 14, justBelow: 21 }).isStopped).toBe(false);
  expect(stoppedCounts({ atCap: 7, dense: 14, justBelow: 2 }).isStopped).toBe(true);
});
