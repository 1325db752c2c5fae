import { expect, test } from 'vitest';
import { likelyDecimal, readDecimal } from './decimal.ts';

// Authority: by hand, moving the decimal point.
test.each([
  ['18.3', 1, 183],
  ['0.07', 1, 0.7],
  ['.5', 1, 5],
  ['5.', 0, 5],
  ['-17.1234567890123', 0, -17.1234567890123],
  ['1e3', 1, 10_000],
  ['25000', -4, 2.5],
  ['-0', 0, 0],
])('%s with the point moved by %i is %d', (text, shift, expected) => {
  expect(readDecimal(text, shift)).toBe(expected);
});

test.each(['', '12,5', '0x10', 'Infinity', 'NaN', '1 000', '12 mm', '--1', '1e999', '٣'])(
  '"%s" is no plain decimal number',
  (text) => {
    expect(readDecimal(text)).toBeNull();
  },
);

test.each([
  ['12,5', '12.5'],
  ['183 mm', '183'],
  ['about 20', null],
])('the likely meaning of "%s" is %s', (text, expected) => {
  expect(likelyDecimal(text)).toBe(expected);
});
