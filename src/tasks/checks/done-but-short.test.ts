import { expect, test } from 'vitest';
import { check } from './done-but-short.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

const short = (belt: { status?: 'partial'; reason?: string; lengthM: number }) =>
  foundBy(check, (sketch) => Object.assign(transectAt(sketch, 'S2', '1'), belt));

test('a short belt that is marked done is asked about, a declared one is not', () => {
  expect(short({ lengthM: 25 })).toMatchObject([{ place: { station: 'S2' }, value: 25, suggestion: null }]);
  expect(short({ lengthM: 4 })).toMatchObject([{ suggestion: '40' }]);
  expect(short({ lengthM: 25, status: 'partial' })).toEqual([]);
  expect(short({ lengthM: 25, reason: 'sand' })).toEqual([]);
  expect(short({ lengthM: 39 })).toEqual([]);
});
