import { expect, test } from 'vitest';
import { beliefBelow } from './belief.ts';
import { createClumpedIntervals } from './clumped-intervals.ts';
import { DEFAULT_CLUMPED_PRIORS } from './clumped-priors.ts';
import { combineStrata } from './combine-strata.ts';
import { zeroBelief, zeroStratumPosterior } from './zero-stratum.ts';

const stations = (n: number): number[] => Array(n).fill(240);

test('the band of a survey without animals fades to 0.05 at the bound of the methods', () => {
  // METHODS c5 (R): 21 stations of 240 m2, k = 0.2: 8.67 per hectare; not clumped: 5.94.
  for (const [k, bound] of [
    [0.2, 8.67],
    [1e6, 5.94],
  ] as const) {
    const band = zeroBelief(stations(21), k);
    expect(band.densityPerHa[0]).toBe(0);
    expect(band.relativeWeight[0]).toBe(1);
    expect(Math.abs(band.densityPerHa.at(-1)! - bound)).toBeLessThan(0.006);
    expect(band.relativeWeight.at(-1)).toBeCloseTo(0.05, 6);
  }
});

test('unequal areas are solved, not averaged', () => {
  // Definition: at the bound all stations are missed with probability 0.05, each (1 + D a / k)^-k.
  const areas = [10, 240, 1000];
  const bound = zeroBelief(areas, 0.35).densityPerHa.at(-1)!;
  const missed = areas.reduce((p, areaM2) => p * (1 + (bound * areaM2) / 10_000 / 0.35) ** -0.35, 1);
  expect(missed).toBeCloseTo(0.05, 9);
});

/** Second algorithm: the belief in plain density instead of its logarithm, with the root taken out by substitution. */
function bruteBelow(n: number, density: number): number {
  const cap = 2 * zeroBelief(stations(n), 0.35).densityPerHa.at(-1)!;
  const ks = Array.from({ length: 201 }, (_, j) => (j / 100 - 1) * 3.3);
  const height = (d: number) =>
    ks.reduce((sum, z) => {
      const k = 0.35 * Math.exp(0.8 * z);
      return sum + Math.exp(-0.5 * z * z) * (1 + (d * 0.024) / k) ** (-k * n);
    }, 0);
  // D = r^2 turns D^-1/2 dD into 2 dr, so equal steps of r need no prior.
  const integral = (upTo: number) => {
    const steps = 2000;
    let total = 0;
    for (let i = 0; i < steps; i++) total += height((((i + 0.5) / steps) * Math.sqrt(upTo)) ** 2);
    return (total * Math.sqrt(upTo)) / steps;
  };
  return integral(density) / integral(cap);
}

test('the belief in an empty stratum agrees with brute force in plain densities', () => {
  for (const n of [3, 7]) {
    const { belief } = zeroStratumPosterior(stations(n), DEFAULT_CLUMPED_PRIORS);
    for (const density of [0.1, 2, 15]) {
      expect(beliefBelow(belief, Math.log(density))).toBeCloseTo(bruteBelow(n, density), 3);
    }
  }
});

test('nothing is believed above twice the bound', () => {
  const cap = 2 * zeroBelief(stations(6), 0.35).densityPerHa.at(-1)!;
  const posterior = zeroStratumPosterior(stations(6), DEFAULT_CLUMPED_PRIORS);
  expect(posterior.quantile(0.999999)).toBeLessThan(cap);
  expect(posterior.animalsSeen).toBe(false);
});

test('more empty stations lower the belief, and where the grid begins does not show', () => {
  const median = (n: number) => zeroStratumPosterior(stations(n), DEFAULT_CLUMPED_PRIORS).quantile(0.5);
  expect(median(12)).toBeLessThan(median(6));
  const { belief } = zeroStratumPosterior(stations(6), DEFAULT_CLUMPED_PRIORS);
  expect(belief.densityOfBelief[0]!).toBeLessThan(1e-4);
});

test('an empty stratum adds a little to the survey and not nothing', () => {
  const intervals = createClumpedIntervals();
  const seen = intervals.posterior([0, 4, 9, 2, 0, 7].map((animals) => ({ animals, areaM2: 240 })));
  const empty = intervals.zeroStratum(stations(7));
  const both = combineStrata(
    [
      { weight: 300, posterior: seen },
      { weight: 300, posterior: empty },
    ],
    0.95,
  ).belief;
  const without = combineStrata(
    [
      { weight: 300, posterior: seen },
      { weight: 300, posterior: zeroStratumPosterior(Array(7).fill(1e12), intervals.priors) },
    ],
    0.95,
  ).belief;
  const middle = (belief: typeof both) => {
    let log = 0;
    while (beliefBelow(belief, log) < 0.5) log += 0.001;
    return Math.exp(log);
  };
  expect(middle(both)).toBeGreaterThan(middle(without));
  expect(middle(both)).toBeLessThan(1.2 * middle(without));
});
