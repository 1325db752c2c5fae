import { expect, test } from 'vitest';
import { check } from './more-transects-than-planned.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

test('a fourth belt where three were planned is asked about, a second swim is not', () => {
  const more = (change: { code?: string; swim?: number }) =>
    foundBy(check, (sketch) => {
      sketch.transects.push({ ...transectAt(sketch, 'S2', '3'), id: 'extra', ...change });
    });
  expect(more({ code: '4' })).toMatchObject([
    { place: { station: 'S2' }, value: 4, parameters: { planned: 3, last: '4' } },
  ]);
  expect(more({ swim: 2 })).toEqual([]);
});
