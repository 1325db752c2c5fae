import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { areaHaOf } from './area-size.ts';
import { groundIndex } from './inside.ts';
import { areaOf, boxArea, ringOf, wavyArea } from './test-areas.ts';

const at = (longitudeDeg: number, latitudeDeg: number) => ({ latitudeDeg, longitudeDeg });

describe('a position', () => {
  // By hand, on a horseshoe open to the north with an island cut out of its western arm.
  const horseshoe = areaOf(
    ringOf([0, 0], [6, 0], [6, 6], [4, 6], [4, 2], [2, 2], [2, 6], [0, 6]),
    ringOf([0.5, 3], [1.5, 3], [1.5, 4], [0.5, 4]),
  );
  test.each([
    { place: at(1, 1), inside: true, where: 'in the bend' },
    { place: at(3, 4), inside: false, where: 'between the arms' },
    { place: at(5, 5), inside: true, where: 'in the eastern arm' },
    { place: at(1, 3.5), inside: false, where: 'on the island' },
    { place: at(1, 5), inside: true, where: 'north of the island' },
    { place: at(7, 3), inside: false, where: 'east of it' },
    { place: at(-354, 5), inside: false, where: 'at 6 degrees written as -354, on its edge or beyond' },
    { place: at(-355, 5), inside: true, where: 'at 5 degrees written as -355' },
  ])('$where: $inside', ({ place, inside }) => {
    expect(groundIndex(horseshoe)!.contains(place)).toBe(inside);
  });

  test.each([
    { name: 'drawn over 180', area: boxArea(179.9, -17.1, 180.1, -17) },
    { name: 'drawn from 179.9 to -179.9', area: boxArea(179.9, -17.1, -179.9, -17) },
    {
      name: 'cut in two at 180',
      area: { parts: [...boxArea(179.9, -17.1, 180, -17).parts, ...boxArea(-180, -17.1, -179.9, -17).parts] },
    },
  ])('is found on both sides of the date line in ground $name', ({ area }) => {
    const { contains, box } = groundIndex(area)!;
    for (const longitude of [179.95, 180, -180, -179.95, 180.05])
      expect(contains(at(longitude, -17.05))).toBe(true);
    for (const longitude of [179.85, -179.85, 0]) expect(contains(at(longitude, -17.05))).toBe(false);
    near(box.eastDeg - box.westDeg, 0.2, 1e-9);
    near(box.southDeg, -17.1, 1e-12);
  });

  test('on the border of two neighbours belongs to one of them only', () => {
    const west = groundIndex(boxArea(177, -17.1, 177.1, -17))!;
    const east = groundIndex(boxArea(177.1, -17.1, 177.2, -17))!;
    const place = at(177.1, -17.05);
    expect([west.contains(place), east.contains(place)].filter(Boolean)).toHaveLength(1);
  });

  // Second way: the share of a regular grid that falls inside, against the geodesic area. 300 x 300 points: 1 part in 300 (seen: far less).
  test('falls inside as often as the area says', () => {
    const area = wavyArea(5000, at(180, -17), 0.1);
    const { contains, box } = groundIndex(area)!;
    const steps = 300;
    let inside = 0;
    for (let i = 0; i < steps; i++) {
      for (let k = 0; k < steps; k++) {
        const east = box.westDeg + ((i + 0.5) / steps) * (box.eastDeg - box.westDeg);
        const north = box.southDeg + ((k + 0.5) / steps) * (box.northDeg - box.southDeg);
        if (contains(at(east, north))) inside++;
      }
    }
    const boxHa = areaHaOf(boxArea(box.westDeg, box.southDeg, box.eastDeg, box.northDeg));
    near((inside / steps ** 2) * boxHa, areaHaOf(area), 1 / 300);
  });
});

test('ground without positions has no index', () => {
  expect(groundIndex({ parts: [] })).toBeNull();
});
