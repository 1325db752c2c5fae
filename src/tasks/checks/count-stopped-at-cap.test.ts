import { expect, test } from 'vitest';
import { check } from './count-stopped-at-cap.ts';
import { foundBy, lengthsOf } from './survey-sketch.ts';

const dense = (stopped: number, counted: number) =>
  foundBy(check, (sketch) => {
    sketch.tallies.forEach((tally, i) => {
      const count = i < stopped ? 5 : i < stopped + counted ? 11 + i : 1;
      Object.assign(tally, { count, lengths: lengthsOf(151, 163, 178, 144, 209).slice(0, count) });
    });
  });

test('five of six dense belts that stop at the five to be measured are asked about', () => {
  expect(dense(5, 1)).toMatchObject([
    {
      place: { survey: 'S' },
      value: 5,
      parameters: { cap: 5, dense: 6, where: 'S1 1, S1 2, S1 3, S2 1, S2 2' },
    },
  ]);
});

test('one of twelve is chance', () => {
  expect(dense(1, 11)).toEqual([]);
});
