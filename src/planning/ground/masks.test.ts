import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { commonGround, groundWithout, joinedGround } from './area-sets.ts';
import { areaHaOf, areaSize } from './area-size.ts';
import { groundIndex } from './inside.ts';
import { withoutMasks } from './masks.ts';
import { boxArea, wavyArea } from './test-areas.ts';

const reef = boxArea(179.95, -17.1, 180.05, -17);
const errorHa = areaSize(reef).edgeErrorHa;

describe('ground without its masks', () => {
  const islet = boxArea(-180, -17.06, -179.98, -17.04);
  const tabu = boxArea(-179.99, -17.08, -179.9, -17.02);
  const result = withoutMasks(reef, [
    { name: 'islet', why: 'land', area: islet },
    { name: 'closed by the village', why: 'closed', area: tabu },
  ]);

  // Second way: boxes measured one by one; 180.0 to 180.02 is all land, 180.01 to 180.05 is closed, 180.01 to 180.02 both.
  test('adds up, across the date line', () => {
    const bothHa = areaHaOf(boxArea(-179.99, -17.06, -179.98, -17.04));
    const closedHa = areaHaOf(boxArea(-179.99, -17.08, -179.95, -17.02)) - bothHa;
    expect(result.dropped.map(({ name }) => name)).toEqual(['islet', 'closed by the village']);
    expect(Math.abs(result.dropped[0]!.areaHa - areaHaOf(islet))).toBeLessThan(2 * errorHa);
    expect(Math.abs(result.dropped[1]!.areaHa - closedHa)).toBeLessThan(2 * errorHa);
    near(result.leftHa + result.dropped[0]!.areaHa + result.dropped[1]!.areaHa, result.wholeHa, 1e-12);
    // By hand: an edge of 10.6 km along 17 S encloses 10 600^3 tan 17 / (12 x 6 371 000) = 0.48 ha with its geodesic; there are two.
    expect(result.errorHa).toBeLessThan(1.2);
  });

  test('holds no masked position', () => {
    const { contains } = groundIndex(result.area)!;
    expect(contains({ latitudeDeg: -17.05, longitudeDeg: -179.99 })).toBe(false);
    expect(contains({ latitudeDeg: -17.05, longitudeDeg: 180.03 })).toBe(false);
    expect(contains({ latitudeDeg: -17.09, longitudeDeg: 180.03 })).toBe(true);
    expect(contains({ latitudeDeg: -17.05, longitudeDeg: 179.97 })).toBe(true);
  });

  test('can be nothing at all', () => {
    const all = withoutMasks(reef, [{ name: 'deep', why: 'too deep', area: boxArea(179, -18, -179, -16) }]);
    expect(all.area.parts).toEqual([]);
    expect(all.leftHa).toBe(0);
    near(all.dropped[0]!.areaHa, all.wholeHa, 1e-12);
  });

  test('is untouched by a mask elsewhere', () => {
    const far = withoutMasks(reef, [{ name: 'far', why: 'land', area: boxArea(10, -17.1, 10.1, -17) }]);
    near(far.leftHa, far.wholeHa, 1e-12);
  });
});

// Invariance: what two areas share and what is left of each make up their union.
test('common ground and the rest make up the whole', () => {
  const a = wavyArea(1500, { latitudeDeg: -17, longitudeDeg: 179.95 }, 0.1);
  const b = wavyArea(1500, { latitudeDeg: -17, longitudeDeg: -179.95 }, 0.1);
  const commonHa = areaHaOf(commonGround(a, b));
  expect(commonHa).toBeGreaterThan(1000);
  const restHa = areaHaOf(groundWithout(a, [b])) + areaHaOf(groundWithout(b, [a]));
  // New corners where borders cross: the stated error of the two borders is all that may be between.
  const allowedHa = areaSize(a).edgeErrorHa + areaSize(b).edgeErrorHa;
  expect(allowedHa).toBeLessThan(1e-4 * commonHa);
  expect(Math.abs(areaHaOf(joinedGround([a, b])) - commonHa - restHa)).toBeLessThan(allowedHa);
  expect(Math.abs(areaHaOf(a) + areaHaOf(b) - 2 * commonHa - restHa)).toBeLessThan(allowedHa);
});
