import { expect, test } from 'vitest';
import j1 from '../../../test/vectors/j1_diversity.json' with { type: 'json' };
import { allNear, near } from '../../maths/nearness.ts';
import { hillNumbers, hillNumbersAt } from './hill-numbers.ts';
import { speciesAmongAnimals, speciesAtStations } from './rarefaction.ts';
import { unseenSpecies } from './unseen-species.ts';

const { expected, tolerance_relative: tolerance } = j1;
const { matrix } = j1.data;
const { pooled } = expected;

// Authority: vector j1 (R 4.2.2, vegan 2.6-4) for the numbers of the first four tests.
test('Hill numbers of six stations taken together', () => {
  const found = hillNumbers(pooled)!;
  allNear([found.order0, found.order1, found.order2], expected.hill_q012, tolerance);
});

test('species among fewer animals, with their standard error', () => {
  expected.rarefy_m.forEach((animals, i) => {
    const found = speciesAmongAnimals(pooled, animals)!;
    near(found.species, expected.rarefy_S[i]!, tolerance);
    near(found.standardError, expected.rarefy_se[i]!, tolerance);
  });
});

test('species at one to six stations, the empty station being one of them', () => {
  expected.accum_sites.forEach((stations, i) => {
    const found = speciesAtStations(matrix, stations)!;
    near(found.species, expected.accum_richness[i]!, tolerance);
  });
});

// Authority: every choice of 2, 3 and 4 of the six stations counted out. vegan prints 1.070, 0.610 and 0.431: its
// spread takes the correlation of two species from single stations, which is exact for one station and for all but one.
test('the spread over stations is that of all choices of stations', () => {
  [Math.SQRT2, 0.97979589711327, 0.6538348415311, 0.49888765156986, 0.37267799624997].forEach((spread, i) => {
    near(speciesAtStations(matrix, i + 1)!.standardError, spread, 1e-9);
  });
});

test('species that are there at least', () => {
  const found = unseenSpecies(pooled)!;
  near(found.atLeast, expected.chao1, tolerance);
  near(found.standardError, expected.se_chao1, tolerance);
  // One species met once adds nothing: no interval, and no claim that nothing was missed.
  expect(found.interval).toBeNull();
});

// Second way: order 0 at fewer animals is Hurlbert's rarefaction.
test('the expected species of the Hill numbers are those of rarefaction', () => {
  for (const animals of [1, 10, 50, 86]) {
    near(hillNumbersAt(pooled, animals)!.order0, speciesAmongAnimals(pooled, animals)!.species, 1e-9);
  }
});

// By hand: one animal is one species, however it is weighed.
test('one animal is one species in every order', () => {
  const found = hillNumbersAt(pooled, 1)!;
  allNear([found.order0, found.order1, found.order2], [1, 1, 1], 1e-12);
});

// By hand: f1 = 4, f2 = 1: 7 + 4 × 3 / (2 × 2) = 10; gradient 7/4 and −12/8;
// variance 49/16 × 4 + 9/4 × 1 − (7 − 1.5)² / 10 = 12.25 + 2.25 − 3.025 = 11.475.
test('four species met once and one twice: three more at least', () => {
  const found = unseenSpecies([1, 1, 1, 1, 2, 8, 30])!;
  near(found.atLeast, 10, 1e-12);
  near(found.standardError, Math.sqrt(11.475), 1e-12);
  expect(found.interval![0]).toBeGreaterThan(7);
});

test('nothing counted, or more asked than found, has no answer', () => {
  expect(hillNumbers([0, 0])).toBeNull();
  expect(unseenSpecies([])).toBeNull();
  expect(speciesAmongAnimals([3, 1], 5)).toBeNull();
  expect(speciesAtStations([[1, 0]], 2)).toBeNull();
});

// By hand: of six stations five have something; one station on average (3·4 …)/6 = 3 species with the empty one,
// 3.6 without it.
test('leaving out the empty station would raise what one station shows', () => {
  near(speciesAtStations(matrix, 1)!.species, 3, 1e-12);
  near(speciesAtStations(matrix.slice(0, 5), 1)!.species, 3.6, 1e-12);
});
