import { expect, test } from 'vitest';
import { densityAxis } from './density-axis.ts';

test('zero, 5 and 5000 animals per hectare each have their own place on one axis', () => {
  const axis = densityAxis({ highestPerHa: 6000, animalPerHa: 1 });
  expect(axis.at(0)).toBe(0);
  // by hand: ln(1 + 5) / ln(1 + 7000) = 1.7918 / 8.8538; ln(1 + 5000) / ln(1 + 7000) = 8.5174 / 8.8538
  expect(axis.at(5)).toBeCloseTo(0.2024, 3);
  expect(axis.at(5000)).toBeCloseTo(0.962, 3);
  expect(axis.ticksPerHa).toEqual([0, 1, 10, 100, 1000]);
  expect(densityAxis({ highestPerHa: 900, animalPerHa: 1 }).ticksPerHa).toEqual([
    0, 1, 3, 10, 30, 100, 300, 1000,
  ]);
});

test('beyond its even end equal steps of the axis multiply', () => {
  const axis = densityAxis({ highestPerHa: 10_000, animalPerHa: 1 });
  // invariance: a factor of ten is as wide anywhere far from zero
  expect(axis.at(1000) - axis.at(100)).toBeCloseTo(axis.at(10_000) - axis.at(1000), 2);
});
