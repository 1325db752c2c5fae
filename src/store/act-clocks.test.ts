import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeActs } from './act-clocks.ts';

const day = (n: number) => `2026-09-${String(n).padStart(2, '0')}T10:00:00.000Z`;
const placed = (...ats: string[]) =>
  placeActs(ats.map((at, i) => ({ number: i + 1, at }))).map(({ countsAtMs, clockBelieved }) => [
    new Date(countsAtMs).toISOString(),
    clockBelieved,
  ]);

// By hand.
test('clocks in order are believed as they are', () => {
  expect(placed(day(1), day(2), day(2))).toEqual([
    [day(1), true],
    [day(2), true],
    [day(2), true],
  ]);
});

// By hand: 1, 2, 3 agree; the clock of 2000 does not.
test('an act by a laptop that thinks it is the year 2000 counts as made just after the act before it', () => {
  expect(placed(day(1), '2000-01-01T00:00:00.000Z', day(3))).toEqual([
    [day(1), true],
    [day(1), false],
    [day(3), true],
  ]);
});

// By hand: the two later acts outvote the one of 2062, so they are not hidden behind it.
test('one act by a clock set to the future does not push the later ones into the future', () => {
  expect(placed(day(1), '2062-01-01T00:00:00.000Z', day(3), day(4))).toEqual([
    [day(1), true],
    [day(1), false],
    [day(3), true],
    [day(4), true],
  ]);
});

test('of two acts that contradict each other the clock that fell back is not believed', () => {
  expect(placed(day(3), day(1))).toEqual([
    [day(3), true],
    [day(3), false],
  ]);
});

test('no act leaves nothing to place', () => {
  expect(placeActs([])).toEqual([]);
});

// Second algorithm: the longest run found by trying every subset of up to nine acts.
test('as many clocks are believed as can be, and acts never count as made before the one before them', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 6 }), { maxLength: 9 }), (days) => {
      const acts = placeActs(days.map((d, i) => ({ number: i, at: new Date(d * 86_400_000).toISOString() })));
      const believed = days.filter((_, i) => acts[i]!.clockBelieved);
      expect(believed).toEqual(believed.toSorted((a, b) => a - b));
      expect(believed.length).toBe(longestByTrying(days));
      const counts = acts.map((act) => act.countsAtMs);
      expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    }),
    { seed: 5, numRuns: 300 },
  );
});

function longestByTrying(days: readonly number[]): number {
  let longest = 0;
  for (let set = 0; set < 2 ** days.length; set++) {
    const chosen = days.filter((_, i) => set & (1 << i));
    if (chosen.every((d, i) => i === 0 || chosen[i - 1]! <= d)) longest = Math.max(longest, chosen.length);
  }
  return longest;
}
