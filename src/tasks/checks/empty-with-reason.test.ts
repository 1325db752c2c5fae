import { expect, test } from 'vitest';
import { check } from './empty-with-reason.ts';
import { foundBy, tallyAt, transectAt } from './survey-sketch.ts';

const empty = (reason: string | null) =>
  foundBy(check, (sketch) => {
    sketch.tallies.splice(sketch.tallies.indexOf(tallyAt(sketch, 'S2', '3')), 1);
    Object.assign(transectAt(sketch, 'S2', '3'), { noneSeen: true, reason });
  });

test('an empty belt with a reason beside it may be a lost sheet read as zero', () => {
  expect(empty('sheet soaked')).toMatchObject([{ value: 'sheet soaked', suggestion: 'lost' }]);
  expect(empty(null)).toEqual([]);
});
