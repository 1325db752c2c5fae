import { expect, it } from 'vitest';
import { transectVariances } from './transect-variances.ts';

it('takes what transects add off the spread of station means', () => {
  // By hand: stations (0, 4), (10, 14): within (8 + 8) / 2 = 8; means 2 and 12, variance 50; between 50 - 8 / 2 = 46.
  expect(
    transectVariances([
      [
        [0, 4],
        [10, 14],
      ],
    ]),
  ).toEqual({ varianceBetween: 46, varianceWithin: 8, transects: 2 });
});

it('pools inside strata, so that rich and poor strata are no spread between stations', () => {
  const poor = [
    [0, 4],
    [10, 14],
  ];
  const rich = poor.map((station) => station.map((value) => value + 1000));
  expect(transectVariances([poor, rich])!.varianceBetween).toBeCloseTo(46, 9);
});

it('never gives a variance below zero: stations alike, transects unlike', () => {
  expect(
    transectVariances([
      [
        [0, 10],
        [10, 0],
      ],
    ])!.varianceBetween,
  ).toBe(0);
});

it('is unknown where no two stations have two transects', () => {
  expect(transectVariances([[[1], [2], [3, 4]]])).toBeNull();
});
