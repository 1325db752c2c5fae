import { expect, test } from 'vitest';
import { dayInWords } from './day-in-words.ts';

test('a day is said with its name of the week', () => {
  // 9 September 2026 is a Wednesday: by any calendar.
  expect(dayInWords('2026-09-09', 'en')).toBe('Wed 9 September 2026');
  expect(dayInWords('2026-09-09', 'fr')).toBe('mer. 9 septembre 2026');
});
