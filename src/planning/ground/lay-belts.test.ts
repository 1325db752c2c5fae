import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { beltsInside } from './belts-inside.ts';
import { angleBetweenDeg, courseBetween, distanceBetweenM, positionAfter } from './geodesic.ts';
import { groundIndex } from './inside.ts';
import { bearingsFromTurns, layBelts } from './lay-belts.ts';
import { boxArea } from './test-areas.ts';

const start = { latitudeDeg: -17.75, longitudeDeg: 177.4 };
const series = { transects: 6, lengthM: 40, gapM: 10 };

describe('six belts of 40 m with gaps of 10 m', () => {
  const belts = layBelts(start, series, [102.8]);

  // By hand: 6 x 40 m and 5 x 10 m are 290 m on one line.
  test('reach 290 m from start to end, each belt and gap its length', () => {
    expect(belts.map(({ transect }) => transect)).toEqual([1, 2, 3, 4, 5, 6]);
    for (const belt of belts) near(distanceBetweenM(belt.start, belt.end), 40, 1e-9);
    for (let i = 1; i < 6; i++) near(distanceBetweenM(belts[i - 1]!.end, belts[i]!.start), 10, 1e-8);
    const whole = courseBetween(start, belts[5]!.end);
    near(whole.distanceM, 290, 1e-9);
    expect(angleBetweenDeg(whole.bearingDeg, 102.8)).toBeLessThan(0.001);
  });

  // A steady compass course against one geodesic: by hand 290^2 tan(17.75) / (8 x 6.37e6) = 0.5 mm bulge, 2 mm at the end.
  test('end within centimetres of one geodesic of 290 m', () => {
    const straight = positionAfter(start, { bearingDeg: 102.8, distanceM: 290 });
    expect(distanceBetweenM(straight, belts[5]!.end)).toBeLessThan(0.01);
  });

  test('cross the date line', () => {
    const [first] = layBelts({ latitudeDeg: -17, longitudeDeg: 179.9999 }, series, [90]);
    expect(first!.end.longitudeDeg).toBeLessThan(-179.9);
    near(distanceBetweenM(first!.start, first!.end), 40, 1e-9);
  });
});

describe('belts along a bending contour', () => {
  // By hand: two belts of 40 m at right angles with a gap of 10 m on the new bearing: the end is 40 m north and 50 m east.
  test('turn at the end of a belt and swim the gap on the new bearing', () => {
    const [first, second] = layBelts(start, { ...series, transects: 2 }, bearingsFromTurns(0, [90]));
    near(courseBetween(start, second!.end).distanceM, Math.hypot(40, 50), 1e-6);
    near(courseBetween(first!.end, second!.start).distanceM, 10, 1e-8);
    near(courseBetween(first!.end, second!.start).bearingDeg, 90, 1e-6);
  });

  // By hand: six turns of 60 degrees without gaps close a hexagon.
  test('that turn 60 degrees each come back to the start', () => {
    const hexagon = layBelts(start, { ...series, gapM: 0 }, bearingsFromTurns(350, [60, 60, 60, 60, 60]));
    expect(distanceBetweenM(hexagon[5]!.end, start)).toBeLessThan(0.01);
    expect(hexagon[1]!.bearingDeg).toBe(50);
  });

  test('need one bearing or one for each belt', () => {
    expect(() => layBelts(start, series, [1, 2])).toThrow('requires 1 or 6 bearings');
  });
});

// By hand: heading east from 100 m before the border, belts lie at 0-40, 50-90 and 100-140: the third begins outside.
test('the share inside is told in metres for each belt', () => {
  const border = positionAfter(start, { bearingDeg: 90, distanceM: 100 }).longitudeDeg;
  const { contains } = groundIndex(boxArea(177.3, -17.8, border, -17.7))!;
  const belts = layBelts(start, series, [90]);
  const inside = beltsInside(belts, 40, { contains, stepM: 0.5 });
  expect(inside.belts.map(({ insideM }) => insideM)).toEqual([40, 40, 0, 0, 0, 0]);
  expect(inside).toMatchObject({ laidM: 240, insideM: 80 });
  near(inside.share, 1 / 3, 1e-12);
  // By hand: from 80 m before the border the second belt (50-90) is cut after 30 m.
  const later = positionAfter(start, { bearingDeg: 90, distanceM: 20 });
  const cut = beltsInside(layBelts(later, series, [90]), 40, { contains, stepM: 0.5 });
  expect(Math.abs(cut.belts[1]!.insideM - 30)).toBeLessThanOrEqual(0.5);
});
