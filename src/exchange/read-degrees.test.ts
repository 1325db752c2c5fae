import { describe, expect, it } from 'vitest';
import { cellReader } from './read-cell.ts';
import { alternativeOf } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

const columnOf = (name: string) => tableDefinitions.stations.columns.find(({ column }) => column === name)!;
const latitude = cellReader(columnOf('latitude'));
const longitude = cellReader(columnOf('longitude'));
const northHalf = cellReader(alternativeOf(columnOf('latitude'))!);
const eastHalf = cellReader(alternativeOf(columnOf('longitude'))!);

describe('a coordinate in a column of its own', () => {
  // Authority: by hand, 45.30 / 60 = 0.755 and 45 / 60 + 18 / 3600 = 0.755.
  it.each([
    ['-17.755'],
    ['17.755 S'],
    ['S 17,755'],
    ['-17,755'],
    ['17 45.30 S'],
    ['17 45,30 S'],
    ['17° 45.300′ S'],
    ['S17°45.30'],
    ['-17 45.3'],
    ['17°45\'18" S'],
    ['17º 45’ 18.0” south'],
  ])('is the same place written as %s, without a question', (text) => {
    expect(latitude(text)).toEqual({ value: -17.755, refusal: null });
  });

  it('is asked about where something was taken for granted, and keeps its value', () => {
    expect(latitude('17 45.30')).toMatchObject({
      value: 17.755,
      refusal: { code: 'coordinates-no-hemisphere', keepsValue: true, parameters: { column: 'latitude' } },
    });
    expect(latitude('-17 45.30 S').refusal).toMatchObject({ code: 'coordinates-sign-and-letter' });
    expect(longitude('177 E').refusal).toMatchObject({ code: 'coordinates-whole-degrees' });
    expect(latitude('1745.30 S').refusal).toMatchObject({ code: 'coordinates-joined-minutes' });
  });

  it('of three whole numbers may have decimal minutes: asked, with what it would be', () => {
    expect(latitude('17 45 30 S')).toMatchObject({
      value: -17.75833333,
      refusal: { code: 'coordinates-seconds-or-decimals', suggestion: '17 45.30 S', keepsValue: true },
    });
    const both = latitude('17 45 30').refusal!;
    expect([both, ...both.also!].map(({ code }) => code)).toEqual([
      'coordinates-no-hemisphere',
      'coordinates-seconds-or-decimals',
    ]);
  });

  it.each([
    ['17 45 75 S', 'coordinates-minutes-out-of-range', '17 45.75 S'],
    ['17 75 30 S', 'coordinates-minutes-out-of-range', null],
    ['17 75.30 S', 'coordinates-minutes-out-of-range', null],
    ['-17 45.30 N', 'coordinates-sign-against-letter', null],
    ['17 45.30 E', 'coordinates-letters-do-not-fit', null],
    ['97 45.30 S', 'coordinates-degrees-out-of-range', null],
    ['17.5 30 S', 'coordinates-fraction-before-last-part', null],
  ])('is refused where it has two meanings or none: %s', (text, code, suggestion) => {
    expect(latitude(text)).toMatchObject({ value: null, refusal: { code, suggestion } });
  });

  it('is no position where a number column would have said so: words, ranges, decimals beyond 90', () => {
    expect(latitude('not recorded').refusal).toMatchObject({ code: 'not-a-number' });
    expect(latitude('station 5').refusal).toMatchObject({ code: 'not-a-number' });
    expect(latitude('12-14').refusal).toMatchObject({ code: 'number-approximate' });
    expect(latitude('128.5').refusal).toMatchObject({ code: 'number-out-of-range' });
  });
});

describe('a position in one cell', () => {
  it.each([
    ['17 45.30 S 177 24.00 E'],
    ['177 24.00 E; 17 45.30 S'],
    ['-17.755, 177.4'],
    ['17,755 S; 177,4 E'],
    ['S17°45\'18" E177°24\'00"'],
  ])('fills both columns: %s', (text) => {
    expect([northHalf(text), eastHalf(text)]).toEqual([
      { value: -17.755, refusal: null },
      { value: 177.4, refusal: null },
    ]);
  });

  it('in UTM needs zone and band; without the band it is refused', () => {
    // Authority: PROJ 9 (cs2cs, EPSG:32756 to EPSG:4326): -17.770052035, 151.439454414.
    expect(northHalf('56K 334567 8034567').value).toBeCloseTo(-17.770052035, 7);
    expect(eastHalf('56K 334567 8034567').value).toBeCloseTo(151.439454414, 7);
    expect(northHalf('56 334567 8034567').refusal).toMatchObject({
      code: 'coordinates-utm-without-hemisphere',
    });
  });

  it('with longitude first is refused with the two exchanged', () => {
    expect(northHalf('177.4, -17.755').refusal).toMatchObject({
      code: 'coordinates-degrees-out-of-range',
      suggestion: '17° 45.300′ S, 177° 24.000′ E',
    });
  });
});
