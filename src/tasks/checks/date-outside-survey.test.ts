import { expect, test } from 'vitest';
import { check } from './date-outside-survey.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const on = (date: string) =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S3').date = date;
  });

test('last year by mistake is asked about, with this year as the likely one', () => {
  expect(on('2025-09-03')).toMatchObject([{ value: '2025-09-03', suggestion: '2026-09-03' }]);
});

test('a day before the first is asked about, the last day is not', () => {
  expect(on('2026-08-30')).toMatchObject([{ suggestion: null, parameters: { first: '2026-09-01' } }]);
  expect(on('2026-09-12')).toEqual([]);
});

test('without written days two seasons of one year are let pass, another year is not', () => {
  const open = (date: string) =>
    foundBy(check, (sketch) => {
      Object.assign(sketch.survey, { starts: null, ends: null });
      stationAt(sketch, 'S3').date = date;
    });
  expect(open('2026-02-20')).toEqual([]);
  expect(open('2024-09-03')).toHaveLength(1);
});
