import { expect, test } from 'vitest';
import { check } from './none-seen-but-counted.ts';
import { foundBy, tallyAt, transectAt } from './survey-sketch.ts';

test('the box "none seen" beside animals stops; beside a written zero it does not', () => {
  const ticked = (count: number) =>
    foundBy(check, (sketch) => {
      transectAt(sketch, 'S1', '1').noneSeen = true;
      tallyAt(sketch, 'S1', '1').count = count;
    });
  expect(ticked(4)).toMatchObject([{ severity: 'stop', place: { station: 'S1', transect: '1' }, value: 4 }]);
  expect(ticked(0)).toEqual([]);
});
