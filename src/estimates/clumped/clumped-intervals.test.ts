import { expect, test } from 'vitest';
import { logGamma } from '../../maths/distributions.ts';
import { containing } from './belief.ts';
import { createClumpedIntervals } from './clumped-intervals.ts';
import type { StationCount } from './station-count.ts';

const intervals = createClumpedIntervals();

const equalAreas = (...animals: number[]): StationCount[] =>
  animals.map((n) => ({ animals: n, areaM2: 240 }));

const DATA: readonly (readonly [string, readonly StationCount[]])[] = [
  ['clumped animals on five stations', equalAreas(0, 0, 3, 1, 20)],
  ['two stations, one animal', equalAreas(0, 1)],
  ['animals that are hardly clumped', equalAreas(5, 4, 6, 5, 3, 7, 4, 6)],
  [
    'unequal areas',
    [
      { animals: 0, areaM2: 80 },
      { animals: 12, areaM2: 240 },
      { animals: 2, areaM2: 200 },
      { animals: 0, areaM2: 240 },
      { animals: 40, areaM2: 1300 },
      { animals: 1, areaM2: 10 },
    ],
  ],
  [
    'thirty stations',
    Array.from({ length: 30 }, (_, i) => ({ animals: (i * i) % 11, areaM2: 100 + 50 * (i % 2) })),
  ],
];

/** Second algorithm: dense grids in everything, every probability written out, no recurrences, no memory. */
function bruteForce(counts: readonly StationCount[]): { quantile: (p: number) => number; nb: number } {
  const animals = counts.reduce((sum, count) => sum + count.animals, 0);
  const areaHa = counts.reduce((sum, count) => sum + count.areaM2 / 10_000, 0);
  const centre = Math.log(animals / areaHa);
  const points = 321;
  const step = 12 / (points - 1);
  const logDensities = Array.from({ length: points }, (_, i) => centre - 6 + i * step);
  const nb = logDensities.map((logD) =>
    logMean(
      K_VALUES,
      (k) => logPriorK(k),
      (k) => nbLog(counts, logD, k),
    ),
  );
  const pln = logDensities.map((logD) =>
    logMean(
      SIGMA_VALUES,
      (sigma) => logPriorSigma(sigma),
      (sigma) => plnLog(counts, logD, sigma),
    ),
  );
  const poisson = logDensities.map((logD) => poissonLog(counts, logD));
  const greatest = Math.max(...nb, ...pln, ...poisson);
  const weighted = (logs: number[], share: number) => logs.map((log) => share * Math.exp(log - greatest));
  const parts = [weighted(nb, 0.49), weighted(pln, 0.49), weighted(poisson, 0.02)];
  const heights = logDensities.map((_, i) => parts.reduce((sum, part) => sum + part[i]!, 0));
  const total = heights.reduce((a, b) => a + b) - (heights[0]! + heights[points - 1]!) / 2;
  const nbShare = parts[0]!.reduce((a, b) => a + b) / heights.reduce((a, b) => a + b);
  return { nb: nbShare, quantile: (p) => Math.exp(bruteQuantile(logDensities, heights, p * total)) };
}

/** Heights between the points by the cubic through four, in 400 steps a cell: independent of the code under test. */
function bruteQuantile(logDensities: readonly number[], heights: readonly number[], target: number): number {
  const fine = 400;
  let below = 0;
  for (let i = 0; i < heights.length - 1; i++) {
    for (let part = 0; part < fine; part++) {
      const t = (part + 0.5) / fine;
      const y = (j: number) => heights[Math.min(heights.length - 1, Math.max(0, i + j))]!;
      const height =
        (-t * (t - 1) * (t - 2) * y(-1)) / 6 +
        ((t + 1) * (t - 1) * (t - 2) * y(0)) / 2 -
        ((t + 1) * t * (t - 2) * y(1)) / 2 +
        ((t + 1) * t * (t - 1) * y(2)) / 6;
      below += height / fine;
      if (below >= target) return logDensities[i]! + t * (logDensities[1]! - logDensities[0]!);
    }
  }
  return logDensities.at(-1)!;
}

const K_VALUES = Array.from({ length: 61 }, (_, j) => 0.35 * Math.exp(0.8 * 3.3 * (j / 30 - 1)));
const SIGMA_VALUES = Array.from({ length: 41 }, (_, j) => 0.2 * (6.5 / 0.2) ** (j / 40));
const logPriorK = (k: number) => -0.5 * (Math.log(k / 0.35) / 0.8) ** 2;
const logPriorSigma = (sigma: number) => -0.5 * (Math.log(sigma / 1.4) / 0.4) ** 2;

