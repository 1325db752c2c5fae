import { expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { asWideAsByChance } from './as-wide-by-chance.ts';

const rich = [1, 1, 1, 1];
const poor = [1, 0, 0, 0];

// By hand: 4 rich and 4 poor stations; a range of 3 needs all rich ones on one side: 2 of C(8,4) = 70 deals, 0.029.
test('four rich stations beside four poor ones are hardly dealt by chance', () => {
  const share = asWideAsByChance([Array(4).fill(rich), Array(4).fill(poor)])!;
  expect(share).toBeGreaterThan(0.01);
  expect(share).toBeLessThan(0.05);
});

// By hand: every deal gives a range of 0, as wide as the one found.
test('scopes that are alike are parted as widely by every deal', () => {
  near(asWideAsByChance([Array(3).fill(rich), Array(5).fill(rich)]), 1, 1e-12);
});

test('one scope has nothing to be set against', () => {
  expect(asWideAsByChance([[rich]])).toBeNull();
});
