import { expect, test } from 'vitest';
import { numberByRule, readApproximate } from './written-number.ts';

// Authority: by hand; half of 1 is 0.5, the middle of 12 and 15 is 13.5, of 0.1 and 0.2 it is 0.15 and not 0.15000000000000002.
test.each([
  ['12-14', { range: 'low' }, '12'],
  ['12 – 15', { range: 'middle' }, '13.5'],
  ['0.1-0.2', { range: 'middle' }, '0.15'],
  ['12 to 14', { range: 'high' }, '14'],
  ['~20', { about: 'the number' }, '20'],
  ['ca. 20', { about: 'the number' }, '20'],
  ['20?', { about: 'the number' }, '20'],
  ['<1', { below: 'half' }, '0.5'],
  ['< 1', { below: 'the number' }, '1'],
  ['50+', { above: 'the number' }, '50'],
  ['>50', { above: 'the number' }, '50'],
  ['12-14', { about: 'the number' }, null],
  ['12', { range: 'low' }, null],
] as const)('%s read by %j is %s', (text, rules, expected) => {
  expect(numberByRule(text, rules)).toBe(expected);
});

test('a range that runs backwards, a negative number and a day are no approximate numbers', () => {
  for (const text of ['14-12', '-5', '2024-03-05', 'many', '']) expect(readApproximate(text)).toBeNull();
});
