import { expect, test } from 'vitest';
import i1 from '../../../test/vectors/i1_double_observer.json' with { type: 'json' };
import i4 from '../../../test/vectors/i4_published_chapman.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { markedByTwo } from './marked-by-two.ts';

// Authority: vector i1 (R 4.2.2, formula of Chapman 1951 and Seber 1982).
test.each(
  i1.data.n1.map((firstSaw, i) => ({ firstSaw, secondSaw: i1.data.n2[i]!, bothSaw: i1.data.m[i]!, i })),
)('one saw $firstSaw, the other $secondSaw, both $bothSaw', ({ i, ...saw }) => {
  const found = markedByTwo(saw);
  const { expected, tolerance_relative: tolerance } = i1;
  near(found.animals, expected.Chapman[i]!, tolerance);
  near(found.standardError, expected.se[i]!, tolerance);
  near(found.interval[0], expected.log_ci_lo[i]!, tolerance);
  near(found.interval[1], expected.log_ci_hi[i]!, tolerance);
  near(found.firstDetects!, expected.p1[i]!, tolerance);
  near(found.secondDetects!, expected.p2[i]!, tolerance);
  near(found.eitherDetects!, expected.p_either[i]!, tolerance);
});

// Authority: Krebs, Box 2.1 (read in a public unit-test file): 2383, rounded; standard error by R.
test('948 marked, 421 caught, 167 of them marked: 2383 animals', () => {
  const found = markedByTwo({ firstSaw: i4.data.M, secondSaw: i4.data.n, bothSaw: i4.data.m });
  near(found.animals, i4.expected.published_chapman, i4.tolerance_relative);
  near(found.standardError, i4.expected.chapman_se, 1e-9);
});

// By hand: nobody saw anything, (1 × 1)/1 − 1 = 0; a share of nothing is unknown.
test('an empty belt has no detection to tell', () => {
  expect(markedByTwo({ firstSaw: 0, secondSaw: 0, bothSaw: 0 })).toMatchObject({
    animals: 0,
    interval: [0, 0],
    firstDetects: null,
    eitherDetects: null,
  });
});

test('more in common than one of them saw is a mistake', () => {
  expect(() => markedByTwo({ firstSaw: 3, secondSaw: 9, bothSaw: 4 })).toThrow('no more common animals');
});
