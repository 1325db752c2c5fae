import { expect, test } from 'vitest';
import { formatDay, formatDays, formatMoment } from './days.ts';

test('a day is written as people write it, in both languages', () => {
  expect(formatDay('2026-09-07', 'en')).toBe('7 September 2026');
  // Authority: Imprimerie nationale, Lexique des règles typographiques (from memory): 1er, then plain numbers.
  expect(formatDay('2026-09-01', 'fr')).toBe('1er septembre 2026');
  expect(formatDay('2026-08-02', 'fr')).toBe('2 août 2026');
});

test('a row of days says month and year once where they are the same', () => {
  expect(formatDays('2026-09-07', '2026-09-15', 'en')).toBe('7 to 15 September 2026');
  expect(formatDays('2026-08-28', '2026-09-03', 'en')).toBe('28 August to 3 September 2026');
  expect(formatDays('2026-12-28', '2027-01-03', 'en')).toBe('28 December 2026 to 3 January 2027');
  expect(formatDays('2026-09-07', '2026-09-15', 'fr')).toBe('du 7 au 15 septembre 2026');
  expect(formatDays('2026-09-07', '2026-09-07', 'fr')).toBe('le 7 septembre 2026');
});

test('an instant keeps its clock and says that it is universal time', () => {
  expect(formatMoment('2026-11-24T13:59:59.999Z', 'en')).toBe('24 November 2026, 13:59 UTC');
  expect(formatMoment('2026-11-24T13:59:59.999Z', 'fr')).toBe('24 novembre 2026 à 13\u00a0h\u00a059 UTC');
});