function logMean(
  values: readonly number[],
  logPrior: (v: number) => number,
  logValue: (v: number) => number,
) {
  const priors = values.map((value) => Math.exp(logPrior(value)));
  const logs = values.map(logValue);
  const greatest = Math.max(...logs);
  const total = logs.reduce((sum, log, j) => sum + priors[j]! * Math.exp(log - greatest), 0);
  return greatest + Math.log(total / priors.reduce((a, b) => a + b));
}

function nbLog(counts: readonly StationCount[], logD: number, k: number): number {
  return counts.reduce((sum, { animals: x, areaM2 }) => {
    const m = (Math.exp(logD) * areaM2) / 10_000;
    const choose = logGamma(k + x) - logGamma(k) - logGamma(x + 1);
    return sum + choose + k * Math.log(k / (k + m)) + x * Math.log(m / (k + m));
  }, 0);
}

function poissonLog(counts: readonly StationCount[], logD: number): number {
  return counts.reduce((sum, { animals: x, areaM2 }) => {
    const m = (Math.exp(logD) * areaM2) / 10_000;
    return sum + x * Math.log(m) - m - logGamma(x + 1);
  }, 0);
}

const RATE_STEP = 0.1;
const LOG_RATES = Float64Array.from({ length: 640 }, (_, i) => -55 + i * RATE_STEP);
const poissonHeights = new Map<number, Float64Array>();

function plnLog(counts: readonly StationCount[], logD: number, sigma: number): number {
  const once = new Map<string, number>();
  const normals = new Map<number, Float64Array>();
  return counts.reduce((sum, { animals: x, areaM2 }) => {
    const known = once.get(`${x} ${areaM2}`);
    if (known !== undefined) return sum + known;
    const mu = logD + Math.log(areaM2 / 10_000) - sigma ** 2 / 2;
    const normal = normals.get(areaM2) ?? LOG_RATES.map((u) => Math.exp(-0.5 * ((u - mu) / sigma) ** 2));
    normals.set(areaM2, normal);
    const poisson =
      poissonHeights.get(x) ?? LOG_RATES.map((u) => Math.exp(x * u - Math.exp(u) - logGamma(x + 1)));
    poissonHeights.set(x, poisson);
    let total = 0;
    for (let i = 0; i < normal.length; i++) total += normal[i]! * poisson[i]!;
    const log = Math.log((total * RATE_STEP) / (sigma * Math.sqrt(2 * Math.PI)));
    once.set(`${x} ${areaM2}`, log);
    return sum + log;
  }, 0);
}

for (const [name, counts] of DATA) {
  test(`the interval agrees with brute force within a thousandth: ${name}`, () => {
    const posterior = intervals.posterior(counts);
    const brute = bruteForce(counts);
    for (const p of [0.025, 0.25, 0.5, 0.75, 0.975]) {
      expect(Math.abs(posterior.quantile(p) / brute.quantile(p) - 1), `quantile ${p}`).toBeLessThan(1e-3);
    }
    // Half a lattice cell at each end of the flat range is the difference where the belief reaches the ends.
    expect(Math.abs(posterior.modelWeights.nb - brute.nb)).toBeLessThan(0.002);
  });
}

test('the unit of the searched areas does not change the number of animals per area', () => {
  // Invariance: areas a hundred times larger, densities a hundred times lower; the lattice lies elsewhere.
  for (const [, counts] of DATA) {
    const larger = counts.map(({ animals, areaM2 }) => ({ animals, areaM2: areaM2 * 100 }));
    const [low, high] = intervals.posterior(counts).interval(0.95);
    const [lowLarger, highLarger] = intervals.posterior(larger).interval(0.95);
    expect(Math.abs((100 * lowLarger) / low - 1)).toBeLessThan(1e-4);
    expect(Math.abs((100 * highLarger) / high - 1)).toBeLessThan(1e-4);
  }
});

test('the order of the stations does not matter', () => {
  for (const [, counts] of DATA) {
    const [low, high] = intervals.posterior(counts).interval(0.95);
    const [lowBack, highBack] = intervals.posterior([...counts].reverse()).interval(0.95);
    expect(lowBack / low).toBeCloseTo(1, 9);
    expect(highBack / high).toBeCloseTo(1, 9);
  }
});

