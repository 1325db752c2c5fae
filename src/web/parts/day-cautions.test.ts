import { expect, test } from 'vitest';
import { diversOf } from '../../tasks/sheets/dives.ts';
import { dayCautions } from './day-cautions.ts';
import { dayOfTyped, typedDay } from './day-typed.ts';

function cautionsOf(dives: [string, string, string, string][], maxDepthM: string) {
  const empty = typedDay(null);
  const { content } = dayOfTyped({
    ...empty,
    dives: dives.map(([diver, entry, exit, depth]) => ({ diver, entry, exit, maxDepthM: depth })),
    limits: { ...empty.limits, maxDepthM },
  });
  return dayCautions(content, diversOf(content, 'en'));
}

test('one diver cannot be under water twice at once', () => {
  // By hand: the second dive begins at 08:30, ten minutes before the first ends.
  const dives: [string, string, string, string][] = [
    ['Diver 1', '08:00', '08:40', '9'],
    ['Diver 1', '08:30', '09:00', '9'],
    ['Diver 2', '08:30', '09:00', '9'],
  ];
  expect(cautionsOf(dives, '18')).toEqual([{ kind: 'overlap', diver: 'Diver 1' }]);
});

test('a dive without its depth cannot be compared with a depth limit, and that is said', () => {
  expect(cautionsOf([['Diver 1', '08:00', '08:40', '']], '18')).toEqual([
    { kind: 'noDepth', diver: 'Diver 1' },
  ]);
});

test('dives without any limit are said to be compared with nothing', () => {
  expect(cautionsOf([['Diver 1', '08:00', '08:40', '9']], '')).toEqual([{ kind: 'noLimit' }]);
});

test('a quiet day asks nothing', () => {
  expect(cautionsOf([], '')).toEqual([]);
});
