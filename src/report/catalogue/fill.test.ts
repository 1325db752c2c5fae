import { expect, test } from 'vitest';
import { fillSentence, slotsOf, templateOfMany } from './fill.ts';

test('the words beside a slot fit its number', () => {
  const template = '{rows} {rows:row was|rows were} left out[ of {file}]';
  expect(fillSentence(template, { rows: '1' })).toBe('1 row was left out');
  expect(fillSentence(template, { rows: '3', file: 'a.csv' })).toBe('3 rows were left out of a.csv');
  expect(slotsOf(template)).toEqual(['rows', 'rows', 'file']);
  expect(templateOfMany(template)).toBe('{rows} rows were left out[ of {file}]');
});