test('what was computed before does not change an answer', () => {
  // Invariance: an empty memory and a used one, priors changed and changed back.
  for (const [, counts] of DATA) {
    const fresh = createClumpedIntervals().posterior(counts).interval(0.95);
    expect(intervals.posterior(counts).interval(0.95)).toEqual(fresh);
    expect(intervals.withPriors(intervals.priors).posterior(counts).interval(0.95)).toEqual(fresh);
  }
});

test('more stations with the same counts narrow the interval, up to two hundred', () => {
  const base = equalAreas(0, 0, 3, 1, 20);
  const ratio = (times: number) => {
    const [low, high] = intervals.posterior(Array.from({ length: times }, () => base).flat()).interval(0.95);
    return high / low;
  };
  const ratios = [1, 2, 4, 8, 16, 40].map(ratio);
  for (let i = 1; i < ratios.length; i++) expect(ratios[i]!).toBeLessThan(ratios[i - 1]!);
});

test('forty-one stations on the finer grid agree with forty on the coarser one', () => {
  // Neighbours in size must be neighbours in width: the grids must not show.
  const counts = Array.from({ length: 41 }, (_, i) => ({ animals: (i * i) % 23, areaM2: 240 }));
  const [low, high] = intervals.posterior(counts).interval(0.95);
  const [lowFewer, highFewer] = intervals.posterior(counts.slice(0, 40)).interval(0.95);
  expect(Math.abs(Math.log(high / low) / Math.log(highFewer / lowFewer) - 1)).toBeLessThan(0.05);
});

test('a wider confidence gives a wider interval around the same median', () => {
  const posterior = intervals.posterior(equalAreas(0, 0, 3, 1, 20));
  const [low80, high80] = posterior.interval(0.8);
  const [low95, high95] = posterior.interval(0.95);
  expect(low95).toBeLessThan(low80);
  expect(high95).toBeGreaterThan(high80);
  expect(posterior.quantile(0.5)).toBeGreaterThan(low80);
});

test('the interval contains the design-based estimate', () => {
  // The mean of station densities of the unequal areas is far from their ratio of sums.
  for (const [, counts] of DATA) {
    const estimate = counts.reduce((sum, c) => sum + (c.animals / c.areaM2) * 10_000, 0) / counts.length;
    const [low, high] = containing(intervals.posterior(counts).interval(0.95), estimate);
    expect(estimate).toBeGreaterThanOrEqual(low);
    expect(estimate).toBeLessThanOrEqual(high);
  }
});

test('animals spread evenly speak for no clumping, and one great clump speaks against', () => {
  expect(intervals.posterior(equalAreas(5, 4, 6, 5, 3, 7, 4, 6)).modelWeights.poisson).toBeGreaterThan(0.5);
  expect(intervals.posterior(equalAreas(0, 0, 0, 0, 60)).modelWeights.poisson).toBeLessThan(1e-6);
});

test('counts of thousands beside zeros, on areas from 1 to 2000 m2, give a finite interval', () => {
  const posterior = intervals.posterior([
    { animals: 10_000, areaM2: 2000 },
    { animals: 0, areaM2: 1 },
    { animals: 9_000, areaM2: 240 },
    { animals: 0, areaM2: 2000 },
  ]);
  const [low, high] = posterior.interval(0.95);
  expect(low).toBeGreaterThan(0);
  expect(high).toBeLessThan(1e9);
  expect(posterior.modelWeights.nb + posterior.modelWeights.pln + posterior.modelWeights.poisson).toBeCloseTo(
    1,
    9,
  );
});

test('the belief integrates to one', () => {
  for (const [, counts] of DATA) {
    const { belief } = intervals.posterior(counts);
    const total = belief.densityOfBelief.reduce((sum, height) => sum + height * belief.stepLog, 0);
    expect(total).toBeGreaterThan(0.99);
    expect(total).toBeLessThan(1.01);
  }
});

test('a survey without animals, half an animal, or a station without area is refused', () => {
  expect(() => intervals.posterior(equalAreas(0, 0))).toThrow('at least one animal');
  expect(() => intervals.posterior([])).toThrow('at least one station');
  expect(() => intervals.posterior(equalAreas(0.5))).toThrow('whole animals');
  expect(() => intervals.posterior([{ animals: 1, areaM2: 0 }])).toThrow('positive searched area');
});
