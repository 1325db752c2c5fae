import { expect, test } from 'vitest';
import { roughDistanceM } from './distance-on-earth.ts';

const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
const dms = (d: number, m: number, s: number) => d + m / 60 + s / 3600;

test('a long base line of a national survey comes out within one part in ten thousand', () => {
  // Published example of Vincenty's formula (read in METHODS l): 54 972.271 m.
  const from = at(-dms(37, 57, 3.7203), dms(144, 25, 29.5244));
  const to = at(-dms(37, 39, 10.1561), dms(143, 55, 35.3839));
  expect(Math.abs(roughDistanceM(from, to) / 54_972.271 - 1)).toBeLessThan(1e-4);
});

test('17.750 S and 17.570 S are 19.9 km apart, 45.30 minutes and 45 minutes 30 seconds 369 m', () => {
  // JOB scenario 7, computed there with a geodesic library.
  expect(roughDistanceM(at(-17.75, 177.4), at(-17.57, 177.4)) / 1000).toBeCloseTo(19.9, 1);
  expect(roughDistanceM(at(-(17 + 45.3 / 60), 177.4), at(-dms(17, 45, 30), 177.4))).toBeCloseTo(369, 0);
});

test('a quarter of the earth is about 10 002 km, and the date line is no obstacle', () => {
  // The metre was meant as one ten-millionth of the quarter meridian: 10 001.966 km on WGS84 (from memory).
  expect(Math.abs(roughDistanceM(at(0, 0), at(90, 0)) / 10_001_966 - 1)).toBeLessThan(0.005);
  const across = roughDistanceM(at(-17, 179.999), at(-17, -179.999));
  expect(across).toBeCloseTo(roughDistanceM(at(-17, 10), at(-17, 10.002)), 6);
});
