import { expect, test } from 'vitest';
import { lognormalPoisson } from './lognormal-poisson.ts';

/** Logarithm of x!, added up term by term. */
function logFactorial(x: number): number {
  let total = 0;
  for (let i = 2; i <= x; i++) total += Math.log(i);
  return total;
}

/** Second algorithm: 60 000 equal steps over twelve standard deviations of the log rate, no cleverness. */
function byFineSteps(x: number, logMean: number, sigma: number): number {
  const steps = 60_000;
  const mu = logMean - sigma ** 2 / 2;
  const low = Math.min(mu - 12 * sigma, Math.log(x + 1) - 12);
  const high =
    mu + 12 * sigma + x * sigma ** 2 > Math.log(x + 1) + 8
      ? Math.max(mu, Math.log(x + 1)) + 8
      : mu + 20 * sigma;
  const step = (high - low) / steps;
  let total = 0;
  for (let i = 0; i <= steps; i++) {
    const u = low + i * step;
    total += Math.exp(x * u - Math.exp(u) - logFactorialOnce(x) - (u - mu) ** 2 / (2 * sigma ** 2));
  }
  return (total * step) / (sigma * Math.sqrt(2 * Math.PI));
}

const factorials = new Map<number, number>();
function logFactorialOnce(x: number): number {
  const known = factorials.get(x) ?? logFactorial(x);
  factorials.set(x, known);
  return known;
}

test('the probability of a count agrees with brute force within a millionth', () => {
  for (const x of [0, 1, 2, 7, 60, 900, 10_000]) {
    for (const sigma of [0.2, 0.35, 1.3, 1.8, 6.5]) {
      for (const offset of [-2, 0, 1.5]) {
        const logMean = Math.log(x + 0.5) + offset;
        const expected = byFineSteps(x, logMean, sigma);
        if (expected < 1e-250) continue;
        const found = Math.exp(lognormalPoisson(x, Float64Array.of(0.2, sigma))(logMean)[1]!);
        expect(Math.abs(found / expected - 1), `x ${x} sigma ${sigma} offset ${offset}`).toBeLessThan(1e-6);
      }
    }
  }
});

test('animals that hardly vary between stations are counted as a Poisson', () => {
  // Limit: sigma to zero. P(3) = e^-2 2^3 / 3! = 0.180447 by hand; the error is of the order sigma^2.
  const found = Math.exp(lognormalPoisson(3, Float64Array.of(0.001))(Math.log(2))[0]!);
  expect(found).toBeCloseTo((Math.exp(-2) * 8) / 6, 5);
});

test('the probabilities of all counts add up to one and have the given mean', () => {
  // Definition of a distribution. Sigma 0.5 and mean 4: beyond 400 animals nothing is left.
  let total = 0;
  let mean = 0;
  for (let x = 0; x <= 400; x++) {
    const share = Math.exp(lognormalPoisson(x, Float64Array.of(0.5))(Math.log(4))[0]!);
    total += share;
    mean += x * share;
  }
  expect(total).toBeCloseTo(1, 8);
  expect(mean).toBeCloseTo(4, 7);
});

test('an impossible count is a probability of zero and not a wrong number', () => {
  // Ten thousand animals where none are expected and stations are alike: below the smallest double.
  const found = lognormalPoisson(10_000, Float64Array.of(0.2))(-10)[0]!;
  expect(found).toBeLessThan(-700);
});
