import { expect, test } from 'vitest';
import { dayContentSchema } from '../../survey/day-words.ts';
import { dayOfTyped, typedDay } from './day-typed.ts';

const empty = typedDay(null);
const dive = { diver: 'Diver 1', entry: '08:10', exit: '08:52', maxDepthM: '14,5' };

test('an empty day is a day of unknowns, never of zeros', () => {
  const { content, unread } = dayOfTyped(empty);
  expect(unread).toEqual([]);
  expect(dayContentSchema.parse(content)).toEqual({
    ...{
      sea: null,
      visibilityM: null,
      habitat: null,
      notes: null,
      incidents: [],
      fuelUsedL: null,
      dives: [],
    },
    limits: { divesPerDay: null, minutesPerDay: null, surfaceIntervalMin: null, maxDepthM: null },
  });
});

test('a decimal comma is a decimal point', () => {
  expect(dayOfTyped({ ...empty, dives: [dive] }).content.dives[0]?.maxDepthM).toBe(14.5);
});

test('a dive without its times is named and does not reach the book', () => {
  const { content, unread } = dayOfTyped({ ...empty, dives: [dive, { ...dive, exit: '' }] });
  expect(unread).toEqual([{ kind: 'dive', line: 2 }]);
  expect(content.dives).toHaveLength(1);
});

test('a number that is none is named with what was typed', () => {
  expect(dayOfTyped({ ...empty, fuelUsedL: 'full tank' }).unread).toEqual([
    { kind: 'number', field: 'fuelUsedL', value: 'full tank' },
  ]);
  expect(dayOfTyped({ ...empty, visibilityM: '-3' }).unread).toHaveLength(1);
});

test('what the book holds comes back from the cells unchanged', () => {
  const { content } = dayOfTyped({
    ...empty,
    sea: 'slight',
    visibilityM: '12',
    fuelUsedL: '85.5',
    incidents: [{ time: '', what: 'engine stopped, started again' }],
    dives: [dive],
    limits: { ...empty.limits, divesPerDay: '3' },
  });
  expect(dayOfTyped(typedDay(content)).content).toEqual(content);
});

test('limits of the day before are taken over only while nothing is written', () => {
  const limits = { divesPerDay: 3, minutesPerDay: null, surfaceIntervalMin: 60, maxDepthM: 18 };
  expect(typedDay(null, limits).limits.maxDepthM).toBe('18');
  expect(typedDay(dayOfTyped(empty).content, limits).limits.maxDepthM).toBe('');
});

test('an incident with a time that is none is named, its time is not dropped', () => {
  const { content, unread } = dayOfTyped({ ...empty, incidents: [{ time: 'noon', what: 'cut hand' }] });
  expect(unread).toEqual([{ kind: 'incident', line: 1 }]);
  expect(content.incidents).toEqual([]);
});
