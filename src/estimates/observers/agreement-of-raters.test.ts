import { expect, test } from 'vitest';
import i3 from '../../../test/vectors/i3_icc.json' with { type: 'json' };
import { allNear } from '../../maths/nearness.ts';
import { seededRandom } from '../../maths/random.ts';
import { agreementOfRaters } from './agreement-of-raters.ts';

// Authority: Shrout and Fleiss 1979, Table 2 (data read), vector i3 (R 4.2.2, psych::ICC).
test('six subjects judged by four give the six published forms', () => {
  const { data, expected, tolerance_relative: tolerance } = i3;
  const found = agreementOfRaters(data.ratings)!;
  const { oneWay, absolute, consistency, oneWayOfMean, absoluteOfMean, consistencyOfMean } = found;
  allNear(
    [oneWay, absolute, consistency, oneWayOfMean, absoluteOfMean, consistencyOfMean],
    expected.icc,
    tolerance,
  );
  allNear(found.absoluteInterval, [expected.lower[1]!, expected.upper[1]!], tolerance);
});

// By hand: no difference between divers, so all spread lies between belts.
test('divers who agree on every belt have 1', () => {
  expect(
    agreementOfRaters([
      [1, 1],
      [5, 5],
      [9, 9],
    ]),
  ).toMatchObject({ absolute: 1, absoluteInterval: [1, 1] });
});

test('counts that are all the same, and two belts, tell nothing', () => {
  expect(
    agreementOfRaters([
      [2, 2],
      [2, 2],
      [2, 2],
    ]),
  ).toBeNull();
  expect(
    agreementOfRaters([
      [2, 3],
      [5, 4],
    ]),
  ).toBeNull();
});

// By hand: a constant doubt of 10 animals: consistent (1), far from agreeing.
test('a diver who always counts ten more is consistent and does not agree', () => {
  const found = agreementOfRaters([
    [1, 11],
    [2, 12],
    [3, 13],
    [4, 14],
  ])!;
  expect(found.consistency).toBeCloseTo(1, 9);
  expect(found.absolute).toBeLessThan(0.1);
});

// Invariance: whatever two divers wrote down, the ends are numbers in order and the value lies between them.
test('every small table of counts has a finite interval', () => {
  const random = seededRandom(7);
  for (let table = 0; table < 2000; table++) {
    const belts = 3 + random.below(5);
    const found = agreementOfRaters(Array.from({ length: belts }, () => [random.below(4), random.below(4)]));
    if (found === null) continue;
    const [low, high] = found.absoluteInterval;
    expect(low).toBeLessThanOrEqual(found.absolute + 1e-9);
    expect(high).toBeGreaterThanOrEqual(found.absolute - 1e-9);
    for (const value of Object.values(found).flat())
      expect(value === null || Number.isFinite(value)).toBe(true);
  }
});

// By hand: every belt has a mean of half an animal and the divers have equal sums: 0/0 degrees of freedom.
test('divers who never saw the same animal have a finite interval too', () => {
  const found = agreementOfRaters([
    [1, 0],
    [0, 1],
    [1, 0],
    [0, 1],
  ])!;
  expect(found.absoluteInterval.every(Number.isFinite)).toBe(true);
  expect(found.absoluteOfMean).toBeNull();
});
