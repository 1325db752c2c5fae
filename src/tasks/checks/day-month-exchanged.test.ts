import { expect, test } from 'vitest';
import { check } from './day-month-exchanged.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const on = (date: string) =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S3').date = date;
  });

test('the ninth of March in a September survey was the third of September', () => {
  expect(on('2026-03-09')).toMatchObject([{ value: '2026-03-09', suggestion: '2026-09-03' }]);
  expect(on('2026-09-03')).toEqual([]);
});

test('a day that fits neither way is left to others', () => {
  expect(on('2026-02-20')).toEqual([]);
});

test('without written days the season of the other stations decides', () => {
  const found = foundBy(check, (sketch) => {
    Object.assign(sketch.survey, { starts: null, ends: null });
    stationAt(sketch, 'S3').date = '2026-02-09';
  });
  expect(found).toMatchObject([{ suggestion: '2026-09-02' }]);
});
