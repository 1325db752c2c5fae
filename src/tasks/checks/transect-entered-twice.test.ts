import { expect, test } from 'vitest';
import { foundBy, lengthsOf, tallyAt } from './survey-sketch.ts';
import { check } from './transect-entered-twice.ts';

const copied = (station: string, transect: string, slip = 0) =>
  foundBy(check, (sketch) => {
    const lengths = lengthsOf(151, 163, 178, 144, 209);
    Object.assign(tallyAt(sketch, 'S1', '2'), { count: 6, lengths });
    const again = lengths.map((one, i) => (i === 0 ? { ...one, lengthMm: one.lengthMm + slip } : one));
    Object.assign(tallyAt(sketch, station, transect), { count: 6, lengths: again });
  });

test('the same counts and lengths on two belts of a station are a sheet entered twice', () => {
  const [problem, ...others] = copied('S1', '3');
  expect(others).toEqual([]);
  expect(problem).toMatchObject({
    place: { station: 'S1', transect: '3' },
    value: 'station S1, transect 2',
    parameters: { animals: 6 },
  });
});

test('on a belt of another station as well', () => {
  expect(copied('S7', '1')).toMatchObject([{ place: { station: 'S7' }, value: 'station S1, transect 2' }]);
});

test('one length that differs makes two sheets of it', () => {
  expect(copied('S1', '3', 1)).toEqual([]);
});

test('two belts with one animal each are alike by chance', () => {
  const found = foundBy(check, (sketch) => {
    for (const tally of sketch.tallies) Object.assign(tally, { count: 1, lengths: [] });
  });
  expect(found).toEqual([]);
});
