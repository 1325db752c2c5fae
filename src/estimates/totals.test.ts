import { expect, test } from 'vitest';
import { near } from '../maths/nearness.ts';
import { stockTotal } from './totals.ts';

const density = { value: 50, standardError: 10, degreesOfFreedom: 8, reason: null };

// By hand: 50 * 400 = 20 000; sqrt((400 * 10)^2 + (50 * 60)^2) = sqrt(4000^2 + 3000^2) = 5000.
test('a stock carries the uncertainty of its area', () => {
  const stock = stockTotal(density, { areaHa: 400, areaStandardErrorHa: 60 });
  near(stock.value, 20_000, 1e-15);
  near(stock.standardError, 5000, 1e-15);
  expect(stock.degreesOfFreedom).toBe(8);
});

test('an unknown density is an unknown stock', () => {
  const reason = { code: 'no-station', parameters: { where: 'reef' } } as const;
  const stock = stockTotal(
    { ...density, value: null, standardError: null, reason },
    { areaHa: 4, areaStandardErrorHa: 1 },
  );
  expect(stock).toMatchObject({ value: null, standardError: null, reason });
});
