import { expect, test } from 'vitest';
import {
  formatCount,
  formatInterval,
  formatShare,
  formatShort,
  formatSignificant,
  formatStockInWords,
} from './numbers.ts';

test('a density is shown to two or three significant digits, and never as an exponent', () => {
  // by hand: rounding to the digits named; thousands parted by U+202F
  const cases: readonly (readonly [number, 2 | 3, string])[] = [
    [0, 3, '0'],
    [1483.2, 3, '1\u202f480'],
    [1483.2, 2, '1\u202f500'],
    [12.34, 3, '12.3'],
    [5, 3, '5.00'],
    [0.0456, 2, '0.046'],
    [9.996, 3, '10.0'],
    [999.6, 3, '1\u202f000'],
    [-62.7, 2, '−63'],
    [0.00004, 3, '< 0.001'],
    [1e21, 3, '1\u202f000\u202f000\u202f000\u202f000\u202f000\u202f000\u202f000'],
  ];
  for (const [value, digits, expected] of cases) expect(formatSignificant(value, digits)).toBe(expected);
});

test('a number that is not finite is a mistake of ours and never printed', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => formatSignificant(value)).toThrow('finite');
    expect(() => formatCount(value)).toThrow('finite');
    expect(() => formatShare(value)).toThrow('finite');
  }
});

test('a share near nothing or near all is not rounded into nothing or all', () => {
  expect(formatShare(0)).toBe('0\u00a0%');
  expect(formatShare(0.004)).toBe('< 1\u00a0%');
  expect(formatShare(0.375)).toBe('38\u00a0%');
  expect(formatShare(0.997)).toBe('> 99\u00a0%');
  expect(formatShare(1)).toBe('100\u00a0%');
});

test('counts are written in full and stocks in words people say', () => {
  expect(formatCount(10_080)).toBe('10\u202f080');
  expect(formatShort(145)).toBe('145');
  expect(formatShort(0.2)).toBe('0.2');
  expect(formatShort(97.5)).toBe('97.5');
  expect(formatStockInWords(1_234_000)).toBe('1.2\u00a0million');
  expect(formatStockInWords(45_200)).toBe('45\u202f000');
  expect(formatInterval([820.4, 2904])).toBe('820\u00a0to\u00a02\u202f900');
});

test('in French the decimal mark is a comma and the ends of an interval are joined by à', () => {
  expect(formatSignificant(5.9439, 2, 'fr')).toBe('5,9');
  expect(formatSignificant(0.00004, 3, 'fr')).toBe('< 0,001');
  expect(formatShort(0.25, 'fr')).toBe('0,25');
  expect(formatShort(1480, 'fr')).toBe('1\u202f480');
  expect(formatInterval([820.4, 2914], 2, 'fr')).toBe('820\u00a0à\u00a02\u202f900');
  // By the rule of French grammar the plural begins at two: 1,2 million, 5,5 millions.
  expect(formatStockInWords(1_234_000, 'fr')).toBe('1,2\u00a0million');
  expect(formatStockInWords(5_500_000, 'fr')).toBe('5,5\u00a0millions');
});
