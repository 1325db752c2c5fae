import { expect, test } from 'vitest';
import { check } from './count-on-lost-transect.ts';
import { foundBy, tallyAt, transectAt } from './survey-sketch.ts';

test('a belt marked lost after it was counted stops, a lost belt without counts does not', () => {
  const found = foundBy(check, (sketch) => {
    transectAt(sketch, 'S1', '1').status = 'lost';
    tallyAt(sketch, 'S1', '1').count = 4;
  });
  expect(found).toMatchObject([{ severity: 'stop', place: { station: 'S1', transect: '1' }, value: 4 }]);
  const clean = foundBy(check, (sketch) => {
    sketch.tallies.splice(sketch.tallies.indexOf(tallyAt(sketch, 'S1', '1')), 1);
    transectAt(sketch, 'S1', '1').status = 'lost';
  });
  expect(clean).toEqual([]);
});
