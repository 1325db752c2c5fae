import { expect, test } from 'vitest';
import {
  dayOfSerial,
  likelyDay,
  readDay,
  readDayInForm,
  readDayRange,
  readPlainDay,
  readTime,
  timeOfSerial,
} from './calendar.ts';

test('a day must be in the calendar', () => {
  expect(readDay('2024-02-29')).toBe('2024-02-29');
  expect(readDay('2023-02-29')).toBeNull();
  expect(readDay('2024-3-5')).toBe('2024-03-05');
  expect(readDay('05/03/2024')).toBeNull();
});

test('a time has whole minutes and a day of 24 hours', () => {
  expect(readTime('8:15')).toBe('08:15');
  expect(readTime('08:15:00')).toBe('08:15');
  expect(readTime('08:15:30')).toBeNull();
  expect(readTime('24:00')).toBeNull();
});

// Authority: 1 January 2000 is day 36526 in every spreadsheet (from memory); a quarter of a day is six hours.
test('spreadsheet numbers become days and times', () => {
  expect(dayOfSerial(36526)).toBe('2000-01-01');
  expect(dayOfSerial(36526.75)).toBe('2000-01-01');
  expect(dayOfSerial(0.5)).toBeNull();
  expect(timeOfSerial(0.25)).toBe('06:00');
  expect(timeOfSerial(1.25)).toBeNull();
});

test.each([
  ['1/25/08', 'M/D/YY', '2008-01-25'],
  ['25.1.1998', 'D.M.YYYY', '1998-01-25'],
  ['5 Mar 2012', 'D MMM YYYY', '2012-03-05'],
  ['25/1/08', 'M/D/YY', null],
  ['16-17 Sept 2011', 'D MMM YYYY', null],
])('%s read as %s is %s', (text, form, expected) => {
  expect(readDayInForm(text, form)).toBe(expected);
});

test('a likely day is only offered when the year is plain', () => {
  expect(likelyDay('13/02/2024')).toBe('2024-02-13');
  expect(likelyDay('02/13/2024')).toBe('2024-02-13');
  expect(likelyDay('1/2/24')).toBeNull();
});

test.each([
  ['2024/3/5', '2024-03-05'],
  ['5 Mar 2024', '2024-03-05'],
  ['05-March-2024', '2024-03-05'],
  ['March 5, 2024', '2024-03-05'],
  ['30 Feb 2024', null],
  ['5 Max 2024', null],
  ['3/4/2024', null],
])('%s cannot be mistaken: %s', (text, expected) => {
  expect(readPlainDay(text)).toBe(expected);
});

test.each([
  ['16-17 Sept 2011', '2011-09-16', '2011-09-17'],
  ['16-17 Sep 11', '2011-09-16', '2011-09-17'],
  ['30 Sep - 2 Oct 2011', '2011-09-30', '2011-10-02'],
  ['2011-09-16 to 2011-09-17', '2011-09-16', '2011-09-17'],
])('%s is a range of days', (text, first, last) => {
  expect(readDayRange(text)).toEqual({ first, last });
});

test('one day, a range that runs backwards and a number are no range of days', () => {
  for (const text of ['16 Sept 2011', '17-16 Sept 2011', '2011-09-16', '12-14'])
    expect(readDayRange(text)).toBeNull();
});
