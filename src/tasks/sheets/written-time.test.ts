import { expect, test } from 'vitest';
import { readWrittenTime } from './written-time.ts';

test('a time is read as slates have it, and nothing else is', () => {
  for (const [typed, read] of [
    ['810', '08:10'],
    ['0810', '08:10'],
    ['8:10', '08:10'],
    ['8h10', '08:10'],
    [' 23.59 ', '23:59'],
    ['24:00', null],
    ['8', null],
    ['8:75', null],
    ['', null],
  ] as const) {
    expect(readWrittenTime(typed), typed).toBe(read);
  }
});
