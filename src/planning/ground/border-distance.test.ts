import { expect, test } from 'vitest';
import { borderDistanceM } from './border-distance.ts';
import { distanceBetweenM } from './geodesic.ts';
import { areaOf, boxArea, wavyArea } from './test-areas.ts';

const box = boxArea(177, -17.1, 177.1, -17);

test('from outside and inside it is the straight way to the nearest edge', () => {
  // By hand: 0.01 degree of latitude north of the northern edge, 0.01 south of it; the geodesic along the meridian.
  const wantedM = distanceBetweenM(
    { latitudeDeg: -17, longitudeDeg: 177.05 },
    { latitudeDeg: -16.99, longitudeDeg: 177.05 },
  );
  expect(borderDistanceM(box, { latitudeDeg: -16.99, longitudeDeg: 177.05 })).toBeCloseTo(wantedM, 1);
  expect(borderDistanceM(box, { latitudeDeg: -17.01, longitudeDeg: 177.05 })).toBeCloseTo(wantedM, 0);
});

test('past a corner it is the way to the corner', () => {
  const place = { latitudeDeg: -16.99, longitudeDeg: 177.11 };
  expect(borderDistanceM(box, place)).toBeCloseTo(
    distanceBetweenM(place, { latitudeDeg: -17, longitudeDeg: 177.1 }),
    3,
  );
});

test('the border of a hole is a border', () => {
  const holed = areaOf(box.parts[0]!.outer, boxArea(177.04, -17.06, 177.06, -17.04).parts[0]!.outer);
  const place = { latitudeDeg: -17.05, longitudeDeg: 177.05 };
  expect(borderDistanceM(holed, place)).toBeLessThan(1200);
  expect(borderDistanceM(box, place)).toBeGreaterThan(5000);
});

test('the date line is a meridian like any other', () => {
  // Authority: invariance. The same shape 3 degrees west of the date line.
  const place = { latitudeDeg: -17.2, longitudeDeg: -179.95 };
  const here = borderDistanceM(wavyArea(300, { latitudeDeg: -17, longitudeDeg: 180 }, 0.1), place)!;
  const there = borderDistanceM(wavyArea(300, { latitudeDeg: -17, longitudeDeg: 177 }, 0.1), {
    ...place,
    longitudeDeg: 177.05,
  });
  expect(here).toBeCloseTo(there!, 3);
});

test('no border, no distance', () => {
  expect(borderDistanceM({ parts: [] }, { latitudeDeg: 0, longitudeDeg: 0 })).toBeNull();
});
