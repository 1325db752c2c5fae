import { expect, test } from 'vitest';
import { metresInside } from './metres-inside.ts';

test('a series that does not fit is never told to lie inside whole', () => {
  expect(metresInside(241.4, 300)).toBe(241);
  expect(metresInside(899.7, 900)).toBe(899.7);
  expect(metresInside(899.99, 900)).toBe(899.9);
});
