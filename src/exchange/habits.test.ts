import { expect, test } from 'vitest';
import { commaEvidence, dayEvidence, withoutCommas } from './habits.ts';

function habitIn(texts: readonly string[], evidence: ReturnType<typeof commaEvidence | typeof dayEvidence>) {
  for (const text of texts) evidence.see(text);
  return evidence.habit();
}

// Authority: by hand. Thousands are grouped in threes, so any other number of digits after a comma proves a decimal comma.
test.each([
  [['12,5', '7'], 'decimal'],
  [['0,125'], 'decimal'],
  [['1.234,5'], 'decimal'],
  [['1,234,567'], 'thousands'],
  [['1,234.5'], 'thousands'],
  [['1,234'], null],
  [['12,5', '12.5'], null],
  [['12,5', '1,234,567'], null],
  [['7', '12'], null],
] as const)('commas in %j are %s', (texts, habit) => {
  expect(habitIn(texts, commaEvidence())).toBe(habit);
});

test('what the mapping says about commas is not weighed against the file', () => {
  expect(habitIn(['1,234,567'], commaEvidence('decimal'))).toBe('decimal');
});

test.each([
  ['12,5', 'decimal', '12.5'],
  ['1,234', 'decimal', '1.234'],
  ['1.234,5', 'decimal', '1234.5'],
  ['1,234', 'thousands', '1234'],
  ['1,234,567.5', 'thousands', '1234567.5'],
  ['12,34', 'thousands', '12,34'],
] as const)('%s with %s commas is %s', (text, habit, expected) => {
  expect(withoutCommas(text, habit)).toBe(expected);
});

// Authority: there is no thirteenth month.
test.each([
  [['03/04/2026', '25/04/2026'], 'D/M'],
  [['03/04/2026', '04/25/2026'], 'M/D'],
  [['25/04/2026', '04/25/2026'], null],
  [['03/04/2026'], null],
  [['2026-04-25', 'soon', '31/31/2026'], null],
] as const)('days in %j are %s', (texts, habit) => {
  expect(habitIn(texts, dayEvidence())).toBe(habit);
});
