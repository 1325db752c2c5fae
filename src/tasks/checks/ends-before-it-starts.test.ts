import { expect, test } from 'vitest';
import { check } from './ends-before-it-starts.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const times = (timeStart: string, timeEnd: string) =>
  foundBy(check, (sketch) => Object.assign(stationAt(sketch, 'S3'), { timeStart, timeEnd }));

test('an end before the start is asked about, with what may have been meant', () => {
  expect(times('13:20', '02:10')).toMatchObject([{ value: '13:20 to 02:10', suggestion: '13:20 to 14:10' }]);
  expect(times('09:40', '08:30')).toMatchObject([{ suggestion: '08:30 to 09:40' }]);
});

test('a night dive may end after midnight', () => {
  expect(times('22:40', '00:15')).toEqual([]);
});
