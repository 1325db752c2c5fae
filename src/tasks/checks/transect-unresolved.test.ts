import { expect, test } from 'vitest';
import { foundBy, tallyAt, transectAt } from './survey-sketch.ts';
import { check } from './transect-unresolved.ts';

const blank = (noneSeen: boolean) =>
  foundBy(check, (sketch) => {
    sketch.tallies.splice(sketch.tallies.indexOf(tallyAt(sketch, 'S2', '3')), 1);
    transectAt(sketch, 'S2', '3').noneSeen = noneSeen;
  });

test('a blank belt is asked about; with the box "none seen" it is a zero', () => {
  expect(blank(false)).toMatchObject([{ place: { station: 'S2', transect: '3' }, suggestion: 'none seen' }]);
  expect(blank(true)).toEqual([]);
});
