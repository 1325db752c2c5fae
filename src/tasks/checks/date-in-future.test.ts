import { expect, test } from 'vitest';
import { check } from './date-in-future.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const on = (date: string, today: string | null = '2026-10-01') =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S3').date = date;
    sketch.today = today;
  });

test('a day that has not come yet is asked about; today has', () => {
  expect(on('2027-09-20')).toMatchObject([{ value: '2027-09-20', parameters: { today: '2026-10-01' } }]);
  expect(on('2026-10-01')).toEqual([]);
});

test('an invented book has no today', () => {
  expect(on('2027-09-20', null)).toEqual([]);
});
