import { expect, test } from 'vitest';
import { check } from './station-small-area.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

const loseBelts = (...codes: string[]) =>
  foundBy(check, (sketch) => {
    for (const code of codes) transectAt(sketch, 'S4', code).status = 'lost';
    transectAt(sketch, 'S4', '3').lengthM = 30;
  });

test('a station that searched less than a third of the plan is asked about', () => {
  // By hand: 30 m x 2 m of 3 x 40 m x 2 m planned.
  expect(loseBelts('1', '2')).toMatchObject([
    { place: { station: 'S4' }, value: 60, parameters: { plannedM2: 240 } },
  ]);
  expect(loseBelts('1')).toEqual([]);
});
