import { expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { beltsInside } from './belts-inside.ts';
import { positionAfter } from './geodesic.ts';
import { groundIndex } from './inside.ts';
import { layBelts } from './lay-belts.ts';
import { areaOf } from './test-areas.ts';

const start = { latitudeDeg: -17.75, longitudeDeg: 177.4 };
const place = (eastM: number, northM: number) =>
  positionAfter(positionAfter(start, { bearingDeg: 90, distanceM: eastM }), {
    bearingDeg: 0,
    distanceM: northM,
  });
/** 400 m from west to east; the southern border lies so many metres south of the belts at their start and end. */
const ground = (atStartM: number, atEndM: number) =>
  groundIndex(
    areaOf([place(-5, -atStartM), place(105, -atEndM), place(105, 50), place(-5, 50), place(-5, -atStartM)]),
  )!;
const belts = layBelts(start, { transects: 1, lengthM: 100, gapM: 0 }, [90]);
const share = (atStartM: number, atEndM: number, widthM: number | null) =>
  beltsInside(belts, 100, { contains: ground(atStartM, atEndM).contains, stepM: 0.5, widthM }).share;

// By hand: the border 0.9 m beside the line leaves the line inside and the edge of a belt 2 m wide (1 m) outside.
test('a belt whose edge hangs over the border is not inside, though its middle line is', () => {
  expect(share(0.9, 0.9, null)).toBe(1);
  expect(share(0.9, 0.9, 2)).toBe(0);
  expect(share(1.1, 1.1, 2)).toBe(1);
});

// By hand: from 2 m to 0 m beside the line over 110 m, 1 m is passed at 55 m, which is 50 m from the start.
test('a slanting border leaves the part of the belt that is wholly inside', () => {
  near(share(2, 0, 2), 0.5, 0.02);
});
