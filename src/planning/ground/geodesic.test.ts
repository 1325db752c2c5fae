import { describe, expect, test } from 'vitest';
import l1 from '../../../test/vectors/l1_geodesic.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { angleBetweenDeg, courseBetween, distanceBetweenM, fullCircle, positionAfter } from './geodesic.ts';

const { data, expected, tolerance_relative: tolerance } = l1;
const rows = data.rows.lat1.map((latitudeDeg, i) => ({
  from: { latitudeDeg, longitudeDeg: data.rows.lon1[i]! },
  to: { latitudeDeg: data.rows.lat2[i]!, longitudeDeg: data.rows.lon2[i]! },
  bearingDeg: data.rows.azi1[i]!,
  arrivalBearingDeg: data.rows.azi2[i]!,
  distanceM: data.rows.s12[i]!,
}));
const at = ([latitudeDeg, longitudeDeg]: readonly number[]) => ({
  latitudeDeg: latitudeDeg!,
  longitudeDeg: longitudeDeg!,
});

describe('the shortest way on the ellipsoid', () => {
  // Authority: vector l1, rows of Karney's GeodTest set (Karney 2013; read in the GeographicLib test suite).
  test.each(rows)('is $distanceM m for the published row', (row) => {
    const course = courseBetween(row.from, row.to);
    near(course.distanceM, row.distanceM, tolerance);
    expect(angleBetweenDeg(course.bearingDeg, row.bearingDeg)).toBeLessThan(1e-9);
    expect(angleBetweenDeg(course.arrivalBearingDeg, row.arrivalBearingDeg)).toBeLessThan(1e-9);
  });

  // The same rows read the other way: bearing and distance give the far end.
  test.each(rows)('leads to the far end after $distanceM m', (row) => {
    const end = positionAfter(row.from, row);
    expect(distanceBetweenM(end, row.to)).toBeLessThan(1e-6);
  });

  // Authority: vector l1, Flinders Peak to Buninyong (national geodesy agency's example, on GRS80; to the millimetre).
  test('is 54 972.271 m from Flinders Peak to Buninyong', () => {
    const from = at([data.flinders.lat1, data.flinders.lon1]);
    const to = at([data.flinders.lat2, data.flinders.lon2]);
    const course = courseBetween(from, to);
    expect(Math.abs(course.distanceM - expected.flinders_s)).toBeLessThan(0.0005);
    near(course.distanceM, expected.flinders_s_wgs84_computed, tolerance);
    // The example is written to a hundredth of a second of arc: 2.8e-6 degrees.
    expect(angleBetweenDeg(course.bearingDeg, expected.flinders_azi)).toBeLessThan(2.8e-6);
    expect(angleBetweenDeg(course.arrivalBearingDeg + 180, expected.flinders_rev_azi)).toBeLessThan(2.8e-6);
  });

  // Authority: vector l1 (R geosphere).
  test('is right over the few hundred metres of a reef', () => {
    near(distanceBetweenM(at(data.local.p1), at(data.local.p2)), expected.local_d12_m, tolerance);
    near(distanceBetweenM(at(data.local.p1), at(data.local.p3)), expected.local_d13_m, tolerance);
  });

  // Invariance: the date line is no obstacle.
  test('crosses the date line like any other meridian', () => {
    const here = distanceBetweenM(at([-17, 179.9]), at([-17, -179.9]));
    near(here, distanceBetweenM(at([-17, 10]), at([-17, 10.2])), 1e-12);
  });
});

// By hand: from 350 to 10 degrees it is 20 degrees, not 340.
test('bearings are compared the short way round', () => {
  near(angleBetweenDeg(350, 10), 20, 1e-12);
  near(angleBetweenDeg(10, 190), 180, 1e-12);
  expect(fullCircle(-90)).toBe(270);
  expect(fullCircle(360)).toBe(0);
});
