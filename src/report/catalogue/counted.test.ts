import { expect, test } from 'vitest';
import { counted } from './counted.ts';
import { fillSentence, slotsOf, templateOfMany } from './fill.ts';

test('one is said in the singular, none and more than one in the plural', () => {
  expect(counted('1', 'station')).toBe('1 station');
  expect(counted('12', 'station')).toBe('12 stations');
  expect(counted(0, 'station')).toBe('0 stations');
  expect(counted(1, 'animal', 'animaux')).toBe('1 animal');
  expect(counted('1\u202f480', 'animal', 'animaux')).toBe('1\u202f480 animaux');
});

test('the words beside a slot fit its number, and the slot is named once more and not asked for twice', () => {
  const template = '{rows} {rows:row was|rows were} left out[ of {file}]';
  expect(fillSentence(template, { rows: '1' })).toBe('1 row was left out');
  expect(fillSentence(template, { rows: '3', file: 'a.csv' })).toBe('3 rows were left out of a.csv');
  expect(slotsOf(template)).toEqual(['rows', 'rows', 'file']);
  expect(templateOfMany(template)).toBe('{rows} rows were left out[ of {file}]');
});
