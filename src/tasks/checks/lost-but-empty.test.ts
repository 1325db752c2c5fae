import { expect, test } from 'vitest';
import { check } from './lost-but-empty.ts';
import { foundBy, tallyAt, transectAt } from './survey-sketch.ts';

const lost = (noneSeen: boolean) =>
  foundBy(check, (sketch) => {
    sketch.tallies.splice(sketch.tallies.indexOf(tallyAt(sketch, 'S2', '3')), 1);
    Object.assign(transectAt(sketch, 'S2', '3'), { status: 'lost', noneSeen });
  });

test('a lost sheet with the box "none seen" is asked about, a lost sheet is not', () => {
  expect(lost(true)).toMatchObject([{ place: { station: 'S2', transect: '3' }, value: 'lost' }]);
  expect(lost(false)).toEqual([]);
});

test('a written zero on a lost sheet is asked about as well', () => {
  const found = foundBy(check, (sketch) => {
    Object.assign(tallyAt(sketch, 'S2', '3'), { count: 0, lengths: [] });
    transectAt(sketch, 'S2', '3').status = 'not done';
  });
  expect(found).toMatchObject([{ value: 'not done' }]);
});
