/**
 * How often do the intervals hold the truth? A simulation anyone can run again:
 *
 *   node bench/coverage.ts [--draws 200] [--seed 1]
 *
 * Stations are drawn from populations whose density is known, every interval is computed at nominal
 * 95 %, and the share of draws in which it holds the true density is counted. Prints the tables and
 * writes them to bench/coverage-results.md. Draws without any animal have no such interval (METHODS
 * c5 answers there) and are counted apart.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { containing } from '../src/estimates/clumped/belief.ts';
import { type ClumpedIntervals, createClumpedIntervals } from '../src/estimates/clumped/clumped-intervals.ts';
import { combineStrata } from '../src/estimates/clumped/combine-strata.ts';
import type { Interval } from '../src/estimates/shapes.ts';
import { twoSidedQuantile } from '../src/maths/distributions.ts';
import { seededRandom } from '../src/maths/random.ts';
import { mean, sampleVariance } from '../src/maths/variance.ts';

type Uniform = () => number;
type Population = {
  readonly name: string;
  readonly mean: number;
  readonly draw: (uniform: Uniform) => number;
};
type Stratum = { readonly areaHa: number; readonly stations: number; readonly population: Population };
type Case = { readonly name: string; readonly strata: readonly Stratum[] };
type Method = 'clumped' | 'lognormal t' | 't';
type Score = { held: number; below: number; above: number; ratios: number[] };
type Row = {
  readonly name: string;
  readonly allZero: number;
  readonly used: number;
  readonly scores: Record<Method, Score>;
};

const STATION_AREA_M2 = 240;
const STATION_AREA_HA = STATION_AREA_M2 / 10_000;
const CONFIDENCE = 0.95;
const STATIONS = [5, 8, 15, 30];
const METHODS: readonly Method[] = ['clumped', 'lognormal t', 't'];

const nb025 = negativeBinomial(0.25, 6);
const nb1 = negativeBinomial(1, 6);
const nb015 = negativeBinomial(0.15, 30);
const logNormal12 = logNormalPoisson(1.2, 6);
const logNormal18 = logNormalPoisson(1.8, 6);
const fewAnimals = negativeBinomial(0.25, 0.5);
const manyEmpty = emptyOrPoisson(0.6, 6);
const poisson5 = emptyOrPoisson(0, 5);
const rare = negativeBinomial(0.25, 0.05);
const none = emptyOrPoisson(1, 0);
const POPULATIONS = [nb025, nb1, nb015, logNormal12, logNormal18, manyEmpty, poisson5, fewAnimals];

const SINGLE: readonly Case[] = POPULATIONS.flatMap((population) =>
  STATIONS.map((stations) => ({
    name: `${population.name} | ${stations}`,
    strata: [{ areaHa: 100, stations, population }],
  })),
);

const STRATIFIED: readonly Case[] = [
  stratified('mixed', [8, 7, 6], [nb025, logNormal12, nb1]),
  stratified('strongly clumped', [8, 7, 6], [nb025, nb025, logNormal18]),
  stratified('largest stratum nearly empty', [8, 7, 6], [rare, nb025, logNormal12]),
  stratified('middle stratum nearly empty', [8, 7, 6], [nb025, rare, nb1]),
  stratified('middle stratum truly empty', [8, 7, 6], [nb025, none, nb1]),
  stratified('all but the smallest nearly empty', [8, 7, 6], [rare, rare, nb025]),
  stratified('three stations each, mixed', [3, 3, 3], [nb025, logNormal12, nb1]),
  stratified('three stations each, clumped', [3, 3, 3], [nb025, nb025, nb025]),
  stratified('three stations each, one nearly empty', [3, 3, 3], [nb1, rare, nb025]),
  stratified('two strata, mixed', [8, 7], [nb025, logNormal12]),
  stratified('two strata, strongly clumped', [5, 5], [logNormal18, nb025]),
  stratified(
    'six strata of four, mixed',
    [4, 4, 4, 4, 4, 4],
    [nb025, logNormal12, nb1, logNormal18, rare, nb025],
  ),
  stratified('not clumped', [8, 7, 6], [poisson5, poisson5, poisson5]),
];

if (import.meta.main) main();

function main(): void {
  const { values } = parseArgs({ options: { draws: { type: 'string' }, seed: { type: 'string' } } });
  const draws = Number(values.draws ?? 200);
  const seed = Number(values.seed ?? 1);
  const intervals = createClumpedIntervals();
  const single = SINGLE.map((row, i) => runCase(row, draws, 1000 * seed + i, intervals));
  const stratifiedRows = STRATIFIED.map((row, i) => runCase(row, draws, 1000 * seed + 500 + i, intervals));
  const text = report(single, stratifiedRows, draws, seed);
  process.stdout.write(text);
  writeFileSync(new URL('coverage-results.md', import.meta.url), text);
}

function runCase(row: Case, draws: number, seed: number, intervals: ClumpedIntervals): Row {
  const { uniform } = seededRandom(seed);
  const totalHa = row.strata.reduce((sum, stratum) => sum + stratum.areaHa, 0);
  const truth =
    row.strata.reduce((sum, s) => sum + (s.areaHa / totalHa) * s.population.mean, 0) / STATION_AREA_HA;
  const scores = { clumped: emptyScore(), 'lognormal t': emptyScore(), t: emptyScore() };
  let allZero = 0;
  for (let draw = 0; draw < draws; draw++) {
    const counts = row.strata.map((s) =>
      Array.from({ length: s.stations }, () => s.population.draw(uniform)),
    );
    if (counts.every((stratum) => stratum.every((animals) => animals === 0))) {
      allZero += 1;
      continue;
    }
    const found = intervalsOf(row.strata, counts, intervals);
    for (const method of METHODS) mark(scores[method], found[method], truth);
  }
  return { name: row.name, allZero, used: draws - allZero, scores };
}

function intervalsOf(
  strata: readonly Stratum[],
  counts: readonly (readonly number[])[],
  intervals: ClumpedIntervals,
): Record<Method, Interval> {
  const totalHa = strata.reduce((sum, stratum) => sum + stratum.areaHa, 0);
  let density = 0;
  let variance = 0;
  let satterthwaite = 0;
  strata.forEach((stratum, h) => {
    const densities = counts[h]!.map((animals) => animals / STATION_AREA_HA);
    const weight = stratum.areaHa / totalHa;
    const part = (weight ** 2 * sampleVariance(densities)!) / densities.length;
    density += weight * mean(densities);
    variance += part;
    satterthwaite += part ** 2 / (densities.length - 1);
  });
  const standardError = Math.sqrt(variance);
  const t = variance > 0 ? twoSidedQuantile(CONFIDENCE, variance ** 2 / satterthwaite)! : 0;
  const factor = Math.exp(t * Math.sqrt(Math.log1p((standardError / density) ** 2)));
  const clumped = clumpedInterval(strata, counts, intervals);
  return {
    clumped: containing(clumped, density),
    'lognormal t': [density / factor, density * factor],
    t: [density - t * standardError, density + t * standardError],
  };
}

function clumpedInterval(
  strata: readonly Stratum[],
  counts: readonly (readonly number[])[],
  intervals: ClumpedIntervals,
): Interval {
  const posteriors = counts.map((stratum) => {
    const stations = stratum.map((animals) => ({ animals, areaM2: STATION_AREA_M2 }));
    if (stratum.some((animals) => animals > 0)) return intervals.posterior(stations);
    return intervals.zeroStratum(stations.map((station) => station.areaM2));
  });
  if (posteriors.length === 1) return posteriors[0]!.interval(CONFIDENCE);
  const parts = posteriors.map((posterior, h) => ({ weight: strata[h]!.areaHa, posterior }));
  return combineStrata(parts, CONFIDENCE).intervalPerHa;
}

function mark(score: Score, [low, high]: Interval, truth: number): void {
  if (truth < low) score.below += 1;
  else if (truth > high) score.above += 1;
  else score.held += 1;
  score.ratios.push(low > 0 ? high / low : Infinity);
}

function emptyScore(): Score {
  return { held: 0, below: 0, above: 0, ratios: [] };
}

function stratified(name: string, stations: readonly number[], populations: readonly Population[]): Case {
  const areasHa = [420, 310, 145, 300, 200, 100];
  const strata = populations.map((population, h) => ({
    areaHa: areasHa[h]!,
    stations: stations[h]!,
    population,
  }));
  return { name: `${name} | ${stations.join(' / ')}`, strata };
}

function report(single: readonly Row[], strata: readonly Row[], draws: number, seed: number): string {
  const low = [...single, ...strata].filter((row) => share(row, 'clumped') < 0.9);
  return [
    '# Coverage of the intervals',
    '',
    `Written by \`node bench/coverage.ts --draws ${draws} --seed ${seed}\`. Nominal 95 %; Monte Carlo standard error of a`,
    `coverage of 0.95: ${Math.sqrt((0.95 * 0.05) / draws).toFixed(3)}. In brackets: median ratio of the upper to the lower end (t: none when the lower`,
    'end is not above zero in half of the draws). Misses: share of draws with the truth below / above the interval.',
    '',
    '## One stratum',
    '',
    ...table(single),
    '',
    '## Strata of 420, 310, 145, 300, 200 and 100 ha, in this order',
    '',
    ...table(strata),
    '',
    '## Clumped interval under 0.90',
    '',
    ...(low.length === 0
      ? ['None.']
      : low.map((row) => `- ${row.name.replace(' | ', ', stations ')}: ${share(row, 'clumped').toFixed(3)}`)),
    '',
  ].join('\n');
}

function table(rows: readonly Row[]): readonly string[] {
  const head = '| population | stations | clumped | misses | log-normal t | misses | t | all zero |';
  const lines = rows.map((row) => {
    const cells = [
      cell(row, 'clumped'),
      misses(row, 'clumped'),
      cell(row, 'lognormal t'),
      misses(row, 'lognormal t'),
      cell(row, 't'),
    ];
    return `| ${row.name} | ${cells.join(' | ')} | ${row.allZero} |`;
  });
  return [head, '|---|---|---|---|---|---|---|---|', ...lines];
}

function cell(row: Row, method: Method): string {
  const sorted = [...row.scores[method].ratios].sort((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)] ?? Infinity;
  const width = Number.isFinite(median) ? median.toPrecision(2) : '-';
  return `${share(row, method).toFixed(3)} (${Number(width) >= 100 ? Math.round(median) : width})`;
}

function share(row: Row, method: Method): number {
  return row.used === 0 ? 1 : row.scores[method].held / row.used;
}

function misses(row: Row, method: Method): string {
  const { below, above } = row.scores[method];
  return `${(below / row.used).toFixed(3)} / ${(above / row.used).toFixed(3)}`;
}

function negativeBinomial(k: number, expected: number): Population {
  const draw = (uniform: Uniform) => poisson(uniform, (gamma(uniform, k) * expected) / k);
  return { name: `negative binomial k ${k}, mean ${expected}`, mean: expected, draw };
}

function logNormalPoisson(sigma: number, expected: number): Population {
  const draw = (uniform: Uniform) =>
    poisson(uniform, expected * Math.exp(sigma * normal(uniform) - sigma ** 2 / 2));
  return { name: `log-normal-Poisson sigma ${sigma}, mean ${expected}`, mean: expected, draw };
}

function emptyOrPoisson(emptyShare: number, expected: number): Population {
  const draw = (uniform: Uniform) => (uniform() < emptyShare ? 0 : poisson(uniform, expected));
  const empty = emptyShare > 0 ? ` with ${100 * emptyShare} % empty` : '';
  return { name: `Poisson ${expected}${empty}`, mean: expected * (1 - emptyShare), draw };
}

/** Sums of Poisson numbers are Poisson: large means go in steps of 30, so that exp(-mean) never vanishes. */
function poisson(uniform: Uniform, expected: number): number {
  let animals = 0;
  for (let left = expected; left > 0; left -= 30) {
    const limit = Math.exp(-Math.min(left, 30));
    for (let product = uniform(); product > limit; product *= uniform()) animals += 1;
  }
  return animals;
}

function normal(uniform: Uniform): number {
  return Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** Marsaglia & Tsang 2000 (from memory), with their step from shape + 1 down to a shape below one. */
function gamma(uniform: Uniform, shape: number): number {
  if (shape < 1) return gamma(uniform, shape + 1) * (1 - uniform()) ** (1 / shape);
  const d = shape - 1 / 3;
  for (;;) {
    const x = normal(uniform);
    const v = (1 + x / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(1 - uniform()) < x ** 2 / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}
