import { describe, expect, it } from 'vitest';
import { readAmount, readStrata } from './written-lines.ts';

describe('strata as they are written, one on each line', () => {
  it('name, then area, with point or comma', () => {
    const { lines, unread } = readStrata('reef flat, 420,5\n lagoon;12.25 ha\n\nouter terrace\t1 200\nslope');
    expect(unread).toEqual([]);
    expect(lines).toEqual([
      { name: 'reef flat', areaHa: 420.5 },
      { name: 'lagoon', areaHa: 12.25 },
      { name: 'outer terrace', areaHa: 1200 },
      { name: 'slope', areaHa: null },
    ]);
  });

  it('an area that could be two numbers, or none, is asked about and not taken', () => {
    const { unread } = readStrata('flat, 1,200\nlagoon, about 5\nslope, 0\nreef, -3');
    expect(unread.map(({ line, text }) => [line, text])).toEqual([
      [1, '1,200'],
      [2, 'about 5'],
      [3, '0'],
      [4, '-3'],
    ]);
  });

  it('two strata of one name are asked about', () => {
    expect(readStrata('flat, 3\nFlat, 4').unread).toEqual([{ line: 2, text: 'Flat', why: 'twice' }]);
  });

  it('an amount is a plain number', () => {
    expect(['2', '1,5', '1.5', '0,250', '10 000'].map(readAmount)).toEqual([2, 1.5, 1.5, 0.25, 10000]);
    expect(['', 'x', '1.200', '1,200,000', '5 m', '1e3'].map(readAmount)).toEqual(Array(6).fill(null));
  });
});
