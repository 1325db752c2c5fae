import { describe, expect, test } from 'vitest';
import h1 from '../../../test/vectors/h1_halton.json' with { type: 'json' };
import { allNear, near } from '../../maths/nearness.ts';
import { seededRandom } from '../../maths/random.ts';
import type { Position } from '../../survey/map-area.ts';
import { areaFunction, equalAreaPosition } from './equal-area.ts';
import type { DrawGround } from './ground.ts';
import { radicalInverse } from './halton.ts';
import { orderedPositions } from './ordered-positions.ts';

const { data, expected, tolerance_relative: tolerance } = h1;

describe('the Halton sequence', () => {
  // Authority: vector h1 (R, own code; Halton 1960).
  test('mirrors the digits of 1, 2, 3 in bases 2 and 3, from any start', () => {
    const run = (from: number, n: number, base: number) =>
      Array.from({ length: n }, (_, i) => radicalInverse(from + i, base));
    allNear(run(1, data.n, 2), expected.x, tolerance);
    allNear(run(1, data.n, 3), expected.y, tolerance);
    allNear(run(data.u1, 10, 2), expected.x_seeded, tolerance);
    allNear(run(data.u2, 10, 3), expected.y_seeded, tolerance);
  });
});

describe('equal areas', () => {
  // Authority: Snyder 1987 (from memory): area of a zone of WGS84 is b^2 times the function times the longitude; the
  // whole ellipsoid has 510 065 621.724 km2 (from memory, GeographicLib).
  test('add up to the whole earth', () => {
    const polarRadiusM = 6_356_752.314_245;
    const whole = 2 * Math.PI * polarRadiusM ** 2 * areaFunction(90);
    near(whole / 1e6, 510_065_621.724, 1e-9);
  });

  test('put the middle of a frame nearer to the equator than its middle latitude', () => {
    const place = equalAreaPosition({ southDeg: -20, northDeg: -10, westDeg: 179, eastDeg: 181 });
    const middle = place(0.75, 0.5);
    expect(middle.latitudeDeg).toBeGreaterThan(-15);
    near(middle.longitudeDeg, -179.5, 1e-12);
  });
});

/** Two bars with a wide gap between them; the eastern one is twice as long. */
const frame = { southDeg: -17, northDeg: -16.9, westDeg: 178, eastDeg: 178.1 };
const ground: DrawGround = {
  box: frame,
  contains: ({ longitudeDeg }) => longitudeDeg < 178.01 || longitudeDeg > 178.08,
};
const isWest = (position: Position) => position.longitudeDeg < 178.05;

describe('an ordered list of positions', () => {
  test('lies on the ground, and repeats itself from its seed', () => {
    const run = (seed: number) => {
      const next = orderedPositions(ground, seededRandom(seed));
      return Array.from({ length: 40 }, () => next()!);
    };
    expect(run(2026).every((position) => ground.contains(position))).toBe(true);
    expect(run(2026)).toEqual(run(2026));
    expect(run(2027)).not.toEqual(run(2026));
  });

  // Authority: by hand: the western bar is a third of the ground. 3000 draws: standard error 0.0086; allowed four of them.
  test.each([1, 2, 5])('gives station %i of the list the same chance everywhere', (which) => {
    let west = 0;
    for (let seed = 0; seed < 3000; seed++) {
      const next = orderedPositions(ground, seededRandom(seed));
      let position = next()!;
      for (let i = 1; i < which; i++) position = next()!;
      west += Number(isWest(position));
    }
    expect(Math.abs(west / 3000 - 1 / 3)).toBeLessThan(0.035);
  });

  // Authority: by hand: weights 4 on the western third and 1 elsewhere give it 4/(4 + 2) of the stations.
  test('follows unequal chances', () => {
    let west = 0;
    const weight = { at: (position: Position) => (isWest(position) ? 4 : 1), greatest: 4 };
    for (let seed = 0; seed < 300; seed++) {
      const next = orderedPositions(ground, seededRandom(seed), weight);
      for (let i = 0; i < 10; i++) west += Number(isWest(next()!));
    }
    expect(Math.abs(west / 3000 - 2 / 3)).toBeLessThan(0.03);
  });

  test('ends with null on ground that cannot be found', () => {
    const nowhere = { box: frame, contains: () => false };
    expect(orderedPositions(nowhere, seededRandom(1))()).toBeNull();
  });
});
