import { expect, test } from 'vitest';
import { counted } from './counted.ts';

test('one is said in the singular, none and more than one in the plural', () => {
  expect(counted('1', 'station')).toBe('1 station');
  expect(counted('12', 'station')).toBe('12 stations');
  expect(counted(0, 'station')).toBe('0 stations');
  expect(counted(1, 'animal', 'animaux')).toBe('1 animal');
  expect(counted('1\u202f480', 'animal', 'animaux')).toBe('1\u202f480 animaux');
});
