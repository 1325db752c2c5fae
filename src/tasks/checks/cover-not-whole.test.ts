import { expect, test } from 'vitest';
import { check } from './cover-not-whole.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

const sand = (percent: number) =>
  foundBy(check, (sketch) => {
    transectAt(sketch, 'S2', '1').cover = [{ name: 'sand', percent }];
  });

test('a bottom of 80 % is noted, one of 96 % is let pass, none at all is no cover', () => {
  expect(sand(80)).toMatchObject([{ severity: 'note', place: { station: 'S2', transect: '1' }, value: 80 }]);
  expect(sand(96)).toEqual([]);
  expect(
    foundBy(check, (sketch) => {
      transectAt(sketch, 'S2', '1').cover = [];
    }),
  ).toEqual([]);
});
